package hingeleaf.paper.pack;

import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.sight.Look;

/**
 * Where points of the world are in a parallel picture, for what is drawn beside the card: arrows.
 *
 * <p>The same axes as every look has: right is up x towards.
 */
record Standpoint(Vec3 target, Vec3 right, Vec3 up) {
  static Standpoint of(Look look) {
    Vec3 right = look.up().cross(look.towards()).unit();
    return new Standpoint(look.target(), right, look.towards().cross(right));
  }

  Vec2 see(Vec3 world) {
    Vec3 p = world.minus(target);
    return new Vec2(p.dot(right), p.dot(up));
  }
}
