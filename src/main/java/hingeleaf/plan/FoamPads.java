package hingeleaf.plan;

import hingeleaf.card.Join;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Foam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The foam under one raised part, as it is cut and stuck: what the plan says, what is weighed and
 * what is used up are all read from it.
 *
 * <p>The rule (common practice, no source): strips as wide as foam tape is sold, along the part's
 * longer side, gaps no wider than the strips, all of it a little inside the edge so that none
 * shows. A part too small for strips gets one pad of its own shape.
 *
 * @param foam of the bench; empty where none, single or double, is so thick
 * @param layers of it, one upon the other
 * @param thickness of all layers, mm
 * @param pads what one layer covers, in the coordinates of the part
 * @param strips whether the pads are strips of {@link #width}; false for pads of the part's shape
 * @param width of a strip, mm
 * @param inside how far from the part's edge the foam ends, mm; 0 under a part too narrow for that
 */
public record FoamPads(
    Optional<Foam> foam,
    int layers,
    double thickness,
    List<Region> pads,
    boolean strips,
    double width,
    double inside) {
  /** How far inside the part's edge foam ends, mm: common practice, no source. */
  public static final double INSIDE_MM = 2;

  /** How wide foam tape is sold, mm: common practice, no source; 1/4 in on a bench in inches. */
  private static final double TAPE_MM = 6;

  private static final double TAPE_IN_MM = 6.35;

  /** A gap a hair wider than a strip needs no further strip. */
  private static final double EVEN = 0.02;

  /** A foam within this of what is wanted is it, mm: it gives that much under a thumb. */
  private static final double SAME_MM = 0.05;

  /** Polyethylene foam with two films of glue, where the bench has none so thick; from memory. */
  private static final double FILMS_G = 60;

  private static final double PER_MM_G = 60;

  public FoamPads {
    pads = List.copyOf(pads);
  }

  /**
   * The foam of a raised join.
   *
   * @param g raised by more than 0
   */
  public static FoamPads of(Join.Glue g, Bench bench) {
    double width = bench.inches() ? TAPE_IN_MM : TAPE_MM;
    Optional<Foam> one = foam(bench, g.raisedBy(), SAME_MM);
    Optional<Foam> two = one.isPresent() ? one : foam(bench, g.raisedBy() / 2, SAME_MM);
    int layers = one.isEmpty() && two.isPresent() ? 2 : 1;
    Region area = g.a().area();
    List<Region> inner = Overlay.grown(area, -INSIDE_MM);
    boolean narrow = Overlay.area(inner) < area.area() / 5;
    inner = narrow ? List.of(area) : inner;
    List<Region> strips = strips(inner, width);
    boolean laid = !strips.isEmpty();
    return new FoamPads(
        two, layers, g.raisedBy(), laid ? strips : inner, laid, width, narrow ? 0 : INSIDE_MM);
  }

  private static Optional<Foam> foam(Bench bench, double thickness, double within) {
    return bench.foams().stream()
        .filter(f -> Math.abs(f.thickness() - thickness) < within)
        .findFirst();
  }

  /** Strips along the longer side; none where two would not fit side by side. */
  private static List<Region> strips(List<Region> inner, double width) {
    Box box = inner.get(0).box();
    for (Region r : inner) {
      box = box.union(r.box());
    }
    boolean level = box.width() >= box.height();
    double across = level ? box.height() : box.width();
    if (across < 2 * width) {
      return List.of();
    }
    int n = (int) Math.max(2, Math.ceil((across + width) / (2 * width) - EVEN));
    List<Region> rows = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double at = (across - width) * i / (n - 1);
      rows.add(
          Region.of(
              level
                  ? Ring.rectangle(box.minX(), box.minY() + at, box.maxX(), box.minY() + at + width)
                  : Ring.rectangle(
                      box.minX() + at, box.minY(), box.minX() + at + width, box.maxY())));
    }
    List<Region> strips =
        Overlay.intersection(inner, rows).stream()
            .filter(r -> r.area() >= width * width / 4)
            .toList();
    return Overlay.area(strips) < Overlay.area(inner) / 4 ? List.of() : strips;
  }

  /** What all layers cover together, mm2: what is taken off the roll. */
  public double used() {
    return layers * Overlay.area(pads);
  }

  /** Length of tape that all strips of one layer take, mm; 0 where they are pads. */
  public double length() {
    return strips ? Overlay.area(pads) / width : 0;
  }

  /** What it weighs, g. */
  public double grams() {
    double perM2 = foam.map(f -> layers * f.gramsPerM2()).orElse(FILMS_G + PER_MM_G * thickness);
    return Overlay.area(pads) * perM2 * 1e-6;
  }
}
