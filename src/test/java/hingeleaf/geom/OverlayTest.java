package hingeleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OverlayTest {
  private static final Region PANEL = Region.of(Ring.rectangle(0, 0, 150, 150));

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.of(Ring.rectangle(x0, y0, x1, y1));
  }

  @Test
  void difference_cutsAHole() {
    Region hole = Region.of(Shapes.square(130).moved(new Vec2(75, 75)));
    List<Region> left = Overlay.difference(PANEL, hole);
    assertThat(left).hasSize(1);
    assertThat(left.get(0).holes()).hasSize(1);
    assertThat(left.get(0).area()).isCloseTo(150 * 150 - 130 * 130, within(1e-9));
    assertThat(left.get(0).holes().get(0).area()).isNegative();
  }

  @Test
  void touchingBoxes_joinAndDoNotOverlap() {
    Region a = box(0, 0, 10, 10);
    Region b = box(10, 0, 20, 10);
    assertThat(Overlay.overlap(a, b)).isFalse();
    assertThat(Overlay.union(a, b)).singleElement().extracting(Region::area).isEqualTo(200.0);
    assertThat(Overlay.distance(a, b)).isZero();
  }

  @Test
  void emptyShapes() {
    assertThat(Overlay.union(List.of())).isEmpty();
    assertThat(Overlay.intersection(List.of(), List.of(PANEL))).isEmpty();
    assertThat(Overlay.difference(List.of(PANEL), List.of())).hasSize(1);
    assertThat(Overlay.within(List.of(), List.of(PANEL))).isTrue();
  }

  @Test
  void results_comeLowestLeftFirst() {
    List<Region> three =
        Overlay.union(List.of(box(50, 50, 60, 60), box(30, 0, 40, 10), box(0, 0, 10, 10)));
    assertThat(three).extracting(r -> r.box().minX()).containsExactly(0.0, 30.0, 50.0);
  }

  @Test
  void grown_keepsCornersSharp() {
    assertThat(Overlay.grown(box(0, 0, 10, 20), 2))
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.area()).isCloseTo(14 * 24, within(1e-9));
              assertThat(r.box()).isEqualTo(new Box(-2, -2, 12, 22));
            });
    assertThat(Overlay.grown(box(0, 0, 10, 20), -2))
        .singleElement()
        .satisfies(r -> assertThat(r.area()).isCloseTo(6 * 16, within(1e-9)));
    assertThat(Overlay.grown(box(0, 0, 10, 20), -5.5)).isEmpty();
  }

  /** Steiner's formula for a disc: a circle grown by d is a circle of radius r + d. */
  @Test
  void grown_circleStaysACircle() {
    Region r = Region.of(Shapes.circle(90));
    double exact = Math.PI * 50 * 50;
    assertThat(Overlay.area(Overlay.grown(r, 5))).isCloseTo(exact, within(2 * Math.PI * 50 * 0.02));
  }

  /** The border beside a round 90 opening centred in a 150 panel is 30. */
  @Test
  void distance_betweenRingsIsTheBorder() {
    Ring opening = Shapes.circle(90).moved(new Vec2(75, 75));
    assertThat(Overlay.distance(PANEL.outer(), opening)).isCloseTo(30, within(1e-9));
    assertThat(Overlay.distance(new Vec2(-3, -4), PANEL)).isCloseTo(5, within(1e-12));
    assertThat(Overlay.distance(new Vec2(3, 4), PANEL)).isZero();
  }

  @Test
  void faultOf_namesTheCrossing() {
    Region bowTie =
        Region.of(
            new Ring(List.of(new Vec2(0, 0), new Vec2(10, 10), new Vec2(10, 0), new Vec2(0, 12))));
    Vec2 at = Overlay.faultOf(bowTie);
    assertThat(Overlay.valid(bowTie)).isFalse();
    assertThat(at).isNotNull();
    assertThat(at.x()).isCloseTo(60.0 / 11, within(1e-9));
    assertThat(at.y()).isCloseTo(60.0 / 11, within(1e-9));
  }

  @Test
  void crossings_areFoundInAndBetweenRings() {
    Ring square = Ring.rectangle(0, 0, 10, 10);
    Ring bowTie =
        new Ring(List.of(new Vec2(0, 0), new Vec2(10, 10), new Vec2(10, 0), new Vec2(0, 10)));
    assertThat(Crossings.of(List.of(square), 9)).isEqualTo(new Crossings(0, null, true));
    assertThat(Crossings.of(List.of(Shapes.circle(90)), 9).first()).isNull();
    assertThat(Crossings.of(List.of(bowTie), 9)).isEqualTo(new Crossings(1, new Vec2(5, 5), true));
    Ring beside = Ring.rectangle(5, 5, 15, 15);
    assertThat(Crossings.of(List.of(square, beside), 9).count()).isEqualTo(2);
    assertThat(Crossings.of(List.of(square, beside), 1).complete()).isFalse();
    assertThat(Crossings.of(List.of(square, square), 9).first()).isNotNull();
    assertThat(Crossings.of(List.of(square, Ring.rectangle(2, 2, 3, 3)), 9).first()).isNull();
    Ring spike = new Ring(List.of(new Vec2(0, 0), new Vec2(9, 0), new Vec2(4, 0), new Vec2(4, 5)));
    assertThat(Crossings.of(List.of(spike), 9).first()).isNotNull();
    Ring triangle = new Ring(List.of(new Vec2(0, 0), new Vec2(9, 0), new Vec2(4, 5)));
    assertThat(Crossings.of(List.of(triangle), 9).first()).isNull();
  }

  /** Inclusion and exclusion: |A| + |B| = |A or B| + |A and B|. Boxes of seed 7. */
  @Test
  void areas_obeyInclusionAndExclusion() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      Region a = Region.of(Shapes.ellipse(5 + random.nextInt(90), 5 + random.nextInt(90)));
      Region b =
          Region.of(Shapes.square(5 + random.nextInt(60)))
              .moved(new Vec2(random.nextInt(60) - 30, random.nextInt(60) - 30));
      double or = Overlay.area(Overlay.union(a, b));
      double and = Overlay.area(Overlay.intersection(a, b));
      assertThat(or + and).isCloseTo(a.area() + b.area(), within(0.003));
      assertThat(Overlay.area(Overlay.difference(a, b))).isCloseTo(a.area() - and, within(0.003));
    }
  }

  @Test
  void coarser_movesNoLineFurtherThanItSays() {
    Region ring = new Region(Shapes.circle(120), List.of(Shapes.circle(80)));
    Region coarse = Overlay.coarser(ring, 0.08);
    int before = ring.outer().points().size() + ring.holes().get(0).points().size();
    int after = coarse.outer().points().size() + coarse.holes().get(0).points().size();
    assertThat(after).isLessThan(before * 2 / 3).isGreaterThan(20);
    coarse.outer().points().forEach(p -> assertThat(p.length()).isCloseTo(60, within(0.011)));
    for (int i = 0; i < coarse.outer().points().size(); i++) {
      Vec2 a = coarse.outer().points().get(i);
      Vec2 b = coarse.outer().points().get((i + 1) % coarse.outer().points().size());
      assertThat(60 - a.plus(b).times(0.5).length()).isLessThan(0.08 + 0.01);
    }
  }

  @Test
  void coarser_keepsWhatWouldBeLost() {
    Region pierced = new Region(Ring.rectangle(0, 0, 10, 10), List.of(Shapes.circle(0.4)));
    Region moved =
        new Region(
            Ring.rectangle(0, 0, 10, 10), List.of(pierced.holes().get(0).moved(new Vec2(5, 5))));
    assertThat(Overlay.coarser(moved, 3)).isEqualTo(moved);
  }
}
