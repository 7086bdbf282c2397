package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A sight asked again while parts come and go sees what a fresh look at the same parts sees. The
 * fresh look itself is held to rays in {@link SightAgainstRaysTest}.
 */
class GrowingSceneTest {
  private static final List<Look> LOOKS =
      List.of(Look.straightOn(), Look.threeQuarter(), Look.turned(2.6, 0.4));

  @Test
  void partsThatComeOneByOne() {
    Random r = new Random(5);
    for (int i = 0; i < 12; i++) {
      Scene scene = RandomScenes.scene(r, 8);
      for (Look look : LOOKS) {
        Sight sight = Sight.of(scene, look);
        for (int n = 1; n <= 8; n++) {
          agree(sight, scene, look, first(scene, n));
        }
      }
    }
  }

  @Test
  void partsThatComeAndGo() {
    Random r = new Random(6);
    for (int i = 0; i < 12; i++) {
      Scene scene = RandomScenes.scene(r, 8);
      Sight sight = Sight.of(scene, Look.threeQuarter());
      for (int k = 0; k < 10; k++) {
        Set<String> some = new HashSet<>();
        scene.parts().stream().filter(p -> r.nextBoolean()).forEach(p -> some.add(p.id()));
        agree(sight, scene, Look.threeQuarter(), some);
      }
    }
  }

  @Test
  void aStackFromItsBackForwards() {
    Scene scene = Stacks.caseA().scene();
    for (Look look : LOOKS) {
      Sight sight = Sight.of(scene, look);
      for (int n = 1; n <= scene.parts().size(); n++) {
        agree(sight, scene, look, first(scene, n));
      }
    }
  }

  private static Set<String> first(Scene scene, int n) {
    Set<String> ids = new HashSet<>();
    scene.parts().subList(0, n).forEach(p -> ids.add(p.id()));
    return ids;
  }

  private static void agree(Sight sight, Scene scene, Look look, Set<String> ids) {
    View grown = sight.view(p -> ids.contains(p.id()), Marks.NONE);
    View fresh = Sight.look(scene.keeping(p -> ids.contains(p.id())), look);
    TreeMap<String, Double> areas = areas(grown);
    TreeMap<String, Double> expected = areas(fresh);
    assertThat(areas.keySet()).isEqualTo(expected.keySet());
    areas.forEach((part, area) -> assertThat(area).isCloseTo(expected.get(part), within(1e-3)));
    assertThat(inked(grown)).isCloseTo(inked(fresh), within(0.05));
  }

  private static TreeMap<String, Double> areas(View view) {
    TreeMap<String, Double> areas = new TreeMap<>();
    view.polygons().forEach(p -> areas.merge(p.part(), p.region().area(), Double::sum));
    areas.values().removeIf(a -> a < 0.05);
    return areas;
  }

  private static double inked(View view) {
    return view.lines().stream().mapToDouble(l -> l.at().length()).sum();
  }
}
