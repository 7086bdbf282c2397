package hingeleaf.design;

import hingeleaf.design.FieldKind.TuplePart;
import hingeleaf.design.FieldKind.Variant;
import hingeleaf.measure.Length;
import java.util.List;

/** How files give a shape: {@code {circle: 90}}, {@code {rect: [80, 60], at: [0, 5]}}. */
public final class ShapeForm {
  private static final double LARGEST = 1000;
  private static final Range SIZE = Range.positive(LARGEST);

  /** Read it with {@link Values#choice} and {@link Shape#of}. */
  public static final FieldKind.OneOf KIND =
      new FieldKind.OneOf(
          "a shape",
          List.of(
              alone(FormField.length("circle", SIZE, "a circle of this diameter")),
              alone(FormField.length("square", SIZE, "a square of this side")),
              alone(FormField.size("rect", LARGEST, "a rectangle")),
              alone(FormField.size("ellipse", LARGEST, "an ellipse, edge to edge")),
              alone(FormField.size("arch", LARGEST, "a rectangle with a half-round top")),
              alone(
                  FormField.of(
                      "rounded", rounded(), "a rectangle with rounded corners of this radius")),
              drawn()),
          List.of(
              FormField.point(
                      "at", LARGEST, "how far right of and above the panel's middle it sits")
                  .usually("[0, 0]")));

  private ShapeForm() {}

  private static Variant alone(FormField main) {
    return new Variant(main, List.of());
  }

  private static Variant drawn() {
    return new Variant(
        FormField.of(
            "svg", new FieldKind.BesideFile(".svg"), "an outline drawn in an SVG file beside this"),
        List.of(FormField.length("width", SIZE, "how wide the outline is made").required()));
  }

  private static FieldKind.Tuple rounded() {
    return new FieldKind.Tuple(
        List.of(
            new TuplePart("width", SIZE),
            new TuplePart("height", SIZE),
            new TuplePart("radius", Range.from(0, LARGEST))),
        ShapeForm::cornersTooRound);
  }

  private static String cornersTooRound(List<Length> sizes) {
    Length twice = sizes.get(2).times(2);
    boolean fits = twice.compareTo(sizes.get(0)) <= 0 && twice.compareTo(sizes.get(1)) <= 0;
    return fits ? "" : "the radius of the corners is more than half the width or the height";
  }

  /** A field that takes a shape. */
  public static FormField field(String key, String says) {
    return FormField.of(key, KIND, says);
  }
}
