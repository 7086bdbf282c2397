package hingeleaf.paper.figure;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.sight.View;
import hingeleaf.sight.VisibleLine;
import hingeleaf.sight.VisiblePolygon;
import java.util.ArrayList;
import java.util.List;

/**
 * Inks a view of the card: papers in their own colours, shaded by how they face, outlines heavier
 * than inner folds. What is seen was decided by {@code sight}; nothing is hidden here.
 */
public final class CardPicture {
  private static final double MARGIN = 0.06;

  /** A face seen edge-on is darkened by this share. */
  private static final double SHADE = 0.32;

  private CardPicture() {}

  /** How a picture is inked. */
  public enum Manner {
    /** In the papers' colours, for screens and covers. */
    PAPERS,
    /** White paper, new pieces toned, glue hatched: for the steps of a plan. */
    LINES
  }

  /**
   * The picture, as large as fits.
   *
   * @param width most that it may have, mm
   * @param height most that it may have, mm
   */
  public static Drawing of(View view, String title, double width, double height, Manner manner) {
    Box box = view.box();
    double room = Math.max(box.width(), box.height()) * MARGIN;
    double scale = Math.min(width / (box.width() + 2 * room), height / (box.height() + 2 * room));
    Vec2 corner = new Vec2(box.minX() - room, box.minY() - room);
    List<Mark> marks = new ArrayList<>();
    view.polygons().forEach(p -> marks.add(fill(p, manner, corner, scale)));
    view.lines().forEach(l -> marks.add(stroke(l, corner, scale)));
    return Drawing.plain(
        (box.width() + 2 * room) * scale, (box.height() + 2 * room) * scale, title, marks);
  }

  private static Mark fill(VisiblePolygon p, Manner manner, Vec2 corner, double scale) {
    Path path = Path.of(p.region().map(v -> v.minus(corner).times(scale)));
    return new Mark.Fill(path, manner == Manner.PAPERS ? paper(p) : plain(p));
  }

  private static String paper(VisiblePolygon p) {
    if (p.kind() == VisiblePolygon.Kind.GLUE) {
      return "#d9d3c4";
    }
    return p.kind() == VisiblePolygon.Kind.INK ? p.colour() : shaded(p.colour(), p.facing());
  }

  private static String plain(VisiblePolygon p) {
    return switch (p.kind()) {
      case PAPER -> shaded(p.fresh() ? "#f0dccb" : "#ffffff", p.facing());
      case INK -> "#9a9c9e";
      case GLUE -> "#c9825f";
      case WINDOW -> "#eef4f6";
    };
  }

  /** Darker the more a face turns away; the same everywhere on it, as flat paper is. */
  private static String shaded(String colour, double facing) {
    double keep = 1 - SHADE * (1 - Math.max(0, Math.min(1, facing)));
    int rgb = Integer.parseInt(colour.substring(1), 16);
    int r = (int) Math.round((rgb >> 16 & 255) * keep);
    int g = (int) Math.round((rgb >> 8 & 255) * keep);
    int b = (int) Math.round((rgb & 255) * keep);
    return String.format(java.util.Locale.ROOT, "#%02x%02x%02x", r, g, b);
  }

  private static Mark stroke(VisibleLine l, Vec2 corner, double scale) {
    Path path =
        Path.line(l.at().from().minus(corner).times(scale), l.at().to().minus(corner).times(scale));
    Pen pen =
        switch (l.stroke()) {
          case SILHOUETTE -> Pen.EDGE;
          case EDGE -> Pen.FINE_EDGE;
          case INNER -> new Pen(0.13, List.of(), Look.QUIET, true);
        };
    return new Mark.Stroke(path, pen);
  }
}
