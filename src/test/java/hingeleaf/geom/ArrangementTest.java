package hingeleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The cells of overlapping shapes: by hand, by what areas must add up to, and against the faces
 * that the JTS library's polygonizer finds between the same lines.
 */
class ArrangementTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Region box(double x, double y, double width, double height) {
    return Region.of(Ring.rectangle(x, y, x + width, y + height));
  }

  private static Region framed(double x, double y, double side, double border) {
    return new Region(
        Ring.rectangle(x, y, x + side, y + side),
        List.of(
            Ring.rectangle(x + border, y + border, x + side - border, y + side - border)
                .reversed()));
  }

  private static Map<BitSet, Double> areas(List<Region> shapes) {
    Map<BitSet, Double> areas = new HashMap<>();
    Arrangement.of(shapes).forEach(c -> areas.merge(c.cover(), c.area(), Double::sum));
    areas.replaceAll((cover, area) -> Math.round(area * 1e9) / 1e9);
    return areas;
  }

  private static BitSet cover(int... shapes) {
    BitSet set = new BitSet();
    for (int i : shapes) {
      set.set(i);
    }
    return set;
  }

  @Test
  void twoCrossingBoxes_areThreeCells() {
    assertThat(areas(List.of(box(0, 0, 10, 4), box(6, 1, 8, 2))))
        .isEqualTo(Map.of(cover(0), 32.0, cover(1), 8.0, cover(0, 1), 8.0));
  }

  @Test
  void twoAlike_areOne() {
    List<Arrangement.Cell> cells = Arrangement.of(List.of(box(0, 0, 5, 5), box(0, 0, 5, 5)));
    assertThat(cells).singleElement().matches(c -> c.cover().equals(cover(0, 1)));
    assertThat(cells.get(0).area()).isCloseTo(25, within(1e-9));
  }

  /** A small one wholly inside shares no line with what it lies on, nor does one in an opening. */
  @Test
  void islandsKnowWhatTheyLieOn() {
    Region frame = framed(0, 0, 20, 5);
    Region onFrame = box(1, 1, 2, 2);
    Region inOpening = box(8, 8, 3, 3);
    Region onThat = box(9, 9, 1, 1);
    Region under = box(-5, -5, 30, 30);
    assertThat(areas(List.of(under, frame, onFrame, inOpening, onThat)))
        .isEqualTo(
            Map.of(
                cover(0), 900.0 - 400 + 100 - 9,
                cover(0, 1), 300.0 - 4,
                cover(0, 1, 2), 4.0,
                cover(0, 3), 9.0 - 1,
                cover(0, 3, 4), 1.0));
  }

  @Test
  void touchingEdgesAndCorners_divideNothing() {
    assertThat(areas(List.of(box(0, 0, 4, 4), box(4, 1, 4, 2), box(8, 3, 1, 1))))
        .isEqualTo(Map.of(cover(0), 16.0, cover(1), 8.0, cover(2), 1.0));
  }

  @Test
  void everyPointIsInItsCell() {
    List<Region> shapes = scattered(new Random(5), 14);
    List<Arrangement.Cell> cells = Arrangement.of(shapes);
    assertThat(cells).hasSizeGreaterThan(30);
    for (Arrangement.Cell c : cells) {
      for (int i = 0; i < shapes.size(); i++) {
        assertThat(shapes.get(i).contains(c.inside())).isEqualTo(c.cover().get(i));
      }
    }
  }

  /** Frames, boxes and circles strewn about, some of them on the same lines. */
  private static List<Region> scattered(Random random, int n) {
    List<Region> shapes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double x = random.nextInt(12) * 5;
      double y = random.nextInt(12) * 5;
      switch (random.nextInt(3)) {
        case 0 -> shapes.add(box(x, y, 5 * (1 + random.nextInt(6)), 5 * (1 + random.nextInt(6))));
        case 1 -> shapes.add(framed(x, y, 15 + random.nextInt(20), 3 + random.nextInt(4)));
        default -> {
          Ring circle = Shapes.circle(8 + 24 * random.nextDouble());
          shapes.add(Region.of(circle.moved(new Vec2(x, y))));
        }
      }
    }
    return shapes;
  }

  @Test
  void areasAddUp_andAreThoseOfTheReference() {
    for (int seed = 0; seed < 60; seed++) {
      List<Region> shapes = scattered(new Random(seed), 3 + seed % 18);
      List<Arrangement.Cell> cells = Arrangement.of(shapes);
      double layered = cells.stream().mapToDouble(c -> c.area() * c.cover().cardinality()).sum();
      assertThat(layered)
          .as("seed " + seed)
          .isCloseTo(shapes.stream().mapToDouble(Region::area).sum(), within(0.05));
      Map<BitSet, Double> reference = reference(shapes);
      Map<BitSet, Double> found = areas(shapes);
      assertThat(found.keySet()).as("seed " + seed).isEqualTo(reference.keySet());
      found.forEach(
          (cover, area) -> assertThat(area).isCloseTo(reference.get(cover), within(0.02)));
    }
  }

  /** The same by the library: lines noded by rounding, polygonized, each face asked by a point. */
  private static Map<BitSet, Double> reference(List<Region> shapes) {
    List<LineString> lines = new ArrayList<>();
    for (Region r : shapes) {
      lines.add(line(r.outer()));
      r.holes().forEach(h -> lines.add(line(h)));
    }
    Geometry all = JTS.createMultiLineString(lines.toArray(LineString[]::new));
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(
        OverlayNG.overlay(
            all, null, OverlayNG.UNION, new SnapRoundingNoder(new PrecisionModel(1e5))));
    Map<BitSet, Double> areas = new HashMap<>();
    for (Object o : polygonizer.getPolygons()) {
      Polygon p = (Polygon) o;
      var at = p.getInteriorPoint().getCoordinate();
      BitSet cover = new BitSet();
      for (int i = 0; i < shapes.size(); i++) {
        cover.set(i, shapes.get(i).contains(new Vec2(at.x, at.y)));
      }
      if (p.getArea() > Tolerance.AREA_MM2 && !cover.isEmpty()) {
        areas.merge(cover, p.getArea(), Double::sum);
      }
    }
    return areas;
  }

  private static LineString line(Ring ring) {
    List<Vec2> points = ring.points();
    var c = new org.locationtech.jts.geom.Coordinate[points.size() + 1];
    for (int i = 0; i < c.length; i++) {
      Vec2 p = points.get(i % points.size());
      c[i] = new org.locationtech.jts.geom.Coordinate(p.x(), p.y());
    }
    return JTS.createLineString(c);
  }
}
