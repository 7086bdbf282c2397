package hingeleaf.fold;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Posed;
import hingeleaf.geom.Arrangement;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How thick a card lies: what is stacked at each spot of a flat pose, and in which order.
 *
 * <p>The flat pose is coplanar with the roots' plane, seen along z. Two thicknesses are told. Limp:
 * the most card and foam over any one spot, as if everything bent freely. Rigid: the heaviest chain
 * of panels each lying above the next, as if nothing bent. Order comes from the motion: in each
 * cell of the overlay the panels' heights a little before flat, ties by the side on which they are
 * glued.
 */
public final class Piles {
  /** Heights closer than this are told apart by the gluing, mm. */
  private static final double SAME_HEIGHT_MM = 1e-6;

  /**
   * Curves need not be finer to tell what lies on what: a tenth of a millimetre, as a knife cuts.
   */
  private static final double COARSE_MM = 0.1;

  private final MadeCard made;
  private final double[] thick;
  private final double[] level;
  private final List<Region> shapes;

  /** For several piles of one card: what they share is worked out once. */
  Piles(MadeCard made) {
    this.made = made;
    this.shapes = made.panels().stream().map(p -> Overlay.coarser(p.region(), COARSE_MM)).toList();
    this.thick = new double[made.panels().size()];
    this.level = new double[made.panels().size()];
    for (int i = 0; i < thick.length; i++) {
      thick[i] = made.mechanism().facets().get(i).thickness();
    }
    layGlue();
  }

  /**
   * A pile.
   *
   * @param limp mm
   * @param rigid mm
   * @param layers most panels over any one spot
   * @param chain panel ids of the thickest chain, from the bottom up
   * @param layered sum over cells of area x layers, mm2: equals the sum of the panels' areas, but
   *     for what curves lose by being drawn more coarsely
   * @param acyclic false where the order found goes round in a circle, so that {@code rigid} is the
   *     thickest stack at one spot instead
   */
  public record Pile(
      double limp, double rigid, int layers, List<String> chain, double layered, boolean acyclic) {}

  /**
   * The pile of a flat pose.
   *
   * @param flat every panel in the plane of the root
   * @param nearly the same motion a little before flat, about 0.01 rad, for the order
   */
  public static Pile of(MadeCard made, Posed flat, Posed nearly) {
    return new Piles(made).pile(flat, nearly);
  }

  /** The box around all panels of a flat pose, in the world's x and y. */
  public static Box footprint(MadeCard made, Posed flat) {
    List<Vec2> all = new ArrayList<>();
    for (int i = 0; i < made.panels().size(); i++) {
      Rigid pose = pose(made, flat, i);
      made.panels().get(i).region().outer().points().forEach(p -> all.add(flatten(pose.apply(p))));
    }
    return Box.around(all);
  }

  private static Rigid pose(MadeCard made, Posed posed, int panel) {
    return made.panels().get(panel).made().then(posed.motions().get(panel));
  }

  private static Vec2 flatten(Vec3 p) {
    return new Vec2(p.x(), p.y());
  }

  /** Foam counts as part of the piece that stands on it; glue says who lies on whose face. */
  private void layGlue() {
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < made.panels().size(); i++) {
      index.put(made.panels().get(i).id(), i);
    }
    for (Join join : made.card().joins()) {
      join.<Boolean>match(g -> lay(g, index), s -> false, p -> false, p -> false);
    }
  }

  private boolean lay(Join.Glue g, Map<String, Integer> index) {
    Integer a = index.get(g.a().piece() + "/" + g.a().panel());
    Integer b = index.get(g.b().piece() + "/" + g.b().panel());
    if (a == null || b == null) {
      throw new IllegalArgumentException("glue " + g.id() + " names a panel that is not there");
    }
    thick[a] += g.raisedBy();
    double facing = made.panels().get(b).made().normal().z() >= 0 ? 1 : -1;
    level[a] = level[b] + (g.b().face() == Face.FRONT ? facing : -facing);
    return true;
  }

  /** See {@link #of}. */
  Pile pile(Posed flat, Posed nearly) {
    List<Region> laid = new ArrayList<>();
    for (int i = 0; i < thick.length; i++) {
      Rigid pose = pose(made, flat, i);
      laid.add(shapes.get(i).map(p -> flatten(pose.apply(p))));
    }
    double limp = 0;
    int layers = 0;
    double layered = 0;
    Map<Integer, Set<Integer>> above = new LinkedHashMap<>();
    Rigid[] lifted = lifted(flat, nearly);
    for (Arrangement.Cell cell : Arrangement.of(laid)) {
      limp = Math.max(limp, stacked(cell.cover()));
      layers = Math.max(layers, cell.cover().cardinality());
      layered += cell.area() * cell.cover().cardinality();
      order(cell, lifted, above);
    }
    Chain chain = new Chain(above);
    if (chain.circular) {
      return new Pile(limp, limp, layers, List.of(), layered, false);
    }
    return new Pile(limp, chain.thickest, layers, chain.path(), layered, true);
  }

  private double stacked(BitSet cover) {
    return cover.stream().mapToDouble(i -> thick[i]).sum();
  }

  /** Adds who lies directly above whom in one cell. */
  private void order(Arrangement.Cell cell, Rigid[] lifted, Map<Integer, Set<Integer>> above) {
    Integer[] members = cell.cover().stream().boxed().toArray(Integer[]::new);
    double[] height = new double[thick.length];
    for (int i : members) {
      height[i] = lifted[i].apply(cell.inside()).z();
    }
    Arrays.sort(
        members,
        (i, j) ->
            Math.abs(height[i] - height[j]) > SAME_HEIGHT_MM
                ? Double.compare(height[i], height[j])
                : Double.compare(level[i], level[j]));
    for (int k = 0; k < members.length; k++) {
      Set<Integer> next = above.computeIfAbsent(members[k], m -> new TreeSet<>());
      if (k + 1 < members.length) {
        next.add(members[k + 1]);
      }
    }
  }

  /** For each panel the motion from where it lies flat to where it is a little before. */
  private Rigid[] lifted(Posed flat, Posed nearly) {
    Rigid[] lifted = new Rigid[thick.length];
    for (int i = 0; i < lifted.length; i++) {
      lifted[i] = pose(made, flat, i).inverse().then(pose(made, nearly, i));
    }
    return lifted;
  }

  /** The heaviest path through the above-relation, found by depth-first search. */
  private final class Chain {
    private final Map<Integer, Set<Integer>> above;
    private final double[] best = new double[thick.length];
    private final int[] next = new int[thick.length];
    private final int[] state = new int[thick.length];
    private boolean circular;
    private double thickest;
    private int bottom = -1;

    Chain(Map<Integer, Set<Integer>> above) {
      this.above = above;
      Arrays.fill(next, -1);
      for (int i : above.keySet()) {
        double here = climb(i);
        if (here > thickest) {
          thickest = here;
          bottom = i;
        }
      }
    }

    private double climb(int i) {
      if (state[i] == 1) {
        circular = true;
        return 0;
      }
      if (state[i] == 0) {
        state[i] = 1;
        double most = 0;
        for (int j : above.getOrDefault(i, Set.of())) {
          double up = climb(j);
          if (up > most) {
            most = up;
            next[i] = j;
          }
        }
        best[i] = thick[i] + most;
        state[i] = 2;
      }
      return best[i];
    }

    List<String> path() {
      List<String> ids = new ArrayList<>();
      for (int i = bottom; i >= 0; i = next[i]) {
        ids.add(made.panels().get(i).id());
      }
      return ids;
    }
  }
}
