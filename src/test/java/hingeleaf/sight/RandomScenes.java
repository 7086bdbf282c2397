package hingeleaf.sight;

import hingeleaf.card.Panel;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec3;
import java.util.List;
import java.util.Random;

/** Seeded scenes of rectangles and stars, some with holes, anywhere and through each other. */
final class RandomScenes {
  private RandomScenes() {}

  static Scene scene(Random r, int panels) {
    Stacks s = new Stacks();
    for (int i = 0; i < panels; i++) {
      Ring outer =
          r.nextBoolean()
              ? Stacks.star(20 + 40 * r.nextDouble(), 15 + 40 * r.nextDouble(), 6 + 2 * i)
              : Ring.rectangle(-50, -10 - 30 * r.nextDouble(), 20 + 30 * r.nextDouble(), 30);
      List<Ring> holes = r.nextInt(3) > 0 ? List.of(Stacks.circle(8, 24)) : List.of();
      Vec3 at = new Vec3(40 * r.nextGaussian(), 40 * r.nextGaussian(), 40 * r.nextGaussian());
      Vec3 axis = new Vec3(r.nextGaussian(), r.nextGaussian(), r.nextGaussian());
      Rigid pose = Rigid.rotation(Vec3.ZERO, axis, r.nextDouble() * 3);
      Region shape = new Region(outer, holes);
      s.loose("p" + i, Stacks.paper("p", "#111111", "#222222"), shape, Vec3.ZERO);
      Panel panel = s.panels.get(i);
      s.panels.set(
          i, new Panel(panel.piece(), panel.name(), shape, pose.then(Rigid.translation(at))));
    }
    return s.scene();
  }
}
