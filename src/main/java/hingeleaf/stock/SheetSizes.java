package hingeleaf.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Sizes in which paper is sold, upright (width at most height), in mm.
 *
 * <p>ISO 216 (A, B) and ISO 269 (C, for envelopes): the sides stand as 1 to the square root of 2;
 * A0 has 1 m2, B0 is 1 m wide, C0 is the geometric mean of the two. The largest is rounded to whole
 * mm; each next one halves the long side and drops the fraction, which gives every size of the
 * published tables. US sizes as in ANSI/ASME Y14.1; 12, 8 and 6 in squares are common practice of
 * the craft trade.
 */
public final class SheetSizes {
  private static final double INCH = 25.4;
  private static final int LAST_OF_SERIES = 10;

  /**
   * A size with its name.
   *
   * @param width mm
   * @param height mm, at least the width
   */
  public record Size(String name, double width, double height) {}

  private static final List<Size> ALL = all();

  /** Every size known, in the order A, B, C, US, craft squares. */
  public static List<Size> standard() {
    return ALL;
  }

  /** The size of that name, whatever the case and spaces; empty where there is none. */
  public static Optional<Size> named(String name) {
    String wanted = bare(name);
    return ALL.stream().filter(s -> bare(s.name()).equals(wanted)).findFirst();
  }

  /**
   * How far a trimmed sheet may be off by ISO 216: 1.5 mm for sides up to 150 mm, 2 mm up to 600, 3
   * mm above.
   *
   * @param side mm
   */
  public static double tolerance(double side) {
    if (side <= 150) {
      return 1.5;
    }
    return side <= 600 ? 2 : 3;
  }

  private static String bare(String name) {
    return name.replace(" ", "").toLowerCase(Locale.ROOT);
  }

  private static List<Size> all() {
    List<Size> sizes = new ArrayList<>();
    double fourthRoot = Math.pow(2, 0.25);
    sizes.addAll(series("A", 1000 / fourthRoot, 1000 * fourthRoot));
    sizes.addAll(series("B", 1000, 1000 * Math.sqrt(2)));
    double eighthRoot = Math.sqrt(fourthRoot);
    sizes.addAll(series("C", 1000 / eighthRoot, 1000 / eighthRoot * Math.sqrt(2)));
    sizes.add(inches("letter", 8.5, 11));
    sizes.add(inches("half letter", 5.5, 8.5));
    sizes.add(inches("legal", 8.5, 14));
    sizes.add(inches("tabloid", 11, 17));
    sizes.add(inches("ANSI A", 8.5, 11));
    sizes.add(inches("ANSI B", 11, 17));
    sizes.add(inches("ANSI C", 17, 22));
    sizes.add(inches("ANSI D", 22, 34));
    sizes.add(inches("ANSI E", 34, 44));
    sizes.add(inches("12 x 12 in", 12, 12));
    sizes.add(inches("8 x 8 in", 8, 8));
    sizes.add(inches("6 x 6 in", 6, 6));
    return List.copyOf(sizes);
  }

  private static List<Size> series(String letter, double width, double height) {
    List<Size> sizes = new ArrayList<>();
    long w = Math.round(width);
    long h = Math.round(height);
    for (int i = 0; i <= LAST_OF_SERIES; i++) {
      sizes.add(new Size(letter + i, w, h));
      long half = h / 2;
      h = w;
      w = half;
    }
    return sizes;
  }

  private static Size inches(String name, double width, double height) {
    return new Size(name, width * INCH, height * INCH);
  }

  private SheetSizes() {}
}
