package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.MadeCard;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The error that is told of a pose, against how far the closed form of a sheared stage puts it. */
class PositionErrorTest {
  @Test
  void growsTowardsFlat_andIsSmallAgainWhereFlatIsSetExactly() {
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 1, 0.3);
    Linkage linkage = Linkage.of(made.mechanism(), Budget.of(100_000));
    ShearPose shear = theta -> ShearForm.posed(made, List.of(1), theta);
    double quarter = Math.PI / 2;
    assertThat(linkage.positionError(shear.at(0.7))).isEqualTo(1e-9);
    assertThat(linkage.positionError(shear.at(quarter - 1e-6))).isCloseTo(3e-8, within(1e-10));
    assertThat(linkage.positionError(shear.at(quarter))).isEqualTo(1e-12);
  }

  private interface ShearPose {
    hingeleaf.card.Posed at(double theta);
  }
}
