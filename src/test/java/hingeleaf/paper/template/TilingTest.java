package hingeleaf.paper.template;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.geom.Box;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TilingTest {
  @Test
  void windows_coverThePiece_overlap_andNoneIsNeedless() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      double w = 1 + random.nextDouble() * 1200;
      double h = 1 + random.nextDouble() * 1200;
      Tiling t = Tiling.of(w, h, 190, 250, 12);
      Box first = t.window(0, 0, h);
      Box last = t.window(t.columns() - 1, t.rows() - 1, h);
      assertThat(first.minX()).isZero();
      assertThat(first.maxY()).isEqualTo(h);
      assertThat(last.maxX()).isGreaterThanOrEqualTo(w - 1e-6);
      assertThat(last.minY()).isLessThanOrEqualTo(1e-6);
      if (t.columns() > 1) {
        Box before = t.window(t.columns() - 2, 0, h);
        assertThat(before.maxX() - last.minX()).isBetween(11.999, 12.001);
        assertThat(before.maxX()).isLessThan(w);
        assertThat(t.seamsX()).hasSize(t.columns() - 1);
        double seam = t.seamsX().get(t.columns() - 2);
        assertThat(seam - last.minX()).isBetween(5.999, 6.001);
      }
    }
  }

  @Test
  void name_likeASpreadsheetOfPages() {
    assertThat(Tiling.name(0, 0)).isEqualTo("A1");
    assertThat(Tiling.name(1, 2)).isEqualTo("B3");
  }
}
