package hingeleaf.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Flats;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import hingeleaf.finding.Level;
import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.fold.FoldWay;
import hingeleaf.fold.accuracy.CuttingReport;
import hingeleaf.fold.accuracy.CuttingStudy;
import hingeleaf.fold.contact.Contact;
import hingeleaf.fold.contact.Meeting;
import hingeleaf.fold.contact.Swing;
import hingeleaf.fold.contact.Way;
import hingeleaf.fold.stand.Hold;
import hingeleaf.fold.stand.Stand;
import hingeleaf.fold.stand.Standing;
import hingeleaf.geom.Box;
import hingeleaf.measure.Unit;
import hingeleaf.plan.ClassSheet;
import hingeleaf.plan.CutList;
import hingeleaf.plan.Foams;
import hingeleaf.plan.RunSheet;
import hingeleaf.plan.ScoreChart;
import hingeleaf.plan.SheetOrder;
import hingeleaf.plan.SheetWork;
import hingeleaf.plan.TapedCard;
import hingeleaf.plan.WorkPlan;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sight.Look;
import hingeleaf.sight.Scene;
import hingeleaf.sight.Sight;
import hingeleaf.sight.View;
import hingeleaf.stock.Bench;
import hingeleaf.structure.Bearings;
import hingeleaf.structure.Lettering;
import hingeleaf.structure.Structures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Everything that comes out of one design, each stage worked out when first asked for.
 *
 * <p>A pack belongs to its inputs: the same inputs give the same pack. Stages that need a card
 * throw {@link IllegalStateException} where the design gave none; ask {@link #blocked} first.
 */
public final class Pack {
  /** How many ways to lie flat are listed, each with its piles. */
  private static final int LISTED_RESTS = 8;

  /** Poses between made and flat: enough that a straight line between two looks round. */
  private static final int WAY_STEPS = 24;

  /** What layers keep beside their paper: common practice, no source, mm. */
  private static final double CLEARANCE_MM = 0.1;

  /** Pictures of the whole card are drawn to this: a quarter of a pixel of the largest, mm. */
  private static final double PICTURE_MM = 0.03;

  private final Inputs in;
  private final BooleanSupplier stop;
  private final Foams foams;
  private final Kept<Structures.Built> built;
  private final Kept<MadeCard> made;
  private final Kept<Flats> flats;
  private final Kept<Optional<Way>> touches;
  private final Kept<CuttingReport> cutting;
  private final Kept<Stand> stand;
  private final Kept<Hold> hold;
  private final Kept<List<Swing>> swings;
  private final Kept<List<Meeting>> meetings;
  private final Kept<CutList> cuts;
  private final Kept<ScoreChart> scores;
  private final Kept<WorkPlan> work;
  private final Kept<ClassSheet> lesson;
  private final Kept<Scene> scene;
  private final Kept<View> aslant;
  private final Kept<List<Posed>> way;
  private final Kept<Mass> mass;
  private final Kept<Postage> posting;
  private final Kept<List<SheetWork>> sheets;
  private final Kept<List<SheetWork>> runSheets;
  private final Kept<Consumption> consumption;
  private final Kept<Priced> price;
  private final Kept<List<Problem>> problems;

  /**
   * What a pack is made from.
   *
   * @param drawings bytes of the SVG files by the names that the design uses
   */
  public record Inputs(
      DesignDocument design,
      Map<String, byte[]> drawings,
      Bench bench,
      Lettering lettering,
      Wants wants) {
    public Inputs {
      drawings = Map.copyOf(drawings);
    }
  }

  private Pack(Inputs in, BooleanSupplier stop) {
    this.in = in;
    this.stop = stop;
    this.foams = new Foams(in.bench());
    Bearings bearings = new Bearings(in.bench(), in.wants().units(), in.lettering());
    this.built = kept(() -> Structures.build(in.design(), bearings, in.drawings()));
    this.made = kept(() -> FoldForward.of(card()));
    this.flats = kept(() -> FlatStates.of(made(), LISTED_RESTS, this::goOn));
    this.touches =
        kept(
            () ->
                flats().states().isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                        Contact.way(
                            made(), flats().states().get(best()), CLEARANCE_MM, this::goOn)));
    this.cutting = kept(() -> CuttingStudy.of(made(), bestRest(), in.bench().accuracy().mm()));
    this.swings = kept(() -> Contact.swings(made()));
    this.meetings = kept(() -> Contact.meetings(made()));
    this.stand = kept(() -> Standing.of(made(), bestRest()));
    this.hold = kept(() -> Hold.of(made()));
    this.cuts = kept(() -> CutList.of(card().pieces(), in.bench()));
    this.scores = kept(() -> ScoreChart.of(cuts(), in.bench()));
    this.work =
        kept(() -> WorkPlan.of(card(), cuts(), scores(), in.bench(), foams, in.wants().units()));
    this.lesson = kept(this::teach);
    this.scene = kept(() -> Scene.of(made()));
    this.aslant = kept(() -> Sight.look(scene().coarser(PICTURE_MM), Look.threeQuarter()));
    this.way = kept(this::fold);
    this.mass = kept(() -> Mass.of(card(), in.bench(), foams));
    this.posting = kept(this::post);
    this.sheets = kept(() -> sheets(in.wants().copies()));
    this.runSheets = kept(() -> sheets(run().made()));
    this.consumption =
        kept(() -> Consumption.of(card(), cuts(), in.bench(), foams, in.wants().units()));
    this.price = kept(() -> Priced.of(this));
    this.problems = kept(this::find);
  }

  /** A stage that is neither begun nor kept once the work was told to stop. */
  private <T> Kept<T> kept(Supplier<T> work) {
    return new Kept<>(
        () -> {
          goOn();
          T made = work.get();
          goOn();
          return made;
        });
  }

  /** The pack of these inputs; nothing is worked out yet. */
  public static Pack of(Inputs in) {
    return of(in, () -> false);
  }

  /**
   * The same, for work that may be stopped.
   *
   * @param stop asked between and within the stages; once it says true, whatever is being worked
   *     out throws {@link Stopped} and is not kept
   */
  public static Pack of(Inputs in, BooleanSupplier stop) {
    return new Pack(in, stop);
  }

  /** The pack of another design with everything else as it is, stopped when this one is. */
  public Pack of(DesignDocument design) {
    return of(new Inputs(design, in.drawings(), in.bench(), in.lettering(), in.wants()), stop);
  }

  /**
   * For whoever works long on what a pack gives.
   *
   * @throws Stopped if the work was told to stop
   */
  public void goOn() {
    if (stop.getAsBoolean()) {
      throw new Stopped();
    }
  }

  /** Names of the costly stages that were worked out so far, for tests of laziness. */
  Set<String> workedOut() {
    Set<String> names = new TreeSet<>();
    Map.of("work", work, "sheets", sheets, "price", price, "aslant", aslant, "way", way)
        .forEach((name, stage) -> names.addAll(stage.known() ? List.of(name) : List.of()));
    return names;
  }

  public Inputs inputs() {
    return in;
  }

  public String title() {
    return in.design().title();
  }

  /** Whether the design gives no card. */
  public boolean blocked() {
    return built.get().card().isEmpty();
  }

  public Card card() {
    Optional<Card> card = built.get().card();
    return card.orElseThrow(() -> new IllegalStateException("the design gives no card"));
  }

  public MadeCard made() {
    return made.get();
  }

  public Flats flats() {
    return flats.get();
  }

  /** The way from the made card to its best rest, in even steps; empty if it has none. */
  public List<Posed> wayToBestRest() {
    return way.get();
  }

  private List<Posed> fold() {
    return flats().states().isEmpty()
        ? List.of()
        : List.copyOf(FoldWay.between(made(), flats().states().get(best()), WAY_STEPS));
  }

  /**
   * Index in {@link #flats} of the state that a maker would take: cheapest post, then thinnest,
   * then fewest pushes; -1 where the card does not lie flat.
   */
  public int best() {
    return posting().first().rest();
  }

  /** The foam under each raised part. */
  public Foams foams() {
    return foams;
  }

  /** Mass of the card in hand; with its envelope see {@link #posting}. */
  public Mass mass() {
    return mass.get();
  }

  /** How it is posted. */
  public Postage posting() {
    return posting.get();
  }

  private Postage post() {
    double step = in.bench().inches() ? 25.4 / 8 : 1;
    return Postage.of(made(), flats(), mass(), in.bench(), step);
  }

  /** The sheets that all copies are cut from, one plan for each paper. */
  public List<SheetWork> sheets() {
    return sheets.get();
  }

  private List<SheetWork> sheets(int cards) {
    JobUnit unit = in.wants().units().unit() == Unit.IN ? JobUnit.IN : JobUnit.MM;
    SheetOrder.Batch batch = new SheetOrder.Batch(title(), cuts(), cards);
    return SheetWork.of(SheetOrder.of(List.of(batch), in.bench(), unit, false), stop);
  }

  /** The sheets for a batch with those cards that go wrong. */
  public List<SheetWork> runSheets() {
    return runSheets.get();
  }

  /** What one card uses up beside paper. */
  public Consumption consumption() {
    return consumption.get();
  }

  /** How a batch is run; worked out anew each time, which is little. */
  public RunSheet run() {
    return RunSheet.of(cuts(), scores(), work(), in.wants().units(), in.wants().copies());
  }

  /** How the card is taught to the seats that are wanted. */
  public ClassSheet lesson() {
    return lesson.get();
  }

  private ClassSheet teach() {
    Wants.Lesson wanted = in.wants().lesson();
    return ClassSheet.of(
        TapedCard.of(card(), in.bench()),
        cuts(),
        scores(),
        in.bench(),
        in.wants().units(),
        wanted.seats(),
        wanted.minutes());
  }

  /** What the joins of one learner's card use up, in class or before it. */
  public Consumption lessonUses(boolean inClass) {
    Set<String> joined = lesson().joined();
    List<Join> joins =
        TapedCard.of(card(), in.bench()).card().joins().stream()
            .filter(j -> joined.contains(j.id()) == inClass)
            .toList();
    return Consumption.of(joins, cuts(), in.bench(), foams, in.wants().units());
  }

  /** What all copies cost. */
  public Priced price() {
    return price.get();
  }

  /** What touches on the way to the best rest; empty where the card lies flat in no way. */
  public Optional<Way> touches() {
    return touches.get();
  }

  private @Nullable Rest bestRest() {
    return flats().states().isEmpty() ? null : flats().states().get(best());
  }

  /** What the bench's accuracy does to the card. */
  public CuttingReport cutting() {
    return cutting.get();
  }

  /** How far each door opens; empty where there is none. */
  public List<Swing> swings() {
    return swings.get();
  }

  /** Pairs of leaves that meet when they are shut. */
  public List<Meeting> meetings() {
    return meetings.get();
  }

  /** How the made card stands on a shelf. */
  public Stand stand() {
    return stand.get();
  }

  /** What its stays hold. */
  public Hold hold() {
    return hold.get();
  }

  /** A panel in a maker's words: "middle", "the left side of middle". */
  public String words(String panel) {
    int cut = panel.lastIndexOf('/');
    String piece = card().piece(panel.substring(0, cut)).name();
    String[] part = panel.substring(cut + 1).split("-", 2);
    return switch (part.length == 2 || part[0].equals("panel") ? part[0] : "") {
      case "side" -> "the " + part[1] + " side of " + piece;
      case "tab" -> "the " + part[1] + " glue tab of " + piece;
      case "panel" -> piece;
      default -> "the " + panel.substring(cut + 1) + " of " + piece;
    };
  }

  /**
   * The way from the made card to one of its rests, as far as its papers let it: these poses carry
   * no thickness, so they end where the papers of the shallowest side begin to touch.
   *
   * @param rest index among {@link #flats}
   * @param steps about how many moments after the made one; at least 1
   * @throws IndexOutOfBoundsException if there is no such rest
   */
  public List<Posed> way(int rest, int steps) {
    List<Posed> way = FoldWay.between(made(), flats().states().get(rest), steps);
    int last = (int) Math.floor((way.size() - 1) * beforeTouching());
    return List.copyOf(way.subList(0, Math.max(1, last) + 1));
  }

  /** The share of the way to flat at which the shallowest side stands three papers high. */
  private double beforeTouching() {
    double thick = 0;
    double shallow = Double.POSITIVE_INFINITY;
    for (Panel p : made().panels()) {
      thick = Math.max(thick, card().piece(p.piece()).stock().thickness());
      if (p.name().startsWith("side-")) {
        Box box = p.region().box();
        shallow = Math.min(shallow, Math.min(box.width(), box.height()));
      }
    }
    return Math.acos(Math.min(1, 3 * thick / shallow)) / (Math.PI / 2);
  }

  public CutList cuts() {
    return cuts.get();
  }

  public ScoreChart scores() {
    return scores.get();
  }

  public WorkPlan work() {
    return work.get();
  }

  /** The made card ready to be looked at. */
  public Scene scene() {
    return scene.get();
  }

  /** The made card seen from above right. */
  public View aslant() {
    return aslant.get();
  }

  /** Everything that was found, gravest first, each with its place in the file where it has one. */
  public List<Problem> problems() {
    return problems.get();
  }

  /**
   * What is found without folding the card or asking the post: quick enough for every change of a
   * design. A part of {@link #problems}, in the same order.
   */
  public List<Problem> firstProblems() {
    return placed(first());
  }

  private List<Problem> first() {
    List<Problem> all = new ArrayList<>(built.get().problems());
    if (!blocked()) {
      all.addAll(Findings.of(this));
    }
    return all;
  }

  private List<Problem> find() {
    List<Problem> all = first();
    if (!blocked()) {
      all.addAll(PostWants.of(this));
      all.addAll(taught());
      all.addAll(WayFindings.of(this));
      all.addAll(StayFindings.of(this));
    }
    return placed(all);
  }

  private List<Problem> placed(List<Problem> all) {
    return all.stream()
        .map(p -> p.place() == null ? p.at(place(p.origin())) : p)
        .sorted((a, b) -> a.level().compareTo(b.level()))
        .toList();
  }

  private List<Problem> taught() {
    Wants.Lesson wanted = in.wants().lesson();
    if (wanted.seats() == 0 || lesson().fits()) {
      return List.of();
    }
    long needed = (long) Math.ceil(lesson().needed());
    return List.of(
        Problem.warns(
                "class-too-long",
                "",
                "",
                "the lesson takes about "
                    + needed
                    + " minutes, with all at home that can be, and the class lasts "
                    + wanted.minutes()
                    + " - take longer, or choose a card with fewer layers")
            .with(Map.of("needed", lesson().needed(), "minutes", (double) wanted.minutes())));
  }

  private @Nullable Place place(String origin) {
    return origin.isEmpty() ? null : in.design().tree().find(origin).map(Node::place).orElse(null);
  }

  /** Whether something is so grave that the card cannot be made. */
  public boolean stops() {
    return problems().stream().anyMatch(p -> p.level() == Level.BLOCKS);
  }
}
