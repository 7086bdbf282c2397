package hingeleaf.paper;

import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.SeenPiece.SeenScore;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A piece at true size as marks in layers, one layer for each processing step it needs. */
public final class PieceMarks {
  private static final double GLUE_LINES = 2;

  /** How far inside the edge of a pattern its contours are drawn, mm of the drawing. */
  private static final double[] CONTOURS = {0.6, 1.5};

  private static final Pen CONTOUR = Pen.solid(0.18, Look.HAIR);

  private PieceMarks() {}

  /** What is cut and scored, and nothing that is only told: for machines. */
  public static List<Layer> structure(SeenPiece piece) {
    Map<Step, List<Mark>> marks = new EnumMap<>(Step.class);
    for (SeenScore s : piece.scores()) {
      add(marks, s.fold().step(), new Mark.Stroke(Path.of(s.at()), s.fold().pen()));
    }
    piece.slits().forEach(s -> add(marks, Step.CUTTING, new Mark.Stroke(Path.of(s), Pen.CUT)));
    for (Ring hole : piece.shape().holes()) {
      add(marks, Step.CUTTING, new Mark.Stroke(Path.of(hole), Pen.CUT));
    }
    add(marks, Step.CUTTING, new Mark.Stroke(Path.of(piece.shape().outer()), Pen.CUT));
    List<Layer> layers = new ArrayList<>();
    marks.forEach((step, list) -> layers.add(new Layer(step, list)));
    return layers;
  }

  /** What is printed on this face; empty where nothing is. */
  public static List<Layer> inks(SeenPiece piece) {
    List<Mark> marks = new ArrayList<>();
    piece
        .inks()
        .forEach(i -> i.regions().forEach(r -> marks.add(new Mark.Fill(Path.of(r), i.colour()))));
    return marks.isEmpty() ? List.of() : List.of(new Layer(Step.PLAIN, marks));
  }

  /** Rims of what is printed, so that pale inks show on the white of a template. */
  public static List<Layer> inkOutlines(SeenPiece piece) {
    List<Mark> marks = new ArrayList<>();
    piece
        .inks()
        .forEach(
            i -> i.regions().forEach(r -> marks.add(new Mark.Stroke(Path.of(r), Pen.DIMENSION))));
    return marks.isEmpty() ? List.of() : List.of(new Layer(Step.LEGEND, marks));
  }

  /** The areas of this face that take glue, hatched; empty where none does. */
  public static List<Layer> glue(SeenPiece piece) {
    if (piece.glue().isEmpty()) {
      return List.of();
    }
    List<Mark> marks = new ArrayList<>();
    piece.glue().forEach(r -> marks.add(new Mark.Stroke(Hatch.of(r, GLUE_LINES), Pen.GLUE)));
    return List.of(new Layer(Step.GLUING, marks));
  }

  /** Where a pattern is pressed, outlined; empty for a plain piece. */
  public static List<Layer> embossing(SeenPiece piece) {
    List<Mark> marks = new ArrayList<>();
    piece.pressed().forEach(r -> marks.add(new Mark.Stroke(Path.of(r), Pen.PRESSED)));
    return marks.isEmpty() ? List.of() : List.of(new Layer(Step.EMBOSSING, marks));
  }

  /**
   * A pattern where it is not the matter of a drawing: a pale double contour inside its edge.
   *
   * @param pressed where it is, in the drawing's own mm
   */
  public static List<Mark> relief(List<Region> pressed) {
    List<Mark> marks = new ArrayList<>();
    for (double inside : CONTOURS) {
      Overlay.grown(pressed, -inside).forEach(r -> marks.add(new Mark.Stroke(Path.of(r), CONTOUR)));
    }
    return marks;
  }

  private static void add(Map<Step, List<Mark>> marks, Step step, Mark mark) {
    marks.computeIfAbsent(step, s -> new ArrayList<>()).add(mark);
  }
}
