package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Rest;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Values;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The largest card against the room that an envelope leaves, worked out by hand. */
class LargestCardTest {
  private static Pack start(String unit, String size, String side) {
    return SamplePacks.of(
        """
        hingeleaf: 1
        title: start
        unit: %s
        base:
          stacked-frames:
            width: %s
            height: %s
            stock: white-300
            side: %s
            frames:
              - {name: far, aperture: {circle: %s}}
              - {name: near, aperture: {circle: %s}}
        """
            .formatted(unit, size, size, side, side, side),
        BuiltInBench.metric(),
        1);
  }

  /** One step larger either way would not go in: 3 mm and the thickness are kept free. */
  @Test
  void fillsAC5EnvelopeToTheLastMark() {
    // ISO 269 (from memory): C5 is 162 x 229 mm.
    Pack start = start("mm", "100", "12");
    DesignDocument found = LargestCard.of(start, 229, 162).orElseThrow();
    Pack pack = Trial.pack(start, found);
    Rest rest = pack.flats().states().get(0);
    double room = 3 + Math.max(rest.limp(), rest.rigid());
    assertThat(229 - rest.width()).isGreaterThanOrEqualTo(room - 1e-9).isLessThan(room + 2);
    assertThat(162 - rest.height()).isGreaterThanOrEqualTo(room - 1e-9).isLessThan(room + 2);
    assertThat(pack.firstProblems()).noneMatch(p -> p.kind().equals("tab-shows"));
  }

  @Test
  void sizesLieOnTheMarksOfTheDesign() {
    // ANSI sizes as stationers list them (from memory): A7 is 5 1/4 x 7 1/4 in.
    Pack start = start("in", "4", "1/2");
    DesignDocument found = LargestCard.of(start, 7.25 * 25.4, 5.25 * 25.4).orElseThrow();
    Values base = found.base().form();
    for (String key : new String[] {"width", "height"}) {
      double eighths = base.mm(key) / 25.4 * 8;
      assertThat(eighths).as(key).isCloseTo(Math.rint(eighths), within(1e-9));
    }
    assertThat(base.mm("width")).isGreaterThan(base.mm("height"));
  }

  @Test
  void nothingFitsIntoATinyEnvelope() {
    Optional<DesignDocument> none = LargestCard.of(start("mm", "100", "12"), 45, 45);
    assertThat(none).isEmpty();
  }
}
