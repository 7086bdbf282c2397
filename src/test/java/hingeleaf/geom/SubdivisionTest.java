package hingeleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SubdivisionTest {
  private static final Ring PIECE = Ring.rectangle(0, 0, 198, 150);
  private static final List<Segment> SCORES =
      List.of(
          Segment.of(12, 0, 12, 150),
          Segment.of(24, 0, 24, 150),
          Segment.of(174, 0, 174, 150),
          Segment.of(186, 0, 186, 150));

  @Test
  void aFrame_isFivePanelsWithTheOpeningInTheMiddleOne() {
    Ring opening = Shapes.circle(90).moved(new Vec2(99, 75));
    List<Region> panels = Subdivision.split(new Region(PIECE, List.of(opening)), SCORES);
    assertThat(panels).hasSize(5);
    assertThat(panels.stream().map(p -> p.holes().size())).containsExactly(0, 0, 1, 0, 0);
    assertThat(panels.get(2).area())
        .isCloseTo(150 * 150 - opening.area(), within(1e-3)); // the opening's own chords
    assertThat(panels.stream().mapToDouble(Region::area).sum())
        .isCloseTo(198 * 150 - opening.area(), within(1e-3));
  }

  @Test
  void anOpeningAcrossAScore_isPartOfBothPanels() {
    Ring opening = Ring.rectangle(10, 60, 14, 90);
    List<Region> panels = Subdivision.split(new Region(PIECE, List.of(opening)), SCORES);
    assertThat(panels).hasSize(5);
    assertThat(panels.get(0).holes()).isEmpty();
    assertThat(panels.get(0).area()).isCloseTo(12 * 150 - 2 * 30, within(1e-6));
    assertThat(panels.get(1).area()).isCloseTo(12 * 150 - 2 * 30, within(1e-6));
  }

  /** A hole near a line takes the long way, one far from it the short; they must agree. */
  @Test
  void nearAndFarHolesAgree() {
    Ring near = Shapes.circle(20).moved(new Vec2(34.5, 75));
    Ring far = Shapes.circle(20).moved(new Vec2(99, 75));
    Region both = Subdivision.split(new Region(PIECE, List.of(near, far)), SCORES).get(2);
    assertThat(both.holes()).hasSize(2);
    assertThat(both.holes().get(0).moved(new Vec2(64.5, 0)).area())
        .isCloseTo(both.holes().get(1).area(), within(1e-4));
    assertThat(both.holes().get(0).points()).hasSameSizeAs(both.holes().get(1).points());
    assertThat(both.holes().get(1).points().get(0).x()).isCloseTo(89, within(1e-6));
  }
}
