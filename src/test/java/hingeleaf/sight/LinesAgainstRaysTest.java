package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Visible lines against single rays: a point of an edge is drawn where nothing lies before it, and
 * each stroke has on its two sides what it says.
 */
class LinesAgainstRaysTest {
  private static final double ASIDE = 0.02;
  private static final double BESIDE = 0.002;
  private static final double DRAWN = 0.003;
  private static final int SAMPLES = 300;
  private static final double CLEARLY = 0.1;

  private static final List<Look> LOOKS =
      List.of(
          Look.straightOn(),
          Look.threeQuarter(),
          Look.turned(-0.9, 0.3),
          Look.turned(2.5, -0.4),
          Look.fromEye(new Vec3(0, 0, 36), 400, 0.3, 0.1));

  @ParameterizedTest
  @ValueSource(ints = {21, 22, 23, 24, 25, 26})
  void randomScenes(int seed) {
    Random random = new Random(seed);
    Scene scene = RandomScenes.scene(random, 4 + random.nextInt(8));
    check(scene, random);
  }

  @Test
  void stackedFrames() {
    Scene scene = Stacks.caseA().scene();
    check(scene, new Random(5));
  }

  private static void check(Scene scene, Random random) {
    Map<Hidden, Integer> counts = new EnumMap<>(Hidden.class);
    for (Look look : LOOKS) {
      edgesAreDrawnWhereNothingHidesThem(scene, look, random, counts);
      strokesSayWhatIsBeside(scene, look);
    }
    assertThat(counts.get(Hidden.YES)).isGreaterThan(SAMPLES / 3);
    assertThat(counts.get(Hidden.NO)).isGreaterThan(SAMPLES / 3);
  }

  private enum Hidden {
    YES,
    NO,
    UNSURE
  }

  private static void edgesAreDrawnWhereNothingHidesThem(
      Scene scene, Look look, Random random, Map<Hidden, Integer> counts) {
    View view = Sight.look(scene, look);
    RayModel rays = new RayModel(scene, look);
    for (int i = 0; i < SAMPLES; i++) {
      Placed part = scene.parts().get(random.nextInt(scene.parts().size()));
      Vec3 point = onEdge(part, random);
      Vec2 at = rays.project(point);
      Hidden hidden = hidden(part, point, rays);
      counts.merge(hidden, 1, Integer::sum);
      List<VisibleLine> near =
          view.lines().stream().filter(l -> distance(l.at(), at) < DRAWN).toList();
      if (hidden == Hidden.NO) {
        assertThat(near).as("%s seen at %s, %s", part.id(), at, look).isNotEmpty();
      } else if (hidden == Hidden.YES) {
        assertThat(near)
            .as("%s hidden at %s, %s", part.id(), at, look)
            .noneMatch(l -> l.part().equals(part.id()) && !rays.edgeOn(part));
      }
    }
  }

  private static Vec3 onEdge(Placed part, Random random) {
    List<Ring> rings = new ArrayList<>(part.panel().region().holes());
    rings.add(part.panel().region().outer());
    List<Vec2> p = rings.get(random.nextInt(rings.size())).points();
    int k = random.nextInt(p.size());
    double t = random.nextDouble();
    Vec2 at = p.get(k).times(1 - t).plus(p.get((k + 1) % p.size()).times(t));
    return part.pose().apply(at);
  }

  private static Hidden hidden(Placed part, Vec3 point, RayModel rays) {
    Hidden first = null;
    Vec2 at = rays.project(point);
    for (Vec2 by : RayModel.AROUND) {
      double distance = rays.distance(point);
      boolean before = false;
      for (RayModel.Hit h : rays.hits(at.plus(by.times(ASIDE)))) {
        boolean touches = Math.abs(h.distance() - distance) <= CLEARLY;
        if (touches && !h.piece().equals(part.piece().id())) {
          return Hidden.UNSURE;
        }
        before |= !touches && h.distance() < distance && !h.part().equals(part.id());
      }
      Hidden now = before ? Hidden.YES : Hidden.NO;
      if (first != null && first != now) {
        return Hidden.UNSURE;
      }
      first = now;
    }
    return first == null ? Hidden.UNSURE : first;
  }

  private static double distance(Segment s, Vec2 p) {
    Vec2 d = s.to().minus(s.from());
    double t = Math.max(0, Math.min(1, p.minus(s.from()).dot(d) / d.dot(d)));
    return p.distance(s.from().plus(d.times(t)));
  }

  private static void strokesSayWhatIsBeside(Scene scene, Look look) {
    View view = Sight.look(scene, look);
    RayModel rays = new RayModel(scene, look);
    int checked = 0;
    for (VisibleLine l : view.lines()) {
      if (l.at().length() < 100 * BESIDE) {
        continue;
      }
      Vec2 aside = l.at().to().minus(l.at().from()).unit().left().times(BESIDE);
      List<RayModel.Hit> left = rays.hits(l.at().middle().plus(aside));
      List<RayModel.Hit> right = rays.hits(l.at().middle().minus(aside));
      boolean open = left.isEmpty() || right.isEmpty();
      checked++;
      switch (l.stroke()) {
        case SILHOUETTE -> assertThat(open).as("%s %s", l, look).isTrue();
        case EDGE -> assertThat(open).as("%s %s", l, look).isFalse();
        case INNER -> {
          assertThat(open).as("%s %s", l, look).isFalse();
          assertThat(nearest(left)).as("%s %s", l, look).containsAnyElementsOf(nearest(right));
        }
      }
    }
    assertThat(checked).isGreaterThan(5);
  }

  /** The pieces that can be the one seen: several where they touch. */
  private static List<String> nearest(List<RayModel.Hit> hits) {
    double first = hits.get(0).distance();
    return hits.stream()
        .filter(h -> h.distance() - first < CLEARLY)
        .map(RayModel.Hit::piece)
        .toList();
  }
}
