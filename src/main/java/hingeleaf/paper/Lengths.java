package hingeleaf.paper;

import java.util.function.DoubleFunction;

/**
 * How the maker reads lengths; drawings never decide on units.
 *
 * @param full with the unit, such as {@code 7 1/2 in}
 * @param bare without it, such as {@code 7 1/2}
 */
public record Lengths(DoubleFunction<String> full, DoubleFunction<String> bare) {
  /** Millimetres as they are in the files, to a ten-thousandth. */
  public static final Lengths MM = new Lengths(v -> Numerals.of(v) + " mm", Numerals::of);

  /** Two lengths of a thing, the unit said once. */
  public String size(double width, double height) {
    return bare.apply(width) + " × " + full.apply(height);
  }
}
