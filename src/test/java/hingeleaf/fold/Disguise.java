package hingeleaf.fold;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * The same mechanism written down another way: moved rigidly, renamed, with axes and panels of
 * folds swapped, panels split by glue or by a fold that stays shut, and everything shuffled.
 */
final class Disguise {
  private final Sample from;
  private final Random random;
  private final Rigid motion;
  private final Map<String, String> name = new HashMap<>();
  private final Map<String, Double> sign = new HashMap<>();
  private final Sample to = new Sample();

  private Disguise(Sample from, long seed) {
    this.from = from;
    random = new Random(seed);
    motion =
        Rigid.rotation(Vec3.ZERO, gauss(1), random.nextDouble() * 6)
            .then(Rigid.translation(gauss(200)));
  }

  static Sample of(Sample from, long seed) {
    return new Disguise(from, seed).make();
  }

  private Vec3 gauss(double k) {
    return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(k);
  }

  private Sample make() {
    panels();
    folds();
    for (String[] g : from.glue) {
      to.glue(named(g[0]), named(g[1]));
    }
    from.fixed.forEach(f -> to.fixed(named(f)));
    for (Sample.Ask a : from.asks) {
      Map<String, List<Vec3>> points = new TreeMap<>();
      a.points().forEach((id, o) -> points.put(named(id), moved(o)));
      to.ask(angles(a.drive()), angles(a.near()), points, angles(a.folds()));
    }
    split();
    shuffle();
    return to;
  }

  private String named(String old) {
    return name.computeIfAbsent(old, k -> "n" + Integer.toHexString(random.nextInt()));
  }

  private List<Vec3> moved(List<Vec3> points) {
    return points.stream().map(motion::apply).toList();
  }

  private Map<String, Double> angles(Map<String, Double> old) {
    Map<String, Double> out = new TreeMap<>();
    old.forEach((id, x) -> out.put(named(id), x * sign.getOrDefault(id, 1.0)));
    return out;
  }

  private void panels() {
    from.panels.forEach((id, o) -> to.panels.put(named(id), moved(o)));
  }

  private void folds() {
    for (Sample.Fold f : from.folds) {
      boolean turned = random.nextBoolean();
      boolean swapped = random.nextBoolean();
      sign.put(f.id(), turned == swapped ? 1.0 : -1.0);
      Vec3 p = motion.apply(turned ? f.to() : f.from());
      Vec3 q = motion.apply(turned ? f.from() : f.to());
      to.fold(named(f.id()), named(swapped ? f.b() : f.a()), named(swapped ? f.a() : f.b()), p, q);
    }
  }

  /** Every other panel gets a second panel on its far half, glued along the line between. */
  private void split() {
    for (String id : new ArrayList<>(to.panels.keySet())) {
      List<Vec3> o = to.panels.getOrDefault(id, List.of());
      if (o.size() != 4 || random.nextBoolean()) {
        continue;
      }
      Vec3 m = o.get(0).plus(o.get(1)).times(0.5);
      Vec3 n = o.get(2).plus(o.get(3)).times(0.5);
      String half = id + "h";
      to.panel(half, m, o.get(1), o.get(2), n).glue(half, id);
      for (int i = 0; i < to.folds.size(); i++) {
        Sample.Fold f = to.folds.get(i);
        boolean across = f.from().plus(f.to()).times(0.5).distance(m.plus(n).times(0.5)) > 1;
        if (across && f.a().equals(id) && random.nextBoolean()) {
          to.folds.set(i, new Sample.Fold(f.id(), half, f.b(), f.from(), f.to()));
        } else if (across && f.b().equals(id) && random.nextBoolean()) {
          to.folds.set(i, new Sample.Fold(f.id(), f.a(), half, f.from(), f.to()));
        }
      }
      if (random.nextBoolean()) {
        to.fold("lock" + half, id, half, m, n);
      }
    }
  }

  private void shuffle() {
    Collections.shuffle(to.folds, random);
    Collections.shuffle(to.glue, random);
    List<String> ids = new ArrayList<>(to.panels.keySet());
    Collections.shuffle(ids, random);
    Map<String, List<Vec3>> mixed = new LinkedHashMap<>();
    ids.forEach(id -> mixed.put(id, to.panels.getOrDefault(id, List.of())));
    to.panels.clear();
    to.panels.putAll(mixed);
  }
}
