package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Visible polygons against single rays (the definition of being seen), and against the silhouette
 * as the platform's own {@code java.awt.geom.Area} joins it. Scenes are seeded, with panels that
 * pass through each other and lie in rings.
 */
class SightAgainstRaysTest {
  private static final double MARGIN = 0.02;

  /** With this many parts the platform's own areas take too long. */
  private static final int MANY = 100;

  private static List<Look> looks(Random r) {
    double a = r.nextDouble() * 2 - 1;
    double b = r.nextDouble() - 0.5;
    return List.of(
        Look.straightOn(),
        Look.threeQuarter(),
        Look.turned(2 * a, b),
        Look.fromEye(new Vec3(0, 0, 40), 400, a, b),
        Look.fromEye(new Vec3(5, -5, 0), 250, b, a));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void randomScenes(int seed) {
    Random random = new Random(seed);
    Scene scene = RandomScenes.scene(random, 3 + random.nextInt(12));
    for (Look look : looks(random)) {
      agree(scene, look, 1500, random);
    }
  }

  @Test
  void stackedFramesThroughTheirOpenings() {
    Random random = new Random(7);
    Scene scene = Stacks.caseA().scene();
    for (Look look : looks(random)) {
      agree(scene, look, 4000, random);
    }
  }

  /** From standing to a hair above flat; flat itself is a matter of layers, not of rays. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 0.01, 0.4, 1.1, 1.5, 1.54})
  void aStackOnItsWayToFlat(double lean) {
    Random random = new Random(8);
    Scene scene = Stacks.caseA(lean).scene();
    for (Look look : looks(random)) {
      agree(scene, look, 600, random);
    }
    agree(scene, Look.turned(lean, 0), 600, random);
  }

  @Test
  void theLargestCard() {
    Scene scene = Stacks.large().scene();
    Random random = new Random(3);
    agree(scene, Look.threeQuarter(), 1500, random);
    agree(scene, Look.straightOn(), 1500, random);
    agree(scene, Look.fromEye(new Vec3(0, 0, 144), 400, 0.3, 0.2), 1500, random);
  }

  private static void agree(Scene scene, Look look, int samples, Random random) {
    View view = Sight.look(scene, look);
    List<VisiblePolygon> paper = paper(view);
    RayModel rays = new RayModel(scene, look);
    int sure = 0;
    for (int i = 0; i < samples; i++) {
      Vec2 at =
          new Vec2(
              view.box().minX() + view.box().width() * random.nextDouble(),
              view.box().minY() + view.box().height() * random.nextDouble());
      Optional<String> expected = rays.surely(at, MARGIN);
      if (expected.isPresent()) {
        sure++;
        List<VisiblePolygon> found = paper.stream().filter(p -> p.region().contains(at)).toList();
        assertThat(found.stream().map(VisiblePolygon::part).findFirst().orElse(""))
            .as("%s at %s", look, at)
            .isEqualTo(expected.get());
        assertThat(found).as("overlap at %s", at).hasSizeLessThan(2);
      }
    }
    assertThat(sure).isGreaterThan(samples / 2);
    if (scene.parts().size() < MANY) {
      silhouetteIsCovered(scene, rays, paper);
    }
  }

  private static void silhouetteIsCovered(Scene scene, RayModel rays, List<VisiblePolygon> paper) {
    double sum = paper.stream().mapToDouble(p -> p.region().area()).sum();
    double silhouette = silhouette(scene, rays);
    assertThat(sum).isCloseTo(silhouette, within(1e-6 * silhouette + 0.05));
  }

  private static List<VisiblePolygon> paper(View view) {
    return view.polygons().stream().filter(p -> p.kind() == VisiblePolygon.Kind.PAPER).toList();
  }

  static double silhouette(Scene scene, RayModel rays) {
    Area all = new Area();
    for (Placed p : scene.parts()) {
      Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      List<Ring> rings = new ArrayList<>(p.panel().region().holes());
      rings.add(p.panel().region().outer());
      for (Ring ring : rings) {
        List<Vec2> v = ring.points().stream().map(q -> rays.project(p.pose().apply(q))).toList();
        path.moveTo(v.get(0).x(), v.get(0).y());
        v.subList(1, v.size()).forEach(q -> path.lineTo(q.x(), q.y()));
        path.closePath();
      }
      all.add(new Area(path));
    }
    return area(all);
  }

  private static double area(Area area) {
    double twice = 0;
    double[] c = new double[6];
    double sx = 0;
    double sy = 0;
    double x = 0;
    double y = 0;
    for (PathIterator i = area.getPathIterator(null); !i.isDone(); i.next()) {
      int type = i.currentSegment(c);
      if (type == PathIterator.SEG_MOVETO) {
        sx = c[0];
        sy = c[1];
      } else {
        double nx = type == PathIterator.SEG_CLOSE ? sx : c[0];
        double ny = type == PathIterator.SEG_CLOSE ? sy : c[1];
        twice += x * ny - nx * y;
        c[0] = nx;
        c[1] = ny;
      }
      x = c[0];
      y = c[1];
    }
    return Math.abs(twice / 2);
  }
}
