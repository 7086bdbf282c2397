package hingeleaf.pack;

import hingeleaf.card.Piece;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.contact.Order;
import hingeleaf.fold.contact.Remedy;
import hingeleaf.fold.contact.Touch;
import hingeleaf.fold.contact.Way;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the way from made to flat shows to be wrong: what jams, and the order that works. */
final class WayFindings {
  /** There is no thinner foam: common practice, no source. */
  private static final double LEAST_FOAM_MM = 0.5;

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
      if (told.add(t.part())) {
        found.add(fault(t));
      }
    }
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
    if (!way.whole() || way.undecided() > 0) {
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
      case RESTS_ON, JAMS -> jams(t);
      case CROSSES -> crosses(t);
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
            name(t.part()) + " and " + name(t.against()) + " run into each other on the way flat")
        .with(Map.of("share", t.share()));
  }

  /** Adds what was tried and frees the part: a move, a height. */
  private Problem mended(Problem p, Piece piece, Touch t) {
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
      advice.add("make it smaller or leave it out");
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
