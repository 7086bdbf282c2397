package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Leans in a maker's words. */
class LeansTest {
  private static Rest rest(List<Integer> leans, Vec3 slid) {
    Posed posed = new Posed(List.of(Rigid.IDENTITY, Rigid.translation(slid)), List.of(), 0);
    return new Rest(posed, leans, 1, 1, 1, 1, "");
  }

  @Test
  void sidesAtLeftAndRight_leanLeftAndRight() {
    Vec3 left = new Vec3(-12, 0, -12);
    assertThat(Leans.words(rest(List.of(-1, 1, -1), left))).isEqualTo("leans left, right, left");
    assertThat(Leans.words(rest(List.of(-1, -1), left))).isEqualTo("all leaning left");
    assertThat(Leans.words(rest(List.of(1), new Vec3(12, 0, -12)))).isEqualTo("leans right");
  }

  @Test
  void sidesAtTopAndBottom_leanUpAndDown() {
    Vec3 down = new Vec3(0, -12, -12);
    assertThat(Leans.words(rest(List.of(-1, 1), down))).isEqualTo("leans down, up");
  }

  @Test
  void aCardWithoutStagesLiesAsItIs() {
    assertThat(Leans.words(rest(List.of(), Vec3.ZERO))).isEqualTo("as it is");
  }
}
