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
  /** A place and four beside it. */
  static final List<Vec2> AROUND =
      List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(-1, 0), new Vec2(0, 1), new Vec2(0, -1));

  private static final double FAR_AWAY = 10_000;

  private final Scene scene;
  private final Look look;
  private final Vec3 right;
  private final Vec3 up;

  /** A panel on a ray, at a distance along it. */
  record Hit(String piece, String part, double distance) {}

  RayModel(Scene scene, Look look) {
    this.scene = scene;
    this.look = look;
    this.right = look.up().cross(look.towards()).unit();
    this.up = look.towards().cross(right);
  }

  private Vec3 from(Vec3 on) {
    return look instanceof Look.FromEye eye ? eye.eye() : on.plus(look.towards().times(FAR_AWAY));
  }

  /** The opaque panels on the ray through a place of the view, nearest first. */
  List<Hit> hits(Vec2 at) {
    Vec3 on = look.target().plus(right.times(at.x())).plus(up.times(at.y()));
    Vec3 from = from(on);
    Vec3 along = on.minus(from).unit();
    List<Hit> hits = new ArrayList<>();
    for (Placed p : scene.parts()) {
      if (!p.piece().stock().clear()) {
        meet(p.pose(), p.panel().region(), from, along)
            .ifPresent(t -> hits.add(new Hit(p.piece().id(), p.id(), t)));
      }
    }
    hits.sort(Comparator.comparingDouble(Hit::distance));
    return hits;
  }

  private static Optional<Double> meet(Rigid pose, Region region, Vec3 from, Vec3 along) {
    Vec3 n = pose.normal();
    double t = pose.shift().minus(from).dot(n) / along.dot(n);
    if (!Double.isFinite(t) || Math.abs(along.dot(n)) < 1e-6) {
      return Optional.empty();
    }
    Vec3 p = pose.inverse().apply(from.plus(along.times(t)));
    return t > 0 && region.contains(new Vec2(p.x(), p.y())) ? Optional.of(t) : Optional.empty();
  }

  /** Where a point of the world is in the view. */
  Vec2 project(Vec3 world) {
    Vec3 d = world.minus(look.target());
    double scale = 1;
    if (look instanceof Look.FromEye eye) {
      scale = eye.distance() / (eye.distance() - d.dot(look.towards()));
    }
    return new Vec2(scale * d.dot(right), scale * d.dot(up));
  }

  /** How far along its ray a point of the world is. */
  double distance(Vec3 world) {
    if (look instanceof Look.FromEye eye) {
      return world.distance(eye.eye());
    }
    return FAR_AWAY - world.minus(look.target()).dot(look.towards());
  }

  boolean edgeOn(Placed p) {
    Vec3 along = p.pose().shift().minus(from(p.pose().shift())).unit();
    return Math.abs(along.dot(p.pose().normal())) < 1e-3;
  }

  /**
   * What is seen at a place, "" for nothing; empty where it is too near to an edge, or two panels
   * are too near to each other, to be sure.
   */
  Optional<String> surely(Vec2 at, double margin) {
    String first = "";
    for (Vec2 by : AROUND) {
      List<Hit> hits = hits(at.plus(by.times(margin)));
      if (hits.size() > 1 && hits.get(1).distance() - hits.get(0).distance() < 0.1) {
        return Optional.empty();
      }
      String seen = hits.isEmpty() ? "" : hits.get(0).part();
      if (by.equals(AROUND.get(0))) {
        first = seen;
      } else if (!first.equals(seen)) {
        return Optional.empty();
      }
    }
    return Optional.of(first);
  }
}
