package hingeleaf.structure;

import hingeleaf.design.FieldKind;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Sizes of one layer that differ from the card's: a piece that came out otherwise, or one that is
 * cut to fit such a piece.
 *
 * @param width of its panel, mm; null for the card's
 * @param height of its panel, mm; null for the card's
 * @param sides the left (or bottom) and the right (or top) one, mm; null for the stage's depth
 * @param tabs the same of its glue tabs, mm; null for the card's
 * @param setIn how far inside the edge of the layer behind the folds of its tabs stand, mm; less
 *     than 0 where they stand out over it
 */
record OwnSizes(
    @Nullable Double width,
    @Nullable Double height,
    @Nullable List<Double> sides,
    @Nullable List<Double> tabs,
    List<Double> setIn) {
  private static final double LARGEST = 1000;
  private static final double MOST_SET_IN = 50;

  /** A layer like all others. */
  static final OwnSizes NONE = new OwnSizes(null, null, null, null, List.of(0.0, 0.0));

  static final FormField WIDTH =
      FormField.length(
          "width", Range.positive(LARGEST), "of its own panel; left out: the card's width");

  static final FormField HEIGHT =
      FormField.length(
          "height", Range.positive(LARGEST), "of its own panel; left out: the card's height");

  static final FormField SIDES =
      pair(
          "side-depths",
          Range.from(1, 200),
          "its own two sides, left and right (or bottom and top); left out: as deep as the stage");

  static final FormField TABS =
      pair(
          "tab-widths",
          Range.from(1, 100),
          "its own two glue tabs, left and right (or bottom and top); left out: the card's");

  static final FormField SET_IN =
      pair(
          "set-in",
          Range.eitherWay(MOST_SET_IN),
          "how far inside the edge of the layer behind its two tabs' folds are glued; less than 0"
              + " where they reach out over it; left out: on the edge");

  private static FormField pair(String key, Range range, String says) {
    return FormField.of(
        key,
        new FieldKind.Tuple(
            List.of(
                new FieldKind.TuplePart("first", range), new FieldKind.TuplePart("second", range))),
        says);
  }

  /** What a frame of the design says of itself. */
  static OwnSizes of(Values frame, Workshop shop) {
    List<Double> setIn = two(frame, SET_IN, shop);
    return new OwnSizes(
        one(frame, WIDTH, shop),
        one(frame, HEIGHT, shop),
        two(frame, SIDES, shop),
        two(frame, TABS, shop),
        setIn == null ? NONE.setIn() : setIn);
  }

  /** What a back says of itself: it has neither sides nor tabs. */
  static OwnSizes ofBack(Values back, Workshop shop) {
    return new OwnSizes(one(back, WIDTH, shop), one(back, HEIGHT, shop), null, null, NONE.setIn());
  }

  private static @Nullable Double one(Values v, FormField field, Workshop shop) {
    return v.has(field.key()) ? Double.valueOf(shop.mm(v, field.key())) : null;
  }

  private static @Nullable List<Double> two(Values v, FormField field, Workshop shop) {
    if (!v.has(field.key())) {
      return null;
    }
    List<Double> all = new ArrayList<>();
    v.lengths(field.key()).forEach(l -> all.add(shop.mm(field.key(), l)));
    return List.copyOf(all);
  }

  /** The panel across its sides, mm. */
  double across(Axes axes, double otherwise) {
    Double own = axes == Axes.LEFT_RIGHT ? width : height;
    return own == null ? otherwise : own;
  }

  /** The panel along its sides, mm. */
  double along(Axes axes, double otherwise) {
    Double own = axes == Axes.LEFT_RIGHT ? height : width;
    return own == null ? otherwise : own;
  }

  double side(int which, double otherwise) {
    return sides == null ? otherwise : sides.get(which);
  }

  double tab(int which, double otherwise) {
    return tabs == null ? otherwise : tabs.get(which);
  }
}
