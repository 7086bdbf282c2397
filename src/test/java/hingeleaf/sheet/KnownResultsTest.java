package hingeleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Theorems and standards as cases: what is known to fit, and what is known not to. */
class KnownResultsTest {
  private static final long ONE = 1_000_000;

  /**
   * De Bruijn, Filling boxes with bricks, Amer. Math. Monthly 76 (1969) 37-40: 1 x 4 bricks do not
   * fill a 10 x 10 box, although 25 of them have its area.
   */
  @Test
  void bricksOfOneByFourDoNotFillTenByTen() {
    SheetPlan plan = Jobs.plan(Jobs.on(10, 10, 1).piece(1, 4, 25, true).job(), 20_000);
    assertThat(plan.cost()).isEqualTo(2 * ONE);
    assertThat(plan.provenOptimal()).isTrue();
    SheetPlan fits = Jobs.plan(Jobs.on(10, 10, 1).piece(1, 4, 24, true).job(), 20_000);
    assertThat(fits.cost()).isEqualTo(ONE);
  }

  /** The same theorem the other way: 2 x 3 bricks fill 5 x 6, a multiple in each direction. */
  @Test
  void bricksOfTwoByThreeFillFiveBySix() {
    SheetPlan plan = Jobs.plan(Jobs.on(5, 6, 1).piece(2, 3, 5, true).job(), 20_000);
    assertThat(plan.cost()).isEqualTo(ONE);
    assertThat(plan.largestScrap()).isZero();
  }

  /**
   * Moron 1925: the squares 1, 4, 7, 8, 9, 10, 14, 15, 18 tile 32 x 33. The tiling is simple, so no
   * edge-to-edge cut parts it; and the same squares tile no rectangle of that shape otherwise
   * (Bouwkamp's tables: it is the only one of order nine with these squares).
   */
  @Test
  void theFirstPerfectRectangleCannotBeCutFromOneSheet() {
    Jobs jobs = Jobs.on(32, 33, 1);
    for (int side : new int[] {1, 4, 7, 8, 9, 10, 14, 15, 18}) {
      jobs.piece(side, side, 1, true);
    }
    SheetPlan plan = Jobs.plan(jobs.job(), 20_000);
    assertThat(plan.cost()).isEqualTo(2 * ONE);
    assertThat(plan.provenOptimal()).isTrue();
  }

  /** The pinwheel: four 2 x 3 lie in 5 x 5 around a hole, but no straight cut parts them. */
  @Test
  void thePinwheelTakesTwoSheets() {
    SheetPlan plan = Jobs.plan(Jobs.on(5, 5, 1).piece(2, 3, 4, true).job(), 20_000);
    assertThat(plan.cost()).isEqualTo(2 * ONE);
    assertThat(plan.provenOptimal()).isTrue();
  }

  /**
   * ISO 216: sixteen A4 (210 x 297) come out of A0 (841 x 1189), eight A6 (105 x 148) out of A3.
   */
  @Test
  void paperSizesHalve() {
    SheetPlan a0 = Jobs.plan(Jobs.on(841, 1189, 1).piece(210, 297, 16, false).job(), 20_000);
    assertThat(a0.cost()).isEqualTo(ONE);
    SheetPlan a3 = Jobs.plan(Jobs.on(420, 297, 1).piece(105, 148, 8, true).job(), 20_000);
    assertThat(a3.cost()).isEqualTo(ONE);
  }

  /** Martello and Vigo 1998: two pieces each above half in both directions never share a sheet. */
  @Test
  void piecesAboveHalfBothWaysTakeASheetEach() {
    SheetPlan plan = Jobs.plan(Jobs.on(9, 9, 1).piece(5, 5, 7, true).job(), 20_000);
    assertThat(plan.cost()).isEqualTo(7 * ONE);
    assertThat(plan.bound()).startsWith("dual feasible");
  }
}
