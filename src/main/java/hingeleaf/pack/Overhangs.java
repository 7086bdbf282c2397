package hingeleaf.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Parts that reach past the edges of the made card, as seen from the front. */
final class Overhangs {
  /** Less past an edge is no more than a cut that was a little off, mm: common practice. */
  private static final double PAST_MM = 0.5;

  private Overhangs() {}

  /** One for each part that reaches past the back and the frames, in the card's order. */
  static List<Problem> of(Pack pack) {
    List<Problem> found = new ArrayList<>();
    Box card = null;
    for (Panel p : pack.made().panels()) {
      if (bears(pack, p)) {
        card = card == null ? box(p) : card.union(box(p));
      }
    }
    for (Panel p : pack.made().panels()) {
      Piece piece = pack.card().piece(p.piece());
      if (card != null && isPart(pack.card(), piece)) {
        Problem past = past(piece, box(p), card, pack.inputs().wants().units());
        found.addAll(past == null ? List.of() : List.of(past));
      }
    }
    return found;
  }

  private static boolean bears(Pack pack, Panel p) {
    Card card = pack.card();
    boolean root = card.roots().stream().anyMatch(r -> r.piece().equals(p.piece()));
    boolean folded = !card.piece(p.piece()).scores().isEmpty();
    return card.stay(p.piece()).isEmpty() && (root || folded);
  }

  /** Mats, windows and cut-outs; leaves and stays are told of in their own ways. */
  private static boolean isPart(Card card, Piece piece) {
    return piece.scores().isEmpty()
        && card.stay(piece.id()).isEmpty()
        && card.roots().stream().noneMatch(r -> r.piece().equals(piece.id()));
  }

  private static Box box(Panel p) {
    List<Vec2> seen = new ArrayList<>();
    for (Vec2 q : p.region().outer().points()) {
      Vec3 at = p.made().apply(q);
      seen.add(new Vec2(at.x(), at.y()));
    }
    return Box.around(seen);
  }

  private static @Nullable Problem past(Piece piece, Box part, Box card, MakerUnits units) {
    double left = card.minX() - part.minX();
    double right = part.maxX() - card.maxX();
    double low = card.minY() - part.minY();
    double high = part.maxY() - card.maxY();
    double most = Math.max(Math.max(left, right), Math.max(low, high));
    if (most <= PAST_MM) {
      return null;
    }
    boolean level = Math.max(left, right) >= Math.max(low, high);
    String side = level ? (left >= right ? "left" : "right") : low >= high ? "lower" : "upper";
    double room = level ? card.width() - part.width() : card.height() - part.height();
    String cure =
        room < 0
            ? "make it " + units.fine(-room) + " smaller"
            : "move it " + units.fine(most) + away(side);
    String message =
        piece.name()
            + ": it reaches "
            + units.fine(most)
            + " past the "
            + side
            + " edge of the card, where it shows and must be packed too - "
            + cure
            + ", or leave it, where that is meant";
    return Problem.notes("past-edge", piece.name(), piece.origin(), message)
        .with(Map.of("past", most));
  }

  private static String away(String side) {
    return switch (side) {
      case "left" -> " to the right";
      case "right" -> " to the left";
      case "lower" -> " up";
      default -> " down";
    };
  }
}
