package hingeleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a card is taught: what is prepared at home, what is done in class, when, and with what.
 *
 * @param seats learners
 * @param minutes that the class lasts
 * @param home numbers of the steps that are done before the class
 * @param lesson what is done in class, in order
 * @param tools what the class shares
 * @param needed minutes that the lesson takes, welcome and tidying among them
 */
public record ClassSheet(
    int seats,
    int minutes,
    List<Integer> home,
    List<Period> lesson,
    List<Tool> tools,
    double needed) {
  /** A learner takes so many times a maker's minutes: common practice, no source. */
  public static final double LEARNER = 2.5;

  /** Minutes to arrive and to tidy up: common practice, no source. */
  public static final double AROUND = 15;

  /** How many learn at one table: common practice, no source. */
  public static final int TABLE = 4;

  /** Fewer steps than these are no lesson. */
  private static final int LEAST_TAUGHT = 3;

  public ClassSheet {
    home = List.copyOf(home);
    lesson = List.copyOf(lesson);
    tools = List.copyOf(tools);
  }

  /**
   * One step in class.
   *
   * @param from minutes after the beginning
   * @param to minutes after the beginning
   */
  public record Period(int step, String title, double from, double to) {}

  /**
   * A tool that lies on the tables.
   *
   * @param each how many are needed when every table has one
   * @param queue minutes that the last at a table waits for it, 0 where nobody waits
   */
  public record Tool(String name, int each, double queue) {}

  /** Whether the lesson fits into the class. */
  public boolean fits() {
    return needed <= minutes + 1e-9;
  }

  /** Bags to pack: one for each seat and a spare. */
  public int bags() {
    return seats + 1;
  }

  /**
   * The sheet of a plan. Cutting, openings and whatever dries long are done at home; of the rest as
   * many of the first steps as it takes for the others to fit.
   */
  public static ClassSheet of(WorkPlan work, int seats, int minutes) {
    Set<Integer> home = new TreeSet<>();
    work.steps().stream().filter(ClassSheet::atHome).forEach(s -> prepare(s, work, home));
    List<Step> taught = taught(work, home);
    while (taught.size() > LEAST_TAUGHT && AROUND + learning(taught) > minutes) {
      prepare(taught.get(0), work, home);
      taught = taught(work, home);
    }
    List<Period> lesson = new ArrayList<>();
    double at = AROUND * 2 / 3;
    for (Step s : taught) {
      double end = at + s.hands() * LEARNER;
      lesson.add(new Period(s.number(), s.title(), at, end));
      at = end;
    }
    return new ClassSheet(
        seats, minutes, List.copyOf(home), lesson, tools(taught, seats), AROUND + learning(taught));
  }

  private static List<Step> taught(WorkPlan work, Set<Integer> home) {
    return work.steps().stream().filter(s -> !home.contains(s.number())).toList();
  }

  /** A step that is done at home takes with it all that must come before it. */
  private static void prepare(Step step, WorkPlan work, Set<Integer> home) {
    if (home.add(step.number())) {
      step.after().forEach(n -> prepare(work.steps().get(n - 1), work, home));
    }
  }

  /** Blades and long drying stay out of the class. */
  private static boolean atHome(Step s) {
    return switch (s.kind()) {
      case CUT, SHAPE, BLANK, EMBOSS, OPEN -> true;
      case MAT, WINDOW -> s.dries() > 0;
      case SCORE, WRITE, FOLD, CUT_OUT, GLUE_TAB, CLOSE_FLAT, MOVING, FINISH, CHECK -> false;
    };
  }

  private static double learning(List<Step> taught) {
    return taught.stream().mapToDouble(s -> s.hands() * LEARNER).sum();
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
