package hingeleaf.paper;

import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Marks on a page or in a figure: origin at the lower left, x right, y up, mm.
 *
 * @param width of the page or figure, mm
 * @param height of the page or figure, mm
 * @param title said aloud by a reader of the file; may be empty
 * @param layers painted in this order
 */
public record Drawing(double width, double height, String title, List<Layer> layers) {
  public Drawing {
    layers = List.copyOf(layers);
    if (!(width > 0 && height > 0 && width < 1e6 && height < 1e6)) {
      throw new IllegalArgumentException(
          "a drawing " + width + " x " + height + " mm cannot be made");
    }
  }

  /** A drawing with one layer that is no processing step. */
  public static Drawing plain(double width, double height, String title, List<Mark> marks) {
    return new Drawing(width, height, title, List.of(new Layer(Step.PLAIN, marks)));
  }

  /** Marks that belong together: all of one processing step, or {@link Step#PLAIN}. */
  public record Layer(Step step, List<Mark> marks) {
    public Layer {
      marks = List.copyOf(marks);
    }
  }

  /** All marks in painting order, moved as one; steps are forgotten. */
  public Mark moved(Vec2 by) {
    List<Mark> all = new ArrayList<>();
    layers.forEach(layer -> all.addAll(layer.marks()));
    return new Mark.Group(all, by);
  }
}
