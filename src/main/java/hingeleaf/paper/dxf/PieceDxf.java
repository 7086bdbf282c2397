package hingeleaf.paper.dxf;

import hingeleaf.card.Face;
import hingeleaf.card.Piece;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Numerals;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.PieceMarks;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.Step;
import java.util.List;
import java.util.Locale;

/**
 * A piece as a DXF file at true size, front up, 1 drawing unit to the millimetre, y up.
 *
 * <p>Rings are closed POLYLINEs, scores and slits LINEs. Layers are {@code CUTTING}, {@code
 * CREASING} (mountain folds) and {@code REVERSECREASING} (valley folds), each with a line type of
 * its own.
 */
public final class PieceDxf {
  private final StringBuilder out = new StringBuilder();

  private PieceDxf() {}

  /** The file's text, ASCII. */
  public static String write(Piece piece) {
    SeenPiece seen = SeenPiece.of(piece, Face.FRONT, List.of());
    List<Layer> layers = PieceMarks.structure(seen);
    PieceDxf dxf = new PieceDxf();
    dxf.head(piece, seen);
    dxf.tables(layers);
    dxf.section("ENTITIES");
    for (Layer layer : layers) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Stroke stroke) {
          dxf.entity(name(layer.step()), stroke.path());
        }
      }
    }
    dxf.pair(0, "ENDSEC");
    dxf.pair(0, "EOF");
    return dxf.out.toString();
  }

  private static String name(Step step) {
    return step.id().toUpperCase(Locale.ROOT);
  }

  private void head(Piece piece, SeenPiece seen) {
    pair(999, ascii(piece.name()));
    pair(999, "Unit: 1 drawing unit is 1 millimetre. Front up, y up.");
    section("HEADER");
    pair(9, "$ACADVER");
    pair(1, "AC1009");
    pair(9, "$EXTMIN");
    point(10, Vec2.ZERO);
    pair(9, "$EXTMAX");
    point(10, new Vec2(seen.width(), seen.height()));
    pair(0, "ENDSEC");
  }

  private void tables(List<Layer> layers) {
    section("TABLES");
    pair(0, "TABLE");
    pair(2, "LTYPE");
    pair(70, "3");
    lineType("CONTINUOUS", "whole", List.of());
    lineType("MOUNTAIN", "dash dot dot", Pen.MOUNTAIN.dash());
    lineType("VALLEY", "dashes", Pen.VALLEY.dash());
    pair(0, "ENDTAB");
    pair(0, "TABLE");
    pair(2, "LAYER");
    pair(70, Integer.toString(layers.size()));
    for (Layer layer : layers) {
      pair(0, "LAYER");
      pair(2, name(layer.step()));
      pair(70, "0");
      pair(62, "7");
      pair(6, lineType(layer.step()));
    }
    pair(0, "ENDTAB");
    pair(0, "ENDSEC");
  }

  private static String lineType(Step step) {
    return switch (step) {
      case CREASING -> "MOUNTAIN";
      case REVERSE_CREASING -> "VALLEY";
      case PLAIN, EMBOSSING, GLUING, CUTTING, DIMENSIONS, LEGEND -> "CONTINUOUS";
    };
  }

  private void lineType(String name, String says, List<Double> dash) {
    pair(0, "LTYPE");
    pair(2, name);
    pair(70, "0");
    pair(3, says);
    pair(72, "65");
    pair(73, Integer.toString(dash.size()));
    pair(40, real(dash.stream().mapToDouble(d -> d).sum()));
    for (int i = 0; i < dash.size(); i++) {
      pair(49, real(i % 2 == 0 ? dash.get(i) : -dash.get(i)));
    }
  }

  private void entity(String layer, Path path) {
    for (List<Vec2> line : path.lines()) {
      if (path.closed()) {
        polyline(layer, line);
      } else {
        for (int i = 0; i + 1 < line.size(); i++) {
          pair(0, "LINE");
          pair(8, layer);
          point(10, line.get(i));
          point(11, line.get(i + 1));
        }
      }
    }
  }

  private void polyline(String layer, List<Vec2> points) {
    pair(0, "POLYLINE");
    pair(8, layer);
    pair(66, "1");
    point(10, Vec2.ZERO);
    pair(70, "1");
    for (Vec2 p : points) {
      pair(0, "VERTEX");
      pair(8, layer);
      point(10, p);
    }
    pair(0, "SEQEND");
    pair(8, layer);
  }

  private void section(String name) {
    pair(0, "SECTION");
    pair(2, name);
  }

  private void point(int code, Vec2 p) {
    pair(code, real(p.x()));
    pair(code + 10, real(p.y()));
    pair(code + 20, "0.0");
  }

  private void pair(int code, String value) {
    out.append(code).append('\n').append(value).append('\n');
  }

  /** With a decimal point always: some readers take a number without one for a whole number. */
  private static String real(double v) {
    String s = Numerals.of(v);
    return s.indexOf('.') < 0 ? s + ".0" : s;
  }

  /** A comment is one line of ASCII, whatever the name holds. */
  private static String ascii(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .limit(200)
        .forEach(cp -> safe.append(cp >= ' ' && cp < 127 ? (char) cp : '?'));
    return safe.toString();
  }
}
