package hingeleaf.fold.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against turns known by hand, and against motions built one by one. */
class MotionTest {
  @Test
  void aQuarterTurnAboutALineBesideTheOrigin() {
    Motion motion = new Motion();
    motion.turn(new Vec3(1, 0, 5), new Vec3(0, 0, 1), Math.PI / 2);
    Vec3 at = motion.rigid().apply(new Vec3(2, 0, 7));
    assertThat(at.distance(new Vec3(1, 1, 7))).isCloseTo(0, within(1e-15));
  }

  @Test
  void nothing_leavesEverythingWhereItIs() {
    assertThat(new Motion().rigid()).isEqualTo(Rigid.IDENTITY);
  }

  @Test
  void asManyAsOneLikes_toTheLastBit() {
    Random random = new Random(3);
    for (int trial = 0; trial < 200; trial++) {
      Motion motion = new Motion();
      Rigid built = Rigid.IDENTITY;
      for (int i = 0; i < 12; i++) {
        Vec3 along = vector(random).unit();
        Vec3 at = vector(random).times(80);
        double by = 6 * random.nextDouble() - 3;
        if (i % 4 == 3) {
          motion.slide(along, by);
          built = built.then(Rigid.translation(along.times(by)));
        } else {
          motion.turn(at, along, by);
          built = built.then(Rigid.turning(at, along, by));
        }
      }
      assertThat(motion.rigid()).isEqualTo(built);
    }
  }

  private static Vec3 vector(Random random) {
    return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }
}
