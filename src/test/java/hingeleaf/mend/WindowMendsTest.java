package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Piece;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Windows of their own size: where they lie, and each finding mended by its own advice. */
class WindowMendsTest {
  private static Pack pack(String size) {
    String yaml =
        SamplePacks.stack("")
                .replace(
                    "{name: near, aperture: {square: 126}", "{name: near, aperture: {square: 120}")
            + "windows:\n  - {name: pane, on: near, stock: acetate"
            + size
            + "}\n";
    return SamplePacks.of(yaml, BuiltInBench.metric(), 1);
  }

  @Test
  void sizeOfItsOwn_isCutSo_andLeftOutItIsTheOpeningAndItsOverlap() {
    Piece own = pack(", width: 124, height: 130").card().piece("pane");
    assertThat(own.width()).isCloseTo(124, within(1e-9));
    assertThat(own.height()).isCloseTo(130, within(1e-9));
    Piece usual = pack(", width: 124").card().piece("pane");
    assertThat(usual.width()).isCloseTo(124, within(1e-9));
    assertThat(usual.height()).isCloseTo(120 + 2 * 5, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 120 of opening and 1 mm on each side; a panel of 150 less 1 mm at each fold
        ", width: 121|window-too-small|121 mm wide, it does not reach past the opening of near|122",
        ", height: 100|window-too-small|100 mm high, it does not reach past the opening of near|122",
        ", width: 149|window-past-panel|149 mm wide, it would lie over the folds of near|148",
        ", height: 300|window-past-panel|300 mm high, it would lie over the folds of near|148",
      })
  void badSize_isTold_andMendedByItsOwnAdvice(String size, String kind, String words, String to) {
    Pack pack = pack(size);
    assertThat(pack.blocked()).isTrue();
    List<Problem> found = pack.problems().stream().filter(p -> p.kind().equals(kind)).toList();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).message()).contains(words).contains("make it " + to + " mm or ");
    List<Mend> mends = Mends.of(pack, found.get(0));
    assertThat(mends).isNotEmpty();
    assertThat(mends.get(0).words()).contains(to + " mm");
    Trial trial = Trial.of(pack.inputs().design().tree(), mends.get(0).changes());
    Pack after = Trial.pack(pack, ((Trial.Read) trial).design());
    assertThat(after.blocked()).isFalse();
    assertThat(after.problems()).noneMatch(p -> p.kind().startsWith("window-"));
  }
}
