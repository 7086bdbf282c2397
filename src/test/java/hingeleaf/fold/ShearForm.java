package hingeleaf.fold;

import hingeleaf.card.Flats;
import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.geom.Box;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The closed form that the engine is checked against: the ways in which a card of stacked frames
 * lies flat, every stage leaning one way or the other.
 *
 * <p>Closed form of the shearing stage (parallelogram four-bar, elementary): the two sides of a
 * stage turn together by theta from upright, everything in front moves with them without turning.
 * Every pattern of leans is counted and its footprint found; piles are worked out for the best few
 * only.
 */
final class ShearForm {
  private static final double QUARTER = Math.PI / 2;

  /** How far before flat the order of layers is read, rad. */
  private static final double NEARLY_RAD = 0.01;

  private final MadeCard made;
  private final List<String> stages;

  private ShearForm(MadeCard made) {
    this.made = made;
    this.stages =
        made.card().pieces().stream()
            .filter(p -> p.scores().stream().anyMatch(s -> s.name().startsWith("side-")))
            .map(p -> p.id())
            .toList();
  }

  /**
   * The flat states of a card.
   *
   * @param listed at most so many are listed with their piles; all are counted
   */
  static Flats of(MadeCard made, int listed) {
    return new ShearForm(made).flats(listed);
  }

  private record Pattern(List<Integer> leans, double width, double height, int pushes) {}

  private Flats flats(int listed) {
    int n = stages.size();
    if (n == 0) {
      Posed made = Poses.still(this.made.mechanism());
      return new Flats(true, 1, List.of(rest(List.of(), made, made)));
    }
    List<Pattern> patterns = new ArrayList<>();
    for (int bits = 0; bits < 1 << n; bits++) {
      List<Integer> leans = new ArrayList<>();
      for (int k = 0; k < n; k++) {
        leans.add((bits >> k & 1) == 0 ? -1 : 1);
      }
      patterns.add(pattern(leans));
    }
    patterns.sort(
        Comparator.comparingLong((Pattern p) -> Math.round(p.width * p.height))
            .thenComparingInt(Pattern::pushes)
            .thenComparing(p -> p.leans().toString().replace("-1", "0")));
    List<Rest> rests = new ArrayList<>();
    for (Pattern p : patterns.subList(0, Math.min(listed, patterns.size()))) {
      rests.add(rest(p.leans, sheared(p.leans, QUARTER), sheared(p.leans, QUARTER - NEARLY_RAD)));
    }
    rests.sort(
        Comparator.comparingLong((Rest r) -> Math.round(r.width() * r.height()))
            .thenComparingLong(r -> Math.round(r.rigid() * 1000)));
    return new Flats(true, 1L << n, rests);
  }

  private Rest rest(List<Integer> leans, Posed flat, Posed nearly) {
    Box box = Piles.footprint(made, flat);
    Piles.Pile pile = Piles.of(made, flat, nearly);
    String held = pile.chain().isEmpty() ? "" : pile.chain().get(pile.chain().size() - 1);
    return new Rest(flat, leans, box.width(), box.height(), pile.limp(), pile.rigid(), held);
  }

  private Pattern pattern(List<Integer> leans) {
    Box box = Piles.footprint(made, sheared(leans, QUARTER));
    int pushes = 1;
    for (int i = 1; i < leans.size(); i++) {
      pushes += leans.get(i).equals(leans.get(i - 1)) ? 0 : 1;
    }
    return new Pattern(leans, box.width(), box.height(), pushes);
  }

  static Posed posed(MadeCard made, List<Integer> leans, double theta) {
    return new ShearForm(made).sheared(leans, theta);
  }

  /** Every stage sheared by theta from upright, each its way: 1 leans right (or up), -1 left. */
  Posed sheared(List<Integer> leans, double theta) {
    Mechanism m = made.mechanism();
    List<Double> values = new ArrayList<>();
    for (Joint j : m.joints()) {
      values.add(j.match(h -> turn(h, leans, theta), s -> 0.0, p -> 0.0));
    }
    return Poses.of(m, values);
  }

  /** The rotation of b relative to a about the hinge, from how far each of them turns. */
  private double turn(Joint.Hinge h, List<Integer> leans, double theta) {
    Vec3 u = h.to().minus(h.from()).unit();
    double about = u.y() - u.x(); // leaning right turns about +y, leaning up about -x
    return Math.signum(about) * theta * (lean(h.b(), leans) - lean(h.a(), leans));
  }

  private int lean(int facet, List<Integer> leans) {
    String panel = made.panels().get(facet).name();
    return panel.startsWith("side-")
        ? leans.get(stages.indexOf(made.panels().get(facet).piece()))
        : 0;
  }

  /** Motions of a mechanism from the values of its joints. */
  static final class Poses {
    private Poses() {}

    static Posed still(Mechanism m) {
      return new Posed(
          m.facets().stream().map(f -> Rigid.IDENTITY).toList(),
          m.joints().stream().map(j -> 0.0).toList(),
          0);
    }

    /** From the fixed facets outwards, over glue and joints; the first way to a facet counts. */
    static Posed of(Mechanism m, List<Double> values) {
      Rigid[] motion = new Rigid[m.facets().size()];
      m.fixed().forEach(f -> motion[f] = Rigid.IDENTITY);
      boolean moved = true;
      while (moved) {
        moved = false;
        for (Mechanism.Bond b : m.bonds()) {
          moved |= carry(motion, b.a(), b.b(), Rigid.IDENTITY);
          moved |= carry(motion, b.b(), b.a(), Rigid.IDENTITY);
        }
        for (int j = 0; j < m.joints().size(); j++) {
          if (m.joints().get(j) instanceof Joint.Hinge h) {
            moved |= carry(motion, h.a(), h.b(), Rigid.rotation(h.from(), h.to(), values.get(j)));
            moved |= carry(motion, h.b(), h.a(), Rigid.rotation(h.from(), h.to(), -values.get(j)));
          }
        }
      }
      return new Posed(List.of(motion), values, gap(m, motion));
    }

    private static boolean carry(Rigid[] motion, int from, int to, Rigid by) {
      if (motion[from] == null || motion[to] != null) {
        return false;
      }
      motion[to] = by.then(motion[from]);
      return true;
    }

    private static double gap(Mechanism m, Rigid[] motion) {
      double gap = 0;
      for (Joint j : m.joints()) {
        if (j instanceof Joint.Hinge h) {
          gap =
              Math.max(gap, motion[h.a()].apply(h.from()).distance(motion[h.b()].apply(h.from())));
          gap = Math.max(gap, motion[h.a()].apply(h.to()).distance(motion[h.b()].apply(h.to())));
        }
      }
      return gap;
    }
  }
}
