package hingeleaf.pack;

import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.accuracy.StageFit;
import hingeleaf.fold.contact.Order;
import hingeleaf.fold.contact.Remedy;
import hingeleaf.fold.contact.Touch;
import hingeleaf.fold.contact.Way;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the way from made to flat shows to be wrong: what jams, and the order that works. */
final class WayFindings {
  /** There is no thinner foam: common practice, no source. */
  private static final double LEAST_FOAM_MM = 0.5;

  /** What two edges that pass each other keep: common practice, no source. */
  private static final double LEAST_GAP_MM = 0.5;

  private final Pack pack;
  private final Way way;
  private final MakerUnits units;

  private WayFindings(Pack pack, Way way) {
    this.pack = pack;
    this.way = way;
    this.units = pack.inputs().wants().units();
  }

  /** One finding for each part that is in the way; none where layers only rest on each other. */
  static List<Problem> of(Pack pack) {
    List<Problem> found = new ArrayList<>();
    pack.touches().ifPresent(w -> new WayFindings(pack, w).tell(found));
    found.addAll(DoorFindings.of(pack));
    return found;
  }

  private void tell(List<Problem> found) {
    Set<String> told = new HashSet<>();
    for (Touch t : way.faults()) {
      Optional<StageFit> stage = t.kind() == Touch.Kind.CROSSES ? misfitting(t) : Optional.empty();
      if (told.add(stage.map(StageFit::piece).orElse(t.part()))) {
        found.add(stage.map(s -> crosses(t, s)).orElseGet(() -> fault(t)));
      }
    }
    way.close().stream().filter(t -> told.add(t.part())).map(this::close).forEach(found::add);
    if (!way.blocked() && way.order() != Order.TOGETHER) {
      String first = way.order() == Order.FRONT_FIRST ? "front" : "back";
      found.add(
          Problem.notes(
              "flat-in-order",
              "",
              "",
              "lay this card flat one frame at a time, from the "
                  + first
                  + ": all at once something gets in the way"));
    }
    if (!way.whole()) {
      found.add(
          Problem.notes(
              "way-not-followed",
              "",
              "",
              "not all of the way flat could be followed; fold a trial card before you cut many"));
    }
  }

  private Problem fault(Touch t) {
    return switch (t.kind()) {
      case JAMS -> jams(t);
      case CROSSES -> crosses(t);
      case RESTS_ON, RUNS_ALONG -> throw new IllegalArgumentException(t + " is no fault");
      case STANDS_THROUGH -> standsThrough(t);
    };
  }

  private Problem jams(Touch t) {
    Piece piece = piece(t.part());
    boolean side = t.against().contains("/side-");
    String what =
        side
            ? name(t.against()) + " closes over it on the way flat, and it is in the way"
            : "on the way flat "
                + edge(t.against())
                + " runs into it, "
                + units.fine(t.over())
                + " before it lies flat";
    return mended(
        Problem.warns("jams", piece.id(), piece.origin(), piece.name() + ": " + what), piece, t);
  }

  /** The edge of an aperture where there is one; a solid panel has only its outer edges. */
  private String edge(String panel) {
    boolean open = panel.endsWith("/panel") && !piece(panel).apertures().isEmpty();
    return open ? "the edge of the opening of " + piece(panel).name() : name(panel);
  }

  private Problem standsThrough(Touch t) {
    Piece piece = piece(t.part());
    String high = t.height() > 0 ? " stands " + units.fine(t.height()) + " high and" : "";
    return mended(
        Problem.warns(
            "stands-through",
            piece.id(),
            piece.origin(),
            piece.name() + ":" + high + " goes through " + name(t.against()) + " in the made card"),
        piece,
        t);
  }

  private Problem crosses(Touch t) {
    Piece piece = piece(t.part());
    return Problem.warns(
            "crosses",
            piece.id(),
            piece.origin(),
            runInto(t) + " - make one of the two smaller, or give it another place")
        .with(Map.of("share", t.share()));
  }

  private String runInto(Touch t) {
    return name(t.part()) + " and " + name(t.against()) + " run into each other on the way flat";
  }

  /** Sheets run into each other where a stage between them is no parallelogram. */
  private Problem crosses(Touch t, StageFit s) {
    Piece piece = pack.card().piece(s.piece());
    double wide = Misfits.fitting(s);
    String message =
        runInto(t)
            + ", because "
            + piece.name()
            + " does not fit the layer that it stands on - cut its panel "
            + units.fine(wide)
            + Misfits.across(pack);
    Problem p =
        Problem.warns("crosses", piece.id(), piece.origin(), message)
            .with(Map.of("share", t.share(), "fits", wide));
    return Misfits.cut(pack, piece, wide).map(p::wanting).orElse(p);
  }

  /** Of the stages between two sheets, the one that has most to be forced, if any has. */
  private Optional<StageFit> misfitting(Touch t) {
    List<StageFit> stages = StageFit.of(pack.made());
    int a = layer(stages, t.part());
    int b = layer(stages, t.against());
    int last = Math.max(a, b);
    int first = Math.min(Math.min(a, b) + 1, last);
    return stages.subList(Math.max(0, first - 1), last).stream()
        .filter(s -> Math.abs(s.forced()) > s.thickness())
        .max(Comparator.comparingDouble(s -> Math.abs(s.forced())));
  }

  /** How many stages stand behind the layer that a panel belongs to, itself or by its glue. */
  private int layer(List<StageFit> stages, String panel) {
    String piece = piece(panel).id();
    while (true) {
      for (int i = 0; i < stages.size(); i++) {
        if (stages.get(i).piece().equals(piece)) {
          return i + 1;
        }
      }
      String hung = piece;
      Optional<String> host =
          pack.card().joins().stream()
              .filter(Join.Glue.class::isInstance)
              .map(Join.Glue.class::cast)
              .filter(g -> g.a().piece().equals(hung))
              .map(g -> g.b().piece())
              .findFirst();
      if (host.isEmpty()) {
        return 0;
      }
      piece = host.get();
    }
  }

  /** Neither the tool nor who cuts can tell whether these two touch. */
  private Problem close(Touch t) {
    Piece piece = piece(t.part());
    String message =
        piece.name()
            + ": on the way flat "
            + edge(t.against())
            + " runs along it so closely that nobody can tell whether they touch; leave "
            + units.fine(LEAST_GAP_MM)
            + " between them";
    Problem p =
        mended(
            Problem.notes("way-not-followed", piece.id(), piece.origin(), message),
            piece,
            t,
            "make it " + units.fine(2 * LEAST_GAP_MM) + " smaller");
    List<Want> wants = new ArrayList<>(p.wants());
    for (boolean across : new boolean[] {true, false}) {
      double size = (across ? piece.width() : piece.height()) - 2 * LEAST_GAP_MM;
      Findings.sizePath(pack, piece.origin() + ".outline", across)
          .ifPresent(path -> wants.add(Want.atMost(path, size)));
    }
    return p.wanting(wants.toArray(Want[]::new));
  }

  private Problem mended(Problem p, Piece piece, Touch t) {
    return mended(p, piece, t, "make it smaller or leave it out");
  }

  /** Adds what was tried and frees the part: a move, a height. */
  private Problem mended(Problem p, Piece piece, Touch t, String otherwise) {
    Optional<Remedy> remedy =
        way.remedies().stream().filter(r -> r.part().equals(t.part())).findFirst();
    List<String> advice = new ArrayList<>();
    List<Want> wants = new ArrayList<>();
    Remedy.Move move = remedy.map(Remedy::move).orElse(null);
    if (move != null) {
      advice.add("move it " + units.fine(move.length()) + " " + where(move));
      moved(piece, move, wants);
    }
    Double height = remedy.map(Remedy::height).orElse(null);
    if (height != null) {
      double raised = Math.max(0, height - piece.stock().thickness());
      boolean bare = raised < LEAST_FOAM_MM;
      advice.add(
          bare
              ? "glue it on without foam"
              : "make it " + units.fine(height) + " or less high, foam and card together");
      wants.add(Want.atMost(piece.origin() + ".raised-by", bare ? 0 : raised));
    }
    if (advice.isEmpty()) {
      advice.add(otherwise);
    }
    return new Problem(
        p.kind(),
        p.level(),
        p.part(),
        p.origin(),
        p.place(),
        p.message() + " - " + String.join(", or ", advice),
        Map.of("height", t.height(), "over", t.over(), "share", t.share()),
        wants);
  }

  /** The move as a demand on the offset of a cut-out. */
  private void moved(Piece piece, Remedy.Move move, List<Want> wants) {
    pack.inputs().design().cutOuts().stream()
        .filter(v -> v.path().equals(piece.origin()))
        .findFirst()
        .ifPresent(
            v -> {
              boolean across = move.right() != 0;
              int axis = across ? 0 : 1;
              double by = across ? move.right() : move.up();
              double to = v.lengths("at").get(axis).mm() + by;
              String path = v.path("at", axis);
              wants.add(by > 0 ? Want.atLeast(path, to) : Want.atMost(path, to));
            });
  }

  private static String where(Remedy.Move move) {
    if (move.right() != 0) {
      return move.right() > 0 ? "to the right" : "to the left";
    }
    return move.up() > 0 ? "up" : "down";
  }

  private Piece piece(String panel) {
    return pack.card().piece(panel.substring(0, panel.lastIndexOf('/')));
  }

  /** A panel in words: "the left side of middle", "middle". */
  private String name(String panel) {
    return pack.words(panel);
  }
}
