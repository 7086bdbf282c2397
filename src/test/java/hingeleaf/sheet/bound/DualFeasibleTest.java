package hingeleaf.sheet.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Properties that make a function dual feasible, and values worked out by hand. */
class DualFeasibleTest {

  /**
   * Superadditive, nondecreasing, zero at zero: sufficient for dual feasibility (Clautiaux, Alves,
   * Valerio de Carvalho 2010, section 3).
   */
  @Test
  void everyChoiceIsSuperadditiveAndNondecreasing() {
    for (int length : new int[] {7, 10, 12, 29, 30}) {
      int[] sizes = IntStream.rangeClosed(1, length).toArray();
      for (DualFeasible f : DualFeasible.choices(length, sizes, 1000)) {
        assertThat(f.of(0)).isZero();
        for (int x = 0; x <= length; x++) {
          for (int y = 0; x + y <= length; y++) {
            assertThat(f.of(x) + f.of(y))
                .as("%s at %d and %d", f, x, y)
                .isLessThanOrEqualTo(f.of(x + y));
          }
        }
      }
    }
  }

  /** Fekete and Schepers 2001, u(1): above half counts one, half counts half, below nothing. */
  @Test
  void roundingWithOneStepCountsHalves() {
    DualFeasible u = new DualFeasible.Steps(10, 1);
    assertThat(u.of(4)).isZero();
    assertThat(u.of(5)).isEqualTo(5);
    assertThat(u.of(6)).isEqualTo(10);
  }

  /** u(2) on length 9 by hand: 3 stays a third, 4 (12/9) falls to a half of 9, 7 rises to 9. */
  @Test
  void roundingWithTwoSteps() {
    DualFeasible u = new DualFeasible.Steps(9, 2);
    assertThat(u.of(2)).isZero();
    assertThat(u.of(3)).isEqualTo(6);
    assertThat(u.of(4)).isEqualTo(9);
    assertThat(u.of(7)).isEqualTo(18);
    assertThat(u.of(9)).isEqualTo(18);
  }

  /** Fekete and Schepers 2001, their function with a threshold, by hand on length 10. */
  @Test
  void thresholdForgetsTheSmallAndFillsTheLarge() {
    DualFeasible f = new DualFeasible.Threshold(10, 3);
    assertThat(f.of(2)).isZero();
    assertThat(f.of(3)).isEqualTo(3);
    assertThat(f.of(7)).isEqualTo(7);
    assertThat(f.of(8)).isEqualTo(10);
  }

  /** Carlier, Clautiaux and Moukrim 2007, f1 with k = 3 on length 10, by hand from the formula. */
  @Test
  void mirrorCountsWholeStepsFromBothEnds() {
    DualFeasible f = new DualFeasible.Mirror(10, 3);
    assertThat(f.of(2)).isZero();
    assertThat(f.of(3)).isEqualTo(2);
    assertThat(f.of(5)).isEqualTo(3);
    assertThat(f.of(7)).isEqualTo(4);
    assertThat(f.of(8)).isEqualTo(6);
    assertThat(f.of(10)).isEqualTo(6);
  }
}
