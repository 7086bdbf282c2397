package hingeleaf.pack;

import hingeleaf.card.Ink;
import hingeleaf.card.Piece;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.measure.MakerUnits;
import hingeleaf.plan.LetterHeight;
import hingeleaf.sight.Look;
import hingeleaf.sight.Showing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the made card itself shows to be wrong: glue that does not meet, tabs that show. */
final class Findings {
  /** A strip narrower than this is not noticed, mm: common practice, no source. */
  private static final double SHOWS_MM = 0.2;

  private Findings() {}

  static List<Problem> of(Pack pack) {
    List<Problem> found = new ArrayList<>();
    found.addAll(Misfits.of(pack));
    tabs(pack, found);
    covered(pack, found);
    letters(pack, found);
    found.addAll(Overhangs.of(pack));
    return found;
  }

  /** Parts of which more or less shows, seen straight on, than their maker wants. */
  private static void covered(Pack pack, List<Problem> found) {
    for (EyeSight.Part p : EyeSight.straightOn(pack)) {
      long percent = Math.round(100 * (1 - p.share()));
      String what =
          p.wanted().equals("hidden")
              ? " shows, seen straight on, and should be hidden - move it, or make it smaller"
              : percent >= 100
                  ? " is wholly covered, seen straight on - move it, or open what is in front wider"
                  : " is covered by "
                      + Math.max(1, percent)
                      + " %, seen straight on - move it, make it smaller, or open what is in front"
                      + " wider; where that is meant, say that some of it may be covered";
      found.add(
          Problem.warns("part-covered", p.name(), p.origin(), p.name() + what)
              .with(Map.of("shows", p.share())));
    }
  }

  /** Words that a reader who holds the card can hardly read. */
  private static void letters(Pack pack, List<Problem> found) {
    MakerUnits units = pack.inputs().wants().units();
    double least = LetterHeight.of(LetterHeight.HELD_MM, LetterHeight.LEAST);
    double easy = LetterHeight.of(LetterHeight.HELD_MM, LetterHeight.EASY);
    for (Piece p : pack.card().pieces()) {
      for (Ink ink : p.inks()) {
        double high = ink.regions().stream().mapToDouble(r -> r.box().height()).max().orElse(easy);
        if (high < least) {
          String message =
              "the words \""
                  + ink.name()
                  + "\" are "
                  + units.fine(high)
                  + " high - held at arm's length they are hard to read under "
                  + units.fine(least)
                  + "; "
                  + units.fine(easy)
                  + " reads with ease";
          found.add(
              Problem.notes("small-letters", p.name(), ink.origin(), message)
                  .with(Map.of("height", high, "least", least))
                  .wanting(Want.atLeast(ink.origin() + ".height", easy)));
        }
      }
    }
  }

  /** Glue tabs that show inside their own frame's opening, seen straight on: the widest a frame. */
  private static void tabs(Pack pack, List<Problem> found) {
    Map<String, Showing> widest = new HashMap<>();
    List<String> order = new ArrayList<>();
    for (Showing s : Showing.of(pack.scene(), Look.straightOn())) {
      if (s.part().contains("/tab-") && s.inOpening() > SHOWS_MM) {
        String piece = s.part().substring(0, s.part().indexOf('/'));
        Showing before = widest.putIfAbsent(piece, s);
        if (before == null) {
          order.add(piece);
        } else if (s.inOpening() > before.inOpening()) {
          widest.put(piece, s);
        }
      }
    }
    for (String piece : order) {
      Showing s = widest.get(piece);
      if (s != null) {
        found.add(tabShows(pack, pack.card().piece(piece), s));
      }
    }
  }

  private static Problem tabShows(Pack pack, Piece piece, Showing s) {
    MakerUnits units = pack.inputs().wants().units();
    double show = s.inOpening();
    String tab = s.part().substring(s.part().indexOf('/') + 1);
    boolean upright = tab.endsWith("left") || tab.endsWith("right");
    double opening = size(piece, upright) - 2 * show;
    double width = tabWidth(piece, tab, upright) - show;
    String base = piece.origin().replaceAll("\\.frames\\[.*", "");
    String aperture = piece.origin() + ".aperture";
    return Problem.warns(
            "tab-shows",
            piece.id(),
            aperture,
            piece.name()
                + ": the glue tabs of this frame show "
                + units.fine(show)
                + " inside its opening, seen straight on - make the opening "
                + units.text(opening)
                + " or less"
                + (width > 0 ? ", or the tabs " + units.text(width) : ""))
        .with(Map.of("shows", show, "opening", opening, "tab", width))
        .wanting(
            Stream.of(
                    Want.atMost(sizePath(pack, aperture, upright).orElse(aperture), opening),
                    Want.atMost(base + ".tab", width))
                .filter(w -> w.most() > 0)
                .toArray(Want[]::new));
  }

  /** Path of the one length in the design that gives a shape's size along one direction. */
  static Optional<String> sizePath(Pack pack, String shape, boolean across) {
    for (String single : List.of("circle", "square")) {
      if (written(pack, shape + "." + single)) {
        return Optional.of(shape + "." + single);
      }
    }
    for (String pair : List.of("rect", "ellipse", "arch", "rounded")) {
      if (written(pack, shape + "." + pair)) {
        return Optional.of(shape + "." + pair + (across ? "[0]" : "[1]"));
      }
    }
    return written(pack, shape + ".svg") && across
        ? Optional.of(shape + ".width")
        : Optional.empty();
  }

  private static boolean written(Pack pack, String path) {
    return pack.inputs().design().tree().find(path).isPresent();
  }

  private static double size(Piece piece, boolean upright) {
    Box box = piece.apertures().get(0).box();
    return upright ? box.width() : box.height();
  }

  private static double tabWidth(Piece piece, String tab, boolean upright) {
    double at = piece.score(tab).at().from().x();
    double up = piece.score(tab).at().from().y();
    return upright ? Math.min(at, piece.width() - at) : Math.min(up, piece.height() - up);
  }
}
