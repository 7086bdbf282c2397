package hingeleaf.paper.template;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.Wrapping;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What stands above a piece: its name, how many, from what, how large, where the grain runs.
 *
 * @param names lines in the strong cut
 * @param facts lines below them
 */
record Caption(List<String> names, List<String> facts) {
  private static final double LINE = 3.7;

  /** Narrower pieces still get lines of this length. */
  private static final double LEAST = 44;

  static double cell(SeenPiece piece) {
    return Math.max(LEAST, piece.width());
  }

  /** Broken to the width of the piece's cell. */
  static Caption of(Template template, SeenPiece piece, TemplateStyle style) {
    double width = cell(piece);
    List<String> parts = new ArrayList<>();
    parts.add("cut " + template.quantity());
    parts.add(template.piece().stock().title());
    parts.add(style.lengths().size(template.piece().width(), template.piece().height()));
    switch (piece.grain()) {
      case WIDTH -> parts.add("grain ↔");
      case HEIGHT -> parts.add("grain ↕");
      case ANY -> {}
    }
    String facts =
        parts.stream().map(p -> unbroken(p, width, style)).collect(Collectors.joining(" · "));
    // Two lines at most, whatever somebody called it.
    String name =
        Wrapping.shortened(
            template.piece().name(), Weight.SEMIBOLD, Look.SMALL, 1.6 * width, style.fonts());
    return new Caption(
        Wrapping.lines(name, Weight.SEMIBOLD, Look.SMALL, width, style.fonts()),
        Wrapping.lines(facts, Weight.REGULAR, Look.SMALL, width, style.fonts()));
  }

  /** What belongs together stays together where a line ends, unless it is longer than a line. */
  private static String unbroken(String part, double width, TemplateStyle style) {
    String set = style.fonts().set(part);
    boolean fits = style.fonts().width(set + " ·", Weight.REGULAR, Look.SMALL) <= width;
    return fits ? set.replace(' ', '\u00a0') : set;
  }

  double height() {
    return (names.size() + facts.size()) * LINE + 1.6;
  }

  /** Writes it; {@code corner} is the upper left. */
  void write(PageMarks page, Vec2 corner) {
    double y = corner.y() - LINE + 0.9;
    for (String line : names) {
      Vec2 at = new Vec2(corner.x(), y);
      page.words(line, at, Look.SMALL, Weight.SEMIBOLD, Anchor.START, Look.INK);
      y -= LINE;
    }
    for (String line : facts) {
      Vec2 at = new Vec2(corner.x(), y);
      page.words(line, at, Look.SMALL, Weight.REGULAR, Anchor.START, Look.QUIET);
      y -= LINE;
    }
  }
}
