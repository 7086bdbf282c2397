package hingeleaf.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Envelopes that shops carry, by outer size in mm, neither weighed nor priced.
 *
 * <p>ISO sizes: ISO 269:1985 and DIN 678-1:1998; DL, C6/C5 and C7/C6 as these list them, the B and
 * C sizes by the rounding rule of {@link SheetSizes}. US sizes: the names and inches of the US
 * envelope trade (common practice, no standard). Square envelopes: common practice.
 */
public final class Envelopes {
  private static final double INCH = 25.4;

  /** ISO and US sizes together, each family by rising area of the face. */
  public static List<Envelope> standard() {
    List<Envelope> all = new ArrayList<>(iso());
    all.addAll(us());
    return List.copyOf(all);
  }

  /** ISO 269 sizes, smallest face first. */
  public static List<Envelope> iso() {
    return sorted(
        List.of(
            ofSeries("C7"),
            mm("ISO C7/C6", 162, 81),
            ofSeries("C6"),
            mm("ISO DL", 220, 110),
            ofSeries("B6"),
            mm("ISO C6/C5", 229, 114),
            ofSeries("C5"),
            ofSeries("B5"),
            ofSeries("C4"),
            ofSeries("B4"),
            ofSeries("C3"),
            mm("ISO E4", 400, 280)));
  }

  /** US sizes, smallest face first. */
  public static List<Envelope> us() {
    List<Envelope> all = new ArrayList<>();
    all.add(inches("US A1", 5.125, 3.625));
    all.add(inches("US 5 Bar", 5.625, 4.125));
    all.add(inches("US A2", 5.75, 4.375));
    all.add(inches("US A6", 6.5, 4.75));
    all.add(inches("US A7", 7.25, 5.25));
    all.add(inches("US A8", 8.125, 5.5));
    all.add(inches("US A9", 8.75, 5.75));
    all.add(inches("US A10", 9.5, 6));
    all.add(inches("US Slimline", 8.875, 3.875));
    all.add(inches("US #10", 9.5, 4.125));
    for (int half = 10; half <= 18; half++) {
      double side = half / 2.0;
      all.add(inches("US square " + (half % 2 == 0 ? "" + half / 2 : "" + side), side, side));
    }
    return sorted(all);
  }

  /** Square envelopes as sold in metric countries, mm; common practice, no source. */
  public static List<Envelope> metricSquares() {
    return List.of(
        mm("square 130", 130, 130),
        mm("square 140", 140, 140),
        mm("square 155", 155, 155),
        mm("square 170", 170, 170),
        mm("square 190", 190, 190),
        mm("square 220", 220, 220));
  }

  /** The envelope of that full name, whatever the case; empty where there is none. */
  public static Optional<Envelope> named(String name) {
    String wanted = name.toLowerCase(Locale.ROOT);
    return standard().stream()
        .filter(e -> e.name().toLowerCase(Locale.ROOT).equals(wanted))
        .findFirst();
  }

  private static List<Envelope> sorted(List<Envelope> all) {
    return all.stream()
        .sorted((a, b) -> Double.compare(a.width() * a.height(), b.width() * b.height()))
        .toList();
  }

  private static Envelope ofSeries(String size) {
    SheetSizes.Size s = SheetSizes.named(size).orElseThrow();
    return mm("ISO " + size, /* width= */ s.height(), /* height= */ s.width());
  }

  private static Envelope inches(String name, double width, double height) {
    return mm(name, width * INCH, height * INCH);
  }

  private static Envelope mm(String name, double width, double height) {
    return new Envelope(name, width, height, 0, 0);
  }

  private Envelopes() {}
}
