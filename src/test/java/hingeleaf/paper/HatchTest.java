package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import java.util.List;
import org.junit.jupiter.api.Test;

class HatchTest {
  /** Lines {@code apart} from each other have a total length of about area / apart (Cavalieri). */
  @Test
  void of_length_tellsTheArea() {
    Region ring =
        new Region(
            Samples.circle(new Vec2(30, 20), 25, 200), List.of(Ring.rectangle(20, 10, 40, 25)));
    double length = 0;
    Path path = Hatch.of(ring, 0.05);
    for (List<Vec2> line : path.lines()) {
      length += line.get(0).distance(line.get(1));
      assertThat(ring.contains(line.get(0).plus(line.get(1)).times(0.5))).isTrue();
    }
    assertThat(length * 0.05).isCloseTo(Math.PI * 625 - 300, within(2.0));
  }
}
