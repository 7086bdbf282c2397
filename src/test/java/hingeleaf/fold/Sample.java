package hingeleaf.fold;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A mechanism with closed-form poses, and the means to write one down by names. */
final class Sample {
  final Map<String, List<Vec3>> panels = new LinkedHashMap<>();
  final List<Fold> folds = new ArrayList<>();
  final List<String[]> glue = new ArrayList<>();
  final List<String> fixed = new ArrayList<>();
  final List<Ask> asks = new ArrayList<>();

  record Fold(String id, String a, String b, Vec3 from, Vec3 to) {}

  /**
   * @param points for some panels where the corners of the outline must come to lie
   * @param folds for some folds the value they must have
   */
  record Ask(
      Map<String, Double> drive,
      Map<String, Double> near,
      Map<String, List<Vec3>> points,
      Map<String, Double> folds) {}

  static Vec3 v(double x, double y, double z) {
    return new Vec3(x, y, z);
  }

  Sample panel(String id, Vec3... corners) {
    panels.put(id, List.of(corners));
    return this;
  }

  Sample fold(String id, String a, String b, Vec3 from, Vec3 to) {
    folds.add(new Fold(id, a, b, from, to));
    return this;
  }

  Sample glue(String a, String b) {
    glue.add(new String[] {a, b});
    return this;
  }

  Sample fixed(String a) {
    fixed.add(a);
    return this;
  }

  Sample ask(
      Map<String, Double> drive,
      Map<String, Double> near,
      Map<String, List<Vec3>> points,
      Map<String, Double> values) {
    asks.add(new Ask(drive, near, points, values));
    return this;
  }

  Mechanism mechanism() {
    List<String> names = new ArrayList<>(panels.keySet());
    List<Mechanism.Facet> facets = new ArrayList<>();
    panels.forEach((id, o) -> facets.add(new Mechanism.Facet(id, o, List.of(), 0)));
    List<Joint> joints = new ArrayList<>();
    for (Fold f : folds) {
      joints.add(
          new Joint.Hinge(
              f.id(), names.indexOf(f.a()), names.indexOf(f.b()), f.from(), f.to(), Double.NaN));
    }
    List<Mechanism.Bond> bonds = new ArrayList<>();
    glue.forEach(g -> bonds.add(new Mechanism.Bond(names.indexOf(g[0]), names.indexOf(g[1]))));
    return new Mechanism(facets, joints, bonds, fixed.stream().map(names::indexOf).toList());
  }
}
