package hingeleaf.plan;

import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * How a card is taught: what is prepared at home, what is done in class, when, and with what.
 *
 * <p>Minutes needed = {@value #AROUND} to arrive and to tidy + {@value #LEARNER} x a maker's
 * minutes of each step in class + what must be waited for there, which is little, for long drying
 * is taped or done at home.
 *
 * @param seats learners
 * @param minutes that the class lasts
 * @param work the steps as they are done for the class, with the numbers of the card's own plan
 * @param taped ids of the joins that tape closes in class in place of glue
 * @param home what is done before the class, in order
 * @param lesson what is done in class, in order
 * @param tools what the class shares
 */
public record ClassSheet(
    int seats,
    int minutes,
    WorkPlan work,
    Set<String> taped,
    List<Home> home,
    List<Period> lesson,
    List<Tool> tools) {
  /** A learner takes so many times a maker's minutes: common practice, no source. */
  public static final double LEARNER = 2.5;

  /** Minutes to arrive and to tidy up: common practice, no source. */
  public static final double AROUND = 15;

  /** How many learn at one table: common practice, no source. */
  public static final int TABLE = 4;

  /** Fewer steps than these are no lesson. */
  private static final int LEAST_TAUGHT = 3;

  /** Arriving takes two thirds of what goes round the lesson. */
  private static final double ARRIVING = AROUND * 2 / 3;

  public ClassSheet {
    taped = Set.copyOf(taped);
    home = List.copyOf(home);
    lesson = List.copyOf(lesson);
    tools = List.copyOf(tools);
  }

  /** Why a step is done at home. */
  public enum Why {
    /** Blades, presses and templates stay at home. */
    CUTTING,
    /** What was glued or pressed must lie long, and no tape of the bench has room. */
    DRYING,
    /** A step that must be done at home needs it. */
    NEEDED,
    /** The lesson would not fit the class. */
    TIME
  }

  /** A step that is done at home. */
  public record Home(int step, Why why) {}

  /**
   * One step in class.
   *
   * @param from minutes after the beginning
   * @param to minutes after the beginning
   * @param waits minutes of them in which something dries
   */
  public record Period(int step, String title, double from, double to, double waits) {}

  /**
   * A tool that lies on the tables.
   *
   * @param each how many are needed when every table has one
   * @param queue minutes that the last at a table waits for it, 0 where nobody waits
   */
  public record Tool(String name, int each, double queue) {}

  /** Minutes that the lesson takes, welcome and tidying among them. */
  public double needed() {
    return AROUND + LEARNER * hands() + waits();
  }

  /** A maker's own minutes of all that is done in class. */
  public double hands() {
    return taught().stream().mapToDouble(Step::hands).sum();
  }

  /** Minutes in class in which everybody waits until something is dry. */
  public double waits() {
    return lesson.stream().mapToDouble(Period::waits).sum();
  }

  /** Whether the lesson fits into the class. */
  public boolean fits() {
    return needed() <= minutes + 1e-9;
  }

  /** Bags to pack: one for each seat and a spare. */
  public int bags() {
    return seats + 1;
  }

  /** The steps that are done in class. */
  public List<Step> taught() {
    return lesson.stream().map(p -> work.steps().get(p.step() - 1)).toList();
  }

  /** Ids of the joins that are closed in class. */
  public Set<String> joined() {
    Set<String> ids = new LinkedHashSet<>();
    taught().forEach(s -> ids.addAll(s.joins()));
    return ids;
  }

  /** Minutes of a maker's work before the class, each setting made once for all bags. */
  public double homeHands() {
    return home.stream()
        .mapToDouble(h -> RunSheet.minutes(work.steps().get(h.step() - 1), bags()))
        .sum();
  }

  /**
   * The sheet of a card. Cutting, openings and whatever would dry long are done at home; of the
   * rest as many of the first steps as it takes for the others to fit.
   */
  public static ClassSheet of(
      TapedCard card,
      CutList cuts,
      ScoreChart scores,
      Bench bench,
      MakerUnits units,
      int seats,
      int minutes) {
    return of(WorkPlan.of(card, cuts, scores, bench, units), card.taped(), seats, minutes);
  }

  private static ClassSheet of(WorkPlan work, Set<String> taped, int seats, int minutes) {
    Map<Integer, Why> home = new TreeMap<>();
    work.steps().stream()
        .filter(ClassSheet::cutting)
        .forEach(s -> prepare(s, Why.CUTTING, work, home));
    work.steps().stream()
        .filter(ClassSheet::driesLong)
        .forEach(s -> prepare(s, Why.DRYING, work, home));
    List<Step> taught = taught(work, home);
    while (taught.size() > LEAST_TAUGHT && AROUND + learning(taught) > minutes + 1e-9) {
      prepare(taught.get(0), Why.TIME, work, home);
      taught = taught(work, home);
    }
    List<Home> before = new ArrayList<>();
    home.forEach((step, why) -> before.add(new Home(step, why)));
    return new ClassSheet(
        seats, minutes, work, taped, before, periods(taught), tools(taught, seats));
  }

  private static List<Period> periods(List<Step> taught) {
    List<Period> lesson = new ArrayList<>();
    double at = ARRIVING;
    for (Step s : taught) {
      double end = at + learning(List.of(s));
      lesson.add(new Period(s.number(), s.title(), at, end, waits(s)));
      at = end;
    }
    return lesson;
  }

  private static List<Step> taught(WorkPlan work, Map<Integer, Why> home) {
    return work.steps().stream().filter(s -> !home.containsKey(s.number())).toList();
  }

  /** A step that is done at home takes with it all that must come before it. */
  private static void prepare(Step step, Why why, WorkPlan work, Map<Integer, Why> home) {
    if (home.putIfAbsent(step.number(), why) == null) {
      Why before = why == Why.TIME ? Why.TIME : Why.NEEDED;
      step.after().forEach(n -> prepare(work.steps().get(n - 1), before, work, home));
    }
  }

  /** Blades, presses and templates stay out of the class. */
  private static boolean cutting(Step s) {
    return switch (s.kind()) {
      case CUT, SHAPE, BLANK, EMBOSS, OPEN -> true;
      case SCORE, WRITE, WINDOW, MAT, FOLD, CUT_OUT, GLUE_TAB, CLOSE_FLAT, MOVING, FINISH, CHECK ->
          false;
    };
  }

  private static boolean driesLong(Step s) {
    return waits(s) > TapedCard.LONG_MINUTES;
  }

  /** After the trial everybody goes home, where it may dry. */
  private static double waits(Step s) {
    return s.kind() == Step.Kind.CHECK ? 0 : s.dries();
  }

  private static double learning(List<Step> taught) {
    return taught.stream().mapToDouble(s -> s.hands() * LEARNER + waits(s)).sum();
  }

  private static List<Tool> tools(List<Step> taught, int seats) {
    int tables = (seats + TABLE - 1) / TABLE;
    Map<String, Double> longest = new LinkedHashMap<>();
    for (Step s : taught) {
      for (String tool : s.tools()) {
        longest.merge(tool, s.hands() * LEARNER, Math::max);
      }
    }
    List<Tool> tools = new ArrayList<>();
    longest.forEach(
        (name, each) -> {
          boolean shared = name.contains("board") || name.contains("printer");
          double queue = shared ? (Math.min(seats, TABLE) - 1) * each : 0;
          tools.add(new Tool(name, shared ? tables : seats, queue));
        });
    return tools;
  }
}
