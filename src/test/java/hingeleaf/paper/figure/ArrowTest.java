package hingeleaf.paper.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Pen;
import java.util.List;
import org.junit.jupiter.api.Test;

class ArrowTest {
  private static List<Vec2> shaft(Vec2 from, Vec2 to, double bulge) {
    return ((Mark.Stroke) Arrow.of(from, to, bulge, Pen.EDGE).get(0)).path().lines().get(0);
  }

  @Test
  void halfCircle_bulgesToTheLeft() {
    // A bulge of one half over a chord of 40 is a half circle of radius 20 about its middle.
    List<Vec2> points = shaft(new Vec2(0, 0), new Vec2(40, 0), 0.5);
    for (Vec2 p : points.subList(0, points.size() - 1)) {
      assertThat(p.distance(new Vec2(20, 0))).isCloseTo(20, within(1e-9));
      assertThat(p.y()).isGreaterThanOrEqualTo(-1e-9);
    }
    double top = points.stream().mapToDouble(Vec2::y).max().orElseThrow();
    assertThat(top).isCloseTo(20, within(1e-9));
  }

  @Test
  void negativeBulge_goesToTheRight() {
    List<Vec2> points = shaft(new Vec2(0, 0), new Vec2(40, 0), -0.25);
    double low = points.stream().mapToDouble(Vec2::y).min().orElseThrow();
    assertThat(low).isCloseTo(-10, within(1e-9));
  }

  @Test
  void noWay_isRefused() {
    assertThatThrownBy(() -> Arrow.of(Vec2.ZERO, Vec2.ZERO, 0, Pen.EDGE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
