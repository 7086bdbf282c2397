package hingeleaf.fold;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.geom.Rigid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A mechanism made ready to be moved: what moves as one, its loops, and what they leave free.
 *
 * <p>Values are rad, or mm for sliders, 0 in the reference pose. Immutable from outside; keeps what
 * it found out about its freedoms, so one thread at a time.
 */
public final class Linkage {
  private static final double REGULAR_MM = 1e-9;
  private static final double SET_EXACTLY_MM = 1e-12;
  private static final double NEAR_FLAT_MM = 3e-14;
  private static final double NEAR_FLAT_RAD = 1e-3;
  private static final double FLAT_RAD = 1e-14;

  /** A joint whose share of a unit motion is less than this stands still. */
  private static final double MOVES = 1e-6;

  private final Mechanism mechanism;
  private final Bodies bodies;
  private final BodyGraph graph;
  private final Axes axes;
  private final List<Loop> loops;
  private final List<Part> parts;
  private final Freedom[] freedoms;
  private final Poser poser;
  private @Nullable Crossing crossing;

  private Linkage(Mechanism mechanism, Budget budget) {
    this.mechanism = mechanism;
    bodies = new Bodies(mechanism);
    graph = new BodyGraph(mechanism, bodies);
    axes = new Axes(mechanism);
    loops = new ArrayList<>();
    for (CycleBasis.Cycle c : CycleBasis.of(graph, budget)) {
      loops.add(Loops.of(c.edges(), c.signs(), axes));
    }
    parts = Part.split(graph.edges, loops);
    freedoms = new Freedom[parts.size()];
    poser = new Poser(mechanism, bodies, graph, axes);
  }

  /**
   * @param budget bounds the search for loops
   * @throws IllegalArgumentException if the budget does not suffice, or a joint has no direction
   */
  public static Linkage of(Mechanism mechanism, Budget budget) {
    try {
      return new Linkage(mechanism, budget);
    } catch (Budget.Spent e) {
      throw new IllegalArgumentException(
          "the loops of " + mechanism.joints().size() + " joints are too many to find", e);
    }
  }

  /** Panels that are glued count as one body; fixed panels that are not glued count each. */
  public int bodies() {
    return bodies.glued;
  }

  /** Independent loops of joints. */
  public int loops() {
    return loops.size();
  }

  /** Which body a panel belongs to, from 0; glued panels share one, and all fixed panels do. */
  public int bodyOf(int facet) {
    return bodies.ofFacet[facet];
  }

  /** A joint of the mechanism, by index. */
  public Joint joint(int index) {
    return mechanism.joints().get(index);
  }

  /** Joints that can only move together, lowest first: each loop's, and every loopless joint. */
  public List<List<Integer>> movers() {
    List<List<Integer>> movers = new ArrayList<>();
    parts.forEach(p -> movers.add(Arrays.stream(p.joints()).boxed().toList()));
    Arrays.stream(freeJoints()).forEach(j -> movers.add(List.of(j)));
    movers.sort(java.util.Comparator.comparingInt(m -> m.get(0)));
    return movers;
  }

  Mechanism mechanism() {
    return mechanism;
  }

  /** Index of a joint by id. */
  int index(String id) {
    for (int j = 0; j < graph.edges; j++) {
      if (mechanism.joints().get(j).id().equals(id)) {
        return j;
      }
    }
    throw new IllegalArgumentException("there is no joint " + id);
  }

  List<Part> parts() {
    return parts;
  }

  Axes axes() {
    return axes;
  }

  /** Joints that are in no loop: each is a freedom of its own. */
  int[] freeJoints() {
    boolean[] looped = new boolean[graph.edges];
    parts.forEach(p -> Arrays.stream(p.joints()).forEach(j -> looped[j] = true));
    return java.util.stream.IntStream.range(0, graph.edges).filter(j -> !looped[j]).toArray();
  }

  /** Whether panels pass through each other at some values, that do not in the reference. */
  boolean crossed(double[] q) {
    Crossing known = crossing;
    if (known == null) {
      known = new Crossing(mechanism, bodies);
      crossing = known;
    }
    return known.in(poser.motions(q));
  }

  Freedom freedom(int part, Budget budget) {
    Freedom known = freedoms[part];
    if (known == null) {
      known = Freedom.of(parts.get(part), new double[graph.edges], budget);
      freedoms[part] = known;
    }
    return known;
  }

  /**
   * How many freedoms the mechanism has at a regular pose near the reference; where the reference
   * is singular, such as a flat sheet, on the branch that has most.
   *
   * @throws IllegalArgumentException if the budget does not suffice to tell
   */
  public int mobility(Budget budget) {
    try {
      int sum = freeJoints().length;
      for (int p = 0; p < parts.size(); p++) {
        sum += freedom(p, budget).count(budget);
      }
      return sum;
    } catch (Budget.Spent e) {
      throw new IllegalArgumentException("this mechanism is too large to count its freedoms", e);
    }
  }

  /**
   * The joints that can move from the reference pose: in a part that only looks free because its
   * pose is singular there are none.
   *
   * @throws IllegalArgumentException if the budget does not suffice to tell
   */
  public Set<Integer> moving(Budget budget) {
    Set<Integer> all = new TreeSet<>();
    Arrays.stream(freeJoints()).forEach(all::add);
    try {
      for (int p = 0; p < parts.size(); p++) {
        Part part = parts.get(p);
        if (freedom(p, budget).count(budget) == 0) {
          continue;
        }
        for (double[] k : Freedom.kernel(part, new double[graph.edges], budget)) {
          for (int i = 0; i < k.length; i++) {
            if (Math.abs(k[i]) > MOVES) {
              all.add(part.joints()[i]);
            }
          }
        }
      }
    } catch (Budget.Spent e) {
      throw new IllegalArgumentException("this mechanism is too large to count its freedoms", e);
    }
    return all;
  }

  /** Joints in no loop, such as the folds of doors: each is a freedom of its own. */
  public List<Integer> loopless() {
    return Arrays.stream(freeJoints()).boxed().toList();
  }

  /**
   * How many freedoms the mechanism has to first order in a pose; more than {@link #mobility} where
   * the pose is singular.
   *
   * @throws IllegalArgumentException if the mechanism is too large to tell
   */
  public int freedomsAt(Posed pose) {
    double[] q = pose.values().stream().mapToDouble(Double::doubleValue).toArray();
    int sum = freeJoints().length;
    try {
      for (Part p : parts) {
        sum += Freedom.kernel(p, q, Budget.of(Long.MAX_VALUE)).length;
      }
    } catch (Budget.Spent e) {
      throw new IllegalArgumentException("this mechanism is too large to count its freedoms", e);
    }
    return sum;
  }

  /** Whether the reference pose is regular: what moves to first order really moves. */
  public boolean regular(Budget budget) {
    try {
      boolean all = true;
      for (int p = 0; p < parts.size(); p++) {
        all &= freedom(p, budget).regular();
      }
      return all;
    } catch (Budget.Spent e) {
      return false;
    }
  }

  /**
   * How far a point of a closed pose may be from its true place, mm: 1e-9 from 1e-3 rad off flat
   * outwards, 1e-12 at a flat state set exactly, and between about 3e-14/eps at eps rad off flat,
   * where an error of angles shows in the closure only by its square (measured, docs/folding.md).
   */
  public double positionError(Posed pose) {
    double worst = SET_EXACTLY_MM;
    for (Part part : parts) {
      double off = 0;
      for (int j : part.joints()) {
        if (!axes.slides[j] && !Double.isNaN(axes.total[j])) {
          double angle = axes.total[j] + pose.values().get(j);
          off = Math.max(off, Math.abs(Math.IEEEremainder(angle, Math.PI)));
        }
      }
      double near = off >= NEAR_FLAT_RAD ? REGULAR_MM : Math.max(REGULAR_MM, NEAR_FLAT_MM / off);
      worst = Math.max(worst, off < FLAT_RAD ? SET_EXACTLY_MM : near);
    }
    return worst;
  }

  /** The pose at given values, closed or not; its gap tells. */
  public Posed at(double[] values) {
    return poser.posed(values);
  }

  /**
   * Brings joints to given values and closes all loops.
   *
   * <p>Without {@code near} the mechanism moves from the reference pose, every driven joint in
   * proportion; freedoms that no drive settles stay as near to where they were as each step allows.
   * Out of a singular reference it takes, of the branches on which no panels cross, the one on
   * which the driven joints turn most compared with the others. With {@code near} the closed pose
   * at or next to those values is meant, or, if none is next to them, the one reached from the
   * reference that is nearest.
   *
   * @param targets values by joint id
   * @param near rough values by joint id, for some or all joints
   */
  public Drive drive(Map<String, Double> targets, Map<String, Double> near, Budget budget) {
    double[] target = spread(targets);
    double[] rough = spread(near);
    double[] q = new double[graph.edges];
    try {
      List<String> why = new ArrayList<>();
      for (int j : freeJoints()) {
        q[j] = !Double.isNaN(target[j]) ? target[j] : !Double.isNaN(rough[j]) ? rough[j] : 0;
      }
      for (int p = 0; p < parts.size(); p++) {
        drivePart(p, target, rough, q, why, budget);
      }
      beyondGuides(target, why);
      return new Drive(why.isEmpty(), String.join("; ", why), poser.posed(q));
    } catch (Budget.Spent e) {
      return new Drive(false, "this took more steps than allowed", poser.posed(q));
    }
  }

  private void drivePart(
      int p, double[] target, double[] rough, double[] q, List<String> why, Budget budget) {
    Part part = parts.get(p);
    double[] reference = new double[graph.edges];
    PartDrive.Outcome o =
        new PartDrive(
                part, axes, reference, target, rough, freedom(p, budget), this::crossed, budget)
            .run();
    for (int j : part.joints()) {
      q[j] = o.q()[j];
    }
    if (!o.reached()) {
      Freedom free = freedom(p, budget);
      why.add(why(o, target, free.rigid(budget), free.unsought()));
    }
  }

  private String why(PartDrive.Outcome o, double[] target, boolean rigid, boolean unsought) {
    if (o.blocked() < 0) {
      return "the loops do not close";
    }
    if (unsought) {
      return "this many folds that lie flat can move off in too many ways: give rough angles (near)";
    }
    Joint joint = mechanism.joints().get(o.blocked());
    double got = o.q()[o.blocked()];
    String held = rigid ? " is held fast" : " gets no further with these drives";
    return "fold "
        + joint.id()
        + " cannot be brought to "
        + told(o.blocked(), target[o.blocked()])
        + ": it"
        + held
        + ", the nearest is "
        + told(o.blocked(), got);
  }

  private String told(int j, double value) {
    return axes.slides[j]
        ? String.format(Locale.ROOT, "%.6f mm", value)
        : String.format(Locale.ROOT, "%.9f rad", value);
  }

  /** Sliders and pivots have stops; folds may be driven through closed in a thought experiment. */
  private void beyondGuides(double[] target, List<String> why) {
    for (int j = 0; j < target.length; j++) {
      boolean stops = !(mechanism.joints().get(j) instanceof Joint.Hinge);
      if (stops && (target[j] < axes.least[j] || target[j] > axes.most[j])) {
        double nearest = Math.max(axes.least[j], Math.min(axes.most[j], target[j]));
        why.add(
            mechanism.joints().get(j).id()
                + " cannot be brought to "
                + told(j, target[j])
                + ": it stops at "
                + told(j, nearest));
      }
    }
  }

  /**
   * The values at which the loops close best with joints held that cannot be had: least squares of
   * all loops, from the reference pose.
   */
  double[] nearestClosing(Map<String, Double> targets, Budget budget) {
    double[] target = spread(targets);
    double[] q = new double[graph.edges];
    for (int j = 0; j < q.length; j++) {
      q[j] = Double.isNaN(target[j]) ? 0 : target[j];
    }
    for (Part part : parts) {
      int[] free = Arrays.stream(part.joints()).filter(j -> Double.isNaN(target[j])).toArray();
      if (free.length > 0) {
        Coupled all = new Coupled(part.loops(), free, graph.edges, true);
        for (int round = 0; round < 50; round++) {
          budget.spend(part.loops().size());
          all.evaluate(q);
          if (all.step(q) < 1e-12) {
            break;
          }
        }
      }
    }
    return q;
  }

  /**
   * The states in which the mechanism can lie: every freedom as far as paper, guides and loops let
   * it go, or all folds open or closed.
   *
   * @param beyond whether to list also states that a card cannot come to: behind others, or past
   *     panels that cross
   */
  public Rests rests(boolean beyond, Budget budget) {
    List<Rests.Choice> choices = new ArrayList<>();
    boolean complete = true;
    for (int p = 0; p < parts.size(); p++) {
      Part part = parts.get(p);
      try {
        RestSearch.Found f =
            new RestSearch(part, axes, freedom(p, budget), beyond, this::crossed, budget)
                .run(graph.edges);
        complete &= f.complete();
        if (!f.ways().isEmpty()) {
          choices.add(new Rests.Choice(Arrays.stream(part.joints()).boxed().toList(), f.ways()));
        }
      } catch (Budget.Spent e) {
        complete = false;
      }
    }
    for (int j : freeJoints()) {
      choices.add(new Rests.Choice(List.of(j), freeWays(j)));
    }
    choices.sort(java.util.Comparator.comparingInt(c -> c.joints().get(0)));
    return new Rests(complete, choices);
  }

  /** A joint outside all loops rests open flat, and at either end. */
  private List<RestState> freeWays(int j) {
    List<RestState> ways = new ArrayList<>();
    double open = -axes.total[j];
    if (!axes.slides[j] && !Double.isNaN(open)) {
      ways.add(new RestState(List.of(open), (int) Math.signum(open), true, false, false));
    }
    for (double end : new double[] {axes.least[j], axes.most[j]}) {
      double off = Math.abs(end - open);
      boolean shut = Math.abs(Math.IEEEremainder(off, Math.PI)) < 1e-9;
      if (Double.isFinite(end) && !(off < 1e-9)) {
        ways.add(new RestState(List.of(end), (int) Math.signum(end), shut, false, false));
      }
    }
    return ways.isEmpty() ? List.of(new RestState(List.of(0.0), 0, false, false, false)) : ways;
  }

  /**
   * The pose of one combination of rests.
   *
   * @param pick for each choice of {@code rests} which of its ways, from 0
   */
  public Posed rest(Rests rests, int[] pick) {
    return poser.posed(rests.values(graph.edges, pick));
  }

  /** The same for looking at thousands: only how each panel has moved, one pose after another. */
  Function<int[], List<Rigid>> restMotions(Rests rests) {
    Series series = new Series(graph, bodies.ofFacet, poser);
    return pick -> series.next(rests.values(graph.edges, pick));
  }

  /** For each panel the last choice on which its motion hangs; -1 for one that never moves. */
  int[] decided(Rests rests) {
    int[] choice = new int[graph.edges];
    Arrays.fill(choice, -1);
    for (int c = 0; c < rests.choices().size(); c++) {
      for (int joint : rests.choices().get(c).joints()) {
        choice[joint] = c;
      }
    }
    int[] last = new int[graph.nodes];
    for (int v : graph.order) {
      last[v] =
          graph.via[v] < 0
              ? -1
              : Math.max(last[graph.other(graph.via[v], v)], choice[graph.via[v]]);
    }
    return Arrays.stream(bodies.ofFacet).map(v -> last[v]).toArray();
  }

  private double[] spread(Map<String, Double> values) {
    double[] out = new double[graph.edges];
    for (int j = 0; j < out.length; j++) {
      Double v = values.get(mechanism.joints().get(j).id());
      out[j] = v == null ? Double.NaN : v;
    }
    return out;
  }
}
