package hingeleaf.sight;

import hingeleaf.card.Face;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * A placed panel as a camera sees it before anything hides it.
 *
 * @param index place in the scene
 * @param facing cosine between the front's normal and the line of sight at the panel's middle
 * @param slope nearness over the view; null where the panel is seen edge-on
 * @param shape its picture; empty where it is seen edge-on or is behind the viewer
 */
record Surface(
    int index,
    Placed part,
    Camera camera,
    double facing,
    Camera.@Nullable Slope slope,
    Geometry shape) {

  static Surface of(int index, Placed part, Camera camera) {
    Rigid pose = part.pose();
    Vec3 middle = pose.apply(part.panel().region().box().centre());
    double facing = camera.facing(middle, pose.normal());
    if (!(Math.abs(facing) > Tolerance.EDGE_ON)) {
      Geometry none = Shapes.FACTORY.createPolygon();
      return new Surface(index, part, camera, facing, null, none);
    }
    Camera.Slope slope = camera.slope(middle, pose.normal());
    Geometry shape = picture(part.panel().region(), pose, camera);
    return new Surface(index, part, camera, facing, slope, shape);
  }

  /** The picture of an area of a piece in a pose; what is too near to the eye is cut off. */
  static Geometry picture(Region area, Rigid pose, Camera camera) {
    Function<Coordinate, Coordinate> project = c -> spot(new Vec2(c.x, c.y), pose, camera);
    Polygon flat = Shapes.polygon(area, p -> new Coordinate(p.x(), p.y()));
    Envelope box = flat.getEnvelopeInternal();
    if (camera.parallel() || !tooNear(box, pose, camera)) {
      return mapped(flat, project);
    }
    Geometry seen = Shapes.and(flat, Shapes.above(room(pose, camera), box));
    return Shapes.gather(Shapes.polygons(seen).stream().map(p -> mapped(p, project)).toList());
  }

  private static Coordinate spot(Vec2 p, Rigid pose, Camera camera) {
    Camera.Spot s = camera.project(pose.apply(p));
    return new Coordinate(s.x(), s.y());
  }

  private static Polygon mapped(Polygon p, Function<Coordinate, Coordinate> f) {
    return Shapes.polygon(Shapes.region(p), v -> f.apply(new Coordinate(v.x(), v.y())));
  }

  private static boolean tooNear(Envelope box, Rigid pose, Camera camera) {
    Camera.Slope room = room(pose, camera);
    return room.at(box.getMinX(), box.getMinY()) <= 0
        || room.at(box.getMaxX(), box.getMinY()) <= 0
        || room.at(box.getMaxX(), box.getMaxY()) <= 0
        || room.at(box.getMinX(), box.getMaxY()) <= 0;
  }

  /** Room before the near plane as an affine function of piece coordinates. */
  private static Camera.Slope room(Rigid pose, Camera camera) {
    double c = camera.room(pose.apply(Vec2.ZERO));
    double a = camera.room(pose.apply(new Vec2(1, 0))) - c;
    double b = camera.room(pose.apply(new Vec2(0, 1))) - c;
    return new Camera.Slope(a, b, c);
  }

  boolean edgeOn() {
    return slope == null;
  }

  /** The slope of a panel that is not seen edge-on. */
  Camera.Slope plane() {
    if (slope == null) {
      throw new IllegalStateException(part.id() + " is seen edge-on");
    }
    return slope;
  }

  boolean opaque() {
    return !part.piece().stock().clear();
  }

  Face face() {
    return facing > 0 ? Face.FRONT : Face.BACK;
  }

  String colour(Face face) {
    var faces = part.piece().stock().faces();
    return face == Face.FRONT ? faces.front() : faces.back();
  }

  Envelope box() {
    return shape.getEnvelopeInternal();
  }

  /** The picture of an area given in piece coordinates. */
  Geometry picture(Region area) {
    return picture(area, part.pose(), camera);
  }

  /** From the view back to the piece; exact for points of this panel's plane. */
  Vec2 onPiece(Vec2 at) {
    Vec3 world = camera.unproject(at, plane().at(at.x(), at.y()));
    Rigid pose = part.pose();
    Vec3 d = world.minus(pose.shift());
    return new Vec2(
        d.x() * pose.xx() + d.y() * pose.yx() + d.z() * pose.zx(),
        d.x() * pose.xy() + d.y() * pose.yy() + d.z() * pose.zy());
  }
}
