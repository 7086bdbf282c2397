package hingeleaf.fold.contact;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.fold.Linkage;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Triangles;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The parts of a made card as sheets and prisms. */
final class Solids {
  private final MadeCard made;

  /** Of each shape; many cut-outs of a card are cut alike. */
  private final Map<Region, double[]> triangles = new HashMap<>();

  private Solids(MadeCard made) {
    this.made = made;
  }

  /** One for each panel, in their order. */
  static List<Solid> of(MadeCard made, Linkage linkage) {
    return new Solids(made).all(linkage);
  }

  private List<Solid> all(Linkage linkage) {
    Map<String, Join.Glue> laid = new HashMap<>();
    made.card()
        .joins()
        .forEach(j -> j.<Boolean>match(g -> ornament(g, laid), s -> false, p -> false, p -> false));
    List<Solid> all = new ArrayList<>();
    for (int i = 0; i < made.panels().size(); i++) {
      Panel p = made.panels().get(i);
      double thickness = made.mechanism().facets().get(i).thickness();
      Join.Glue glue = laid.get(p.piece());
      all.add(
          glue == null
              ? sheet(i, p, linkage.bodyOf(i), thickness)
              : prism(i, p, glue, linkage.bodyOf(i), thickness));
    }
    return all;
  }

  /** A piece without folds, glued by one face, stands on what it is glued to. */
  private boolean ornament(Join.Glue g, Map<String, Join.Glue> laid) {
    Piece piece = made.card().piece(g.a().piece());
    if (piece.scores().isEmpty() && piece.slits().isEmpty()) {
      laid.putIfAbsent(piece.id(), g);
    }
    return true;
  }

  private Solid sheet(int i, Panel p, int body, double thickness) {
    List<double[]> cut = new ArrayList<>();
    face(p.region(), p.made(), 0, cut);
    Vec3 at = p.made().apply(p.region().box().centre());
    return new Solid(
        i, p.piece(), p.id(), body, Shell.of(cut), false, p.made().normal(), at, 0, thickness);
  }

  private Solid prism(int i, Panel p, Join.Glue g, int body, double thickness) {
    Vec3 normal = p.made().normal();
    double out = g.a().face() == Face.BACK ? 1 : -1;
    double top = g.raisedBy() + thickness;
    double host = hostThickness(g);
    double low = Math.min(host / 2, top / 2) - g.raisedBy();
    List<double[]> cut = new ArrayList<>();
    face(p.region(), p.made(), out * thickness, cut);
    wall(p.region().outer(), p.made(), out * low, out * thickness, cut);
    p.region().holes().forEach(h -> wall(h, p.made(), out * low, out * thickness, cut));
    Vec3 up = normal.times(out);
    Vec3 at = p.made().apply(p.region().box().centre()).minus(up.times(g.raisedBy()));
    return new Solid(i, p.piece(), p.id(), body, Shell.of(cut), true, up, at, top, thickness);
  }

  private double hostThickness(Join.Glue g) {
    return made.card().piece(g.b().piece()).stock().thickness();
  }

  private void face(Region region, Rigid pose, double z, List<double[]> out) {
    double[] flat = triangles.computeIfAbsent(region, Triangles::of);
    for (int i = 0; i < flat.length; i += 6) {
      Vec3 a = pose.apply(new Vec3(flat[i], flat[i + 1], z));
      Vec3 b = pose.apply(new Vec3(flat[i + 2], flat[i + 3], z));
      Vec3 c = pose.apply(new Vec3(flat[i + 4], flat[i + 5], z));
      out.add(triangle(a, b, c));
    }
  }

  private static void wall(Ring ring, Rigid pose, double low, double high, List<double[]> out) {
    List<Vec2> points = ring.points();
    for (int i = 0; i < points.size(); i++) {
      Vec2 p = points.get(i);
      Vec2 q = points.get((i + 1) % points.size());
      Vec3 a = pose.apply(new Vec3(p.x(), p.y(), low));
      Vec3 b = pose.apply(new Vec3(q.x(), q.y(), low));
      Vec3 c = pose.apply(new Vec3(q.x(), q.y(), high));
      Vec3 d = pose.apply(new Vec3(p.x(), p.y(), high));
      out.add(triangle(a, b, c));
      out.add(triangle(a, c, d));
    }
  }

  private static double[] triangle(Vec3 a, Vec3 b, Vec3 c) {
    return new double[] {a.x(), a.y(), a.z(), b.x(), b.y(), b.z(), c.x(), c.y(), c.z()};
  }

  /** A sheet whose distances from a line are a share of what they were. */
  static Solid narrowed(Solid s, Vec3 from, Vec3 to, double share) {
    Vec3 u = to.minus(from).unit();
    double[] t = s.shell().corners.clone();
    for (int i = 0; i < t.length; i += 3) {
      Vec3 p = new Vec3(t[i], t[i + 1], t[i + 2]).minus(from);
      Vec3 along = u.times(p.dot(u));
      Vec3 at = from.plus(along).plus(p.minus(along).times(share));
      t[i] = at.x();
      t[i + 1] = at.y();
      t[i + 2] = at.z();
    }
    return new Solid(
        s.panel(),
        s.piece(),
        s.id(),
        s.body(),
        new Shell(t),
        s.prism(),
        s.normal(),
        s.at(),
        s.top(),
        s.thickness());
  }

  /** A prism at another place of what it stands on, or of another height. */
  static @Nullable Solid changed(Solid s, Vec3 moved, double top) {
    double shrink = top / s.top();
    if (!(shrink > 0)) {
      return null;
    }
    double[] t = s.shell().corners.clone();
    for (int i = 0; i < t.length; i += 3) {
      Vec3 p = new Vec3(t[i], t[i + 1], t[i + 2]);
      double h = p.minus(s.at()).dot(s.normal());
      Vec3 to = p.plus(s.normal().times(h * (shrink - 1))).plus(moved);
      t[i] = to.x();
      t[i + 1] = to.y();
      t[i + 2] = to.z();
    }
    return new Solid(
        s.panel(),
        s.piece(),
        s.id(),
        s.body(),
        new Shell(t),
        true,
        s.normal(),
        s.at().plus(moved),
        top,
        s.thickness());
  }
}
