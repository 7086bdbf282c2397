package hingeleaf.sight;

import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** An independent model of sight for tests: a single ray, met with every panel. */
final class RayModel {
  private final Scene scene;
  private final Look look;
  private final Vec3 right;
  private final Vec3 up;

  /** A panel on a ray, at a distance along it. */
  record Hit(String part, double distance) {}

  RayModel(Scene scene, Look look) {
    this.scene = scene;
    this.look = look;
    this.right = look.up().cross(look.towards()).unit();
    this.up = look.towards().cross(right);
  }

  /** The opaque panels on the ray through a place of the view, nearest first. */
  List<Hit> hits(Vec2 at) {
    Vec3 on = look.target().plus(right.times(at.x())).plus(up.times(at.y()));
    Vec3 from =
        look instanceof Look.FromEye eye ? eye.eye() : on.plus(look.towards().times(10_000));
    Vec3 along = on.minus(from).unit();
    List<Hit> hits = new ArrayList<>();
    for (Placed p : scene.parts()) {
      if (!p.piece().stock().clear()) {
        meet(p.pose(), p.panel().region(), from, along)
            .ifPresent(t -> hits.add(new Hit(p.id(), t)));
      }
    }
    hits.sort(Comparator.comparingDouble(Hit::distance));
    return hits;
  }

  private static Optional<Double> meet(Rigid pose, Region region, Vec3 from, Vec3 along) {
    Vec3 n = pose.normal();
    double t = pose.shift().minus(from).dot(n) / along.dot(n);
    Vec3 p = pose.inverse().apply(from.plus(along.times(t)));
    return t > 0 && region.contains(new Vec2(p.x(), p.y())) ? Optional.of(t) : Optional.empty();
  }

  /**
   * What is seen at a place, "" for nothing; empty where it is too near to an edge, or two panels
   * are too near to each other, to be sure.
   */
  Optional<String> surely(Vec2 at, double margin) {
    String first = null;
    for (Vec2 by :
        List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(-1, 0), new Vec2(0, 1), new Vec2(0, -1))) {
      List<Hit> hits = hits(at.plus(by.times(margin)));
      if (hits.size() > 1 && hits.get(1).distance() - hits.get(0).distance() < 0.1) {
        return Optional.empty();
      }
      String seen = hits.isEmpty() ? "" : hits.get(0).part();
      if (first != null && !first.equals(seen)) {
        return Optional.empty();
      }
      first = seen;
    }
    return Optional.ofNullable(first);
  }
}
