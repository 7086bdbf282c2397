package hingeleaf.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * A bench for whoever has written none: what a newcomer finds in a craft shop. No prices and no
 * hourly rate: these are the maker's own.
 *
 * <p>Where the figures come from: thickness of the 300 g/m2 card from published tables of art card
 * ("14 pt", 300 to 310 g/m2, 0.356 mm), of the 220 g/m2 card by the bulk of 65 lb cover stock in
 * the same tables (1.3 cm3/g); two papers of one grammage differ by a fifth, so measure. Kraft,
 * acetate (1.35 g/cm3), drying times, grams of glue and foam, dies and embossing folders are common
 * practice, from memory.
 */
public final class BuiltInBench {
  private static final double INCH = 25.4;
  private static final Stock.Faces CLEAR = Stock.Faces.alike("#e9f3f6");

  /** For makers who work in mm: A4 and A3 card, ISO envelopes. No country. */
  public static Bench metric() {
    List<Envelope> envelopes = new ArrayList<>(Envelopes.iso());
    envelopes.addAll(Envelopes.metricSquares());
    return new Bench(
        "built-in bench, millimetres",
        false,
        new Trimmer(310, 1),
        new Ruler(300, 1),
        new ScoringBoard(5, 300),
        152,
        metricDies(),
        List.of(
            new EmbossingFolder("emboss-a6", "A6, 105 x 148 mm", 148, 105, 0.8),
            new EmbossingFolder("emboss-150", "150 x 150 mm", 150, 150, 0.8)),
        papers(List.of(sheet("A4"), sheet("A3")), List.of(sheet("A4")), "", "", "0.2 mm"),
        List.of(pva(), tape("tape-6", "double-sided tape 6 mm", 6)),
        List.of(
            foam("foam-1", "foam tape 1 mm", 1),
            foam("foam-2", "foam tape 2 mm", 2),
            foam("foam-3", "foam tape 3 mm", 3)),
        envelopes,
        Accuracy.AVERAGE,
        "",
        0,
        "");
  }

  /** For makers who work in inches: letter and 12 x 12 in card, US envelopes and post. */
  public static Bench inches() {
    return new Bench(
        "built-in bench, inches",
        true,
        new Trimmer(12 * INCH, INCH / 16),
        new Ruler(12 * INCH, INCH / 16),
        new ScoringBoard(INCH / 8, 12 * INCH),
        6 * INCH,
        inchDies(),
        List.of(
            new EmbossingFolder("emboss-a2", "4 1/4 x 5 1/2 in", 5.5 * INCH, 4.25 * INCH, 0.8),
            new EmbossingFolder("emboss-7x5", "5 x 7 in", 7 * INCH, 5 * INCH, 0.8),
            new EmbossingFolder("emboss-6x6", "6 x 6 in", 6 * INCH, 6 * INCH, 0.8)),
        papers(
            List.of(sheet("letter"), sheet("12 x 12 in")),
            List.of(sheet("letter")),
            " (near 80 lb cover)",
            " (near 110 lb cover)",
            "0.008 in"),
        List.of(pva(), tape("tape-1/4", "double-sided tape 1/4 in", INCH / 4)),
        List.of(
            foam("foam-1/32", "foam tape 1/32 in", INCH / 32),
            foam("foam-1/16", "foam tape 1/16 in", INCH / 16),
            foam("foam-1/8", "foam tape 1/8 in", INCH / 8)),
        Envelopes.us(),
        Accuracy.AVERAGE,
        "USD",
        0,
        "US");
  }

  private static List<Stock> papers(
      List<Stock.Sheet> card,
      List<Stock.Sheet> clear,
      String light,
      String heavy,
      String clearThickness) {
    List<Stock> all = new ArrayList<>();
    all.addAll(colour("white", "#faf9f5", card, light, heavy));
    all.addAll(colour("cream", "#f3e9cf", card, light, heavy));
    all.addAll(colour("kraft", "#b58a5c", card, light, heavy));
    all.addAll(colour("red", "#b1282d", card, light, heavy));
    all.addAll(colour("green", "#2f6b47", card, light, heavy));
    all.addAll(colour("navy", "#22325a", card, light, heavy));
    all.addAll(colour("black", "#252525", card, light, heavy));
    all.add(
        new Stock(
            "acetate",
            "clear acetate " + clearThickness,
            Stock.Kind.ACETATE,
            270,
            0.2,
            CLEAR,
            clear,
            5));
    return List.copyOf(all);
  }

  private static List<Stock> colour(
      String word, String rgb, List<Stock.Sheet> sheets, String light, String heavy) {
    Stock.Faces faces = Stock.Faces.alike(rgb);
    double heavyThickness = word.equals("kraft") ? 0.38 : 0.356;
    return List.of(
        card(word + "-220", word + " card 220 g/m2" + light, 220, 0.28, faces, sheets, 5),
        card(
            word + "-300", word + " card 300 g/m2" + heavy, 300, heavyThickness, faces, sheets, 4));
  }

  private static Stock card(
      String name,
      String title,
      double grammage,
      double thickness,
      Stock.Faces faces,
      List<Stock.Sheet> sheets,
      double leastBorder) {
    return new Stock(name, title, Stock.Kind.CARD, grammage, thickness, faces, sheets, leastBorder);
  }

  /** Craft squares come with the grain either way; the other sizes mostly long grain. */
  private static Stock.Sheet sheet(String name) {
    SheetSizes.Size size = SheetSizes.named(name).orElseThrow();
    Grain grain = size.width() == size.height() ? Grain.ANY : Grain.HEIGHT;
    return new Stock.Sheet(name, size.width(), size.height(), grain, 0, -1);
  }

  private static Glue pva() {
    return new Glue("pva", "PVA glue", Glue.Kind.GLUE, 6, 1, 30, 30, 60, 0, 0);
  }

  private static Glue tape(String name, String title, double width) {
    return new Glue(name, title, Glue.Kind.TAPE, width, 0.25, 0, 90, 90, 0, 0);
  }

  /** Polyethylene foam with two films of glue: about 60 kg/m3 and 60 g/m2. */
  private static Foam foam(String name, String title, double thickness) {
    return new Foam(name, title, thickness, 60 + 60 * thickness, 0, 0);
  }

  private static List<Die> metricDies() {
    return List.of(
        die("circle-40", "circle 40 mm", Die.Shape.CIRCLE, 40, 40),
        die("circle-60", "circle 60 mm", Die.Shape.CIRCLE, 60, 60),
        die("circle-90", "circle 90 mm", Die.Shape.CIRCLE, 90, 90),
        die("square-50", "square 50 mm", Die.Shape.RECTANGLE, 50, 50),
        die("oval-80x60", "oval 80 x 60 mm", Die.Shape.ELLIPSE, 80, 60));
  }

  private static List<Die> inchDies() {
    return List.of(
        die("circle-1-1/2", "circle 1 1/2 in", Die.Shape.CIRCLE, 1.5 * INCH, 1.5 * INCH),
        die("circle-2-1/2", "circle 2 1/2 in", Die.Shape.CIRCLE, 2.5 * INCH, 2.5 * INCH),
        die("circle-3-1/2", "circle 3 1/2 in", Die.Shape.CIRCLE, 3.5 * INCH, 3.5 * INCH),
        die("square-2", "square 2 in", Die.Shape.RECTANGLE, 2 * INCH, 2 * INCH),
        die("oval-3x2-1/4", "oval 3 x 2 1/4 in", Die.Shape.ELLIPSE, 3 * INCH, 2.25 * INCH));
  }

  /** A thin steel edge leaves the opening a little larger, the drop-out a little smaller. */
  private static Die die(String name, String label, Die.Shape shape, double w, double h) {
    double edge = 0.2;
    return new Die(name, label, shape, w + edge, h + edge, w - edge, h - edge);
  }

  private BuiltInBench() {}
}
