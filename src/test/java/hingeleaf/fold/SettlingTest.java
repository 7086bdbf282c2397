package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Mechanism;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettlingTest {
  private static Budget budget() {
    return Budget.of(1_000_000);
  }

  /** The glue of the right upper tab misses by so much across or up; the card is a stage. */
  private static Settling.Settled stage(Rigid miss) {
    Mechanism m = Samples.stage(150, 100, 12).mechanism();
    int bond = -1;
    for (int b = 0; b < m.bonds().size(); b++) {
      if (m.facets().get(m.bonds().get(b).a()).id().equals("hiR")) {
        bond = b;
      }
    }
    return Settling.settle(m, List.of(new Settling.Seat(bond, miss)), budget());
  }

  /**
   * A front that is 0.5 mm wider than the back: the four-bar closes with its sides a little askew.
   * Positions from the two circles round the back's folds (elementary).
   */
  @Test
  void aWideFrontLeansTheSidesApart() {
    Settling.Settled s = stage(Rigid.translation(v(-0.5, 0, 0)));
    assertThat(s.closed()).isTrue();
    assertThat(s.missing()).isLessThan(1e-11);
    Mechanism m = s.mechanism();
    Vec3 left = m.facets().get(2).outline().get(1);
    Vec3 right = m.facets().get(5).outline().get(1);
    assertThat(m.facets().get(2).id()).isEqualTo("wallL");
    assertThat(m.facets().get(5).id()).isEqualTo("wallR");
    assertThat(left.distance(v(0, 0, 0))).isCloseTo(12, within(1e-10));
    assertThat(right.distance(v(150, 0, 0))).isCloseTo(12, within(1e-10));
    assertThat(left.distance(right)).isCloseTo(150.5, within(1e-10));
    // Nothing prefers left or right, so both sides lean alike.
    assertThat(left.x() + right.x()).isCloseTo(150, within(1e-9));
  }

  @Test
  void theSettledMechanismClosesFromItsNewReference() {
    Settling.Settled s = stage(Rigid.translation(v(-0.5, 0, 0.2)));
    Linkage l = Linkage.of(s.mechanism(), budget());
    Drive d = l.drive(java.util.Map.of("aL", 0.3), java.util.Map.of(), budget());
    assertThat(d.reached()).isTrue();
    assertThat(d.posed().gap()).isLessThan(1e-11);
  }

  @Test
  void aGlueThatMeetsChangesNothing() {
    Settling.Settled s = stage(Rigid.IDENTITY);
    assertThat(s.closed()).isTrue();
    assertThat(s.posed().values()).allMatch(x -> x == 0);
  }

  /** A shift along the folds cannot be taken up by folding: the strip has no freedom that way. */
  @Test
  void aMisfitAlongTheFoldsCannotSettle() {
    Settling.Settled s = stage(Rigid.translation(v(0, 0.7, 0)));
    assertThat(s.closed()).isFalse();
    assertThat(s.missing()).isBetween(0.05, 1.5);
  }
}
