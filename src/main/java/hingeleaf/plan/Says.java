package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Decimal;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Stock;
import java.util.List;

/** Turns of phrase that the sentences of all steps share. */
final class Says {
  private Says() {}

  /** "far", "far and middle", "far, middle and near", "all 12 frames". */
  static String names(List<String> names, String many) {
    int n = names.size();
    if (n == 1) {
      return names.get(0);
    }
    return n > 4
        ? "all " + n + " " + many
        : String.join(", ", names.subList(0, n - 1)) + " and " + names.get(n - 1);
  }

  /** The same with every name set off, for titles: “far”, “middle” and “near”. */
  static String quoted(List<String> names, String many) {
    return names(names.stream().map(n -> "“" + n + "”").toList(), many);
  }

  /** A paper without what its title adds in brackets. */
  static String paper(Stock stock) {
    return stock.title().replaceAll(" \\([^()]*\\)$", "");
  }

  /** A piece's own name, set off, since a frame may be called "far" or "near". */
  static String called(Piece p) {
    return "“" + p.name() + "”";
  }

  /** Names of which not all need be read: "fir-1, fir-2 and 9 more". */
  static String listed(List<String> names) {
    int n = names.size();
    return n <= 4
        ? names(names, "")
        : names.get(0) + ", " + names.get(1) + " and " + (n - 2) + " more";
  }

  static String minutes(double m) {
    return m < 1
        ? Math.round(m * 60) + " seconds"
        : Decimal.fixed(m, m == Math.rint(m) ? 0 : 1) + (m == 1 ? " minute" : " minutes");
  }

  static String count(int n, String one) {
    return n == 1 ? "1 " + one : n + " " + one + "s";
  }

  /** A small clearance in the maker's own marks: it need not be exact. */
  static String near(double mm, MakerUnits units) {
    if (units.unit() != Unit.IN) {
      return units.text(mm);
    }
    long parts = Math.max(1, Math.round(mm / 25.4 * 16));
    long below = 16;
    while (parts % 2 == 0) {
      parts /= 2;
      below /= 2;
    }
    return parts + "/" + below + " in";
  }

  /** "tab-left" as "left tab". */
  static String spoken(String panel) {
    int dash = panel.indexOf('-');
    return dash < 0 ? panel : panel.substring(dash + 1) + " " + panel.substring(0, dash);
  }

  static String face(Patch p) {
    return p.face() == Face.FRONT ? "good face" : "plain back";
  }

  static double shortSide(Patch p) {
    Box b = p.area().box();
    return Math.min(b.width(), b.height());
  }

  /** Which edge of the panel behind a tab's patch lies along. */
  static String edge(Join.Glue g, Box panel) {
    Box area = g.b().area().box();
    if (area.height() >= area.width()) {
      boolean left = area.minX() - panel.minX() <= panel.maxX() - area.maxX();
      return left ? "left edge" : "right edge";
    }
    return area.minY() - panel.minY() <= panel.maxY() - area.maxY() ? "lower edge" : "top edge";
  }

  /**
   * Where a part lies on its panel: from the left and the lower edge of the panel as the maker sees
   * the face that it is fixed to.
   *
   * @param spot see {@link #spot}
   */
  static String place(Box spot, MakerUnits units) {
    return beyond(spot.minX(), "left", units)
        + " and "
        + beyond(spot.minY(), "lower", units)
        + " edge";
  }

  /**
   * The box of a part on the panel that carries it, from the panel's left and lower edge, with the
   * carrying face up (a back is seen turned over left to right).
   *
   * @param panel box of the carrying panel, in its piece
   */
  static Box spot(Card card, Join.Glue g, Box panel) {
    Box part = card.piece(g.a().piece()).box();
    Vec2 a = g.a().origin();
    Vec2 b = g.b().origin();
    boolean turned = g.a().along().dot(g.b().along()) < 0;
    double left = turned ? b.x() + a.x() - part.maxX() : b.x() - a.x() + part.minX();
    double low = part.minY() + b.y() - a.y() - panel.minY();
    double seen =
        g.b().face() == Face.FRONT ? left - panel.minX() : panel.maxX() - left - part.width();
    return new Box(seen, low, seen + part.width(), low + part.height());
  }

  private static String beyond(double distance, String side, MakerUnits units) {
    return distance < -1e-9
        ? "reaching " + placed(-distance, units) + " past the " + side
        : placed(Math.max(0, distance), units) + " from the " + side;
  }

  /** Where a hand sets a part: what is left over from the nearest mark is less than it can do. */
  static String placed(double mm, MakerUnits units) {
    return (units.exact(mm) ? "" : "about ") + units.rounded(mm);
  }
}
