package hingeleaf.fold;

import hingeleaf.card.Posed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Follows a mechanism while somebody moves a slider: a few microseconds a pose for a card, because
 * each pose starts from a parabola through the last three and nothing is allocated.
 *
 * <p>Where a pose is too far from the last, near a singular state, or where the drives leave
 * freedoms open, {@link Linkage#drive} is asked instead. One thread at a time.
 */
public final class Follow {
  /** A first step that moves a joint more than this is left to the careful way, rad. */
  private static final double FAR = 0.05;

  /** A closing may move a joint by this share of its step beyond the prediction. */
  private static final double MISS = 0.05;

  /** Rough inverse condition under which branches lie too near each other to follow blindly. */
  private static final double FIRM = 5e-3;

  private final Linkage linkage;
  private final int[] drivers;
  private final String[] names;
  private final List<Strand> strands = new ArrayList<>();
  private final double[] q;
  private final double[] aim;
  private final double[] last;
  private final double[] target;
  private final long budget;

  /** One part with its last poses, newest last. */
  private static final class Strand {
    final Part part;
    final Solver solver;
    final int[] own;
    final double[] at = new double[3];
    final double[][] pose = new double[3][];
    int known;
    boolean quick;

    Strand(Part part, int[] own, int joints, boolean quick, double[] q) {
      this.part = part;
      this.own = own;
      this.quick = quick;
      boolean[] held = new boolean[joints];
      for (int j : own) {
        held[j] = true;
      }
      solver = new Solver(part, held, q, false);
      for (int i = 0; i < 3; i++) {
        pose[i] = new double[part.size()];
      }
    }
  }

  private Follow(Linkage linkage, List<String> drivers, long budget) {
    this.linkage = linkage;
    this.budget = budget;
    names = drivers.toArray(new String[0]);
    int n = linkage.mechanism().joints().size();
    this.drivers = new int[names.length];
    for (int i = 0; i < names.length; i++) {
      this.drivers[i] = linkage.index(names[i]);
    }
    q = new double[n];
    aim = new double[n];
    last = new double[n];
    target = new double[n];
    Arrays.fill(target, Double.NaN);
    for (Part part : linkage.parts()) {
      strands.add(strand(part, n));
    }
  }

  private Strand strand(Part part, int n) {
    int[] own = Arrays.stream(drivers).filter(j -> Jacobians.local(part, j) >= 0).toArray();
    Freedom free = linkage.freedom(linkage.parts().indexOf(part), Budget.of(budget));
    boolean quick = free.regular() && own.length == free.count(Budget.of(budget));
    return new Strand(part, own, n, quick, q);
  }

  /**
   * @param drivers joints that will be moved, by id
   * @param budget work allowed for each pose that needs the careful way
   * @throws IllegalArgumentException if a driver is not there, or the mechanism is too large
   */
  public static Follow of(Linkage linkage, List<String> drivers, long budget) {
    try {
      return new Follow(linkage, drivers, budget);
    } catch (Budget.Spent e) {
      throw new IllegalArgumentException("this mechanism is too large to follow", e);
    }
  }

  /**
   * Moves the drivers.
   *
   * @param values for each driver, rad or mm
   * @return whether the pose was reached; if not, the pose stays where it was
   */
  public boolean to(double... values) {
    for (int i = 0; i < drivers.length; i++) {
      target[drivers[i]] = values[i];
    }
    System.arraycopy(q, 0, last, 0, q.length);
    for (int i = 0; i < strands.size(); i++) {
      if (!step(strands.get(i))) {
        return carefully();
      }
    }
    for (int i = 0; i < drivers.length; i++) {
      q[drivers[i]] = values[i];
    }
    return true;
  }

  /** Values of all joints in the present pose; valid until the next move. */
  public double[] values() {
    return q;
  }

  /** Where all panels are in the present pose. */
  public Posed posed() {
    return linkage.at(q);
  }

  private boolean step(Strand s) {
    if (s.own.length == 0) {
      return true;
    }
    if (!s.quick) {
      return false;
    }
    int lead = s.own[0];
    predict(s, target[lead]);
    for (int j : s.own) {
      q[j] = target[j];
    }
    for (int j : s.part.joints()) {
      aim[j] = q[j];
    }
    if (!s.solver.solve(q) || s.solver.ratio < FIRM || jumped(s)) {
      return false;
    }
    remember(s, target[lead]);
    return true;
  }

  /** The parabola (line, point) through the last poses, by the first driver. */
  private void predict(Strand s, double x) {
    int n = s.known;
    int[] js = s.part.joints();
    if (n == 0) {
      return;
    }
    double l0 = n > 2 ? weight(x, s.at[0], s.at[1], s.at[2]) : 0;
    double l1 = n > 2 ? weight(x, s.at[1], s.at[0], s.at[2]) : 0;
    double l2 = n > 2 ? weight(x, s.at[2], s.at[0], s.at[1]) : 1;
    for (int i = 0; i < js.length; i++) {
      q[js[i]] = l0 * s.pose[0][i] + l1 * s.pose[1][i] + l2 * s.pose[2][i];
    }
  }

  private static double weight(double x, double own, double a, double b) {
    return (x - a) * (x - b) / ((own - a) * (own - b));
  }

  private boolean jumped(Strand s) {
    int[] js = s.part.joints();
    double moved = 0;
    double missed = 0;
    for (int i = 0; i < js.length; i++) {
      moved = Math.max(moved, Math.abs(q[js[i]] - last[js[i]]));
      missed = Math.max(missed, Math.abs(q[js[i]] - aim[js[i]]));
    }
    return s.known < 3 ? moved > FAR : missed > MISS * moved + 1e-7;
  }

  private void remember(Strand s, double x) {
    if (s.known > 0 && Math.abs(x - s.at[2]) < 1e-9) {
      return;
    }
    double[] oldest = s.pose[0];
    s.pose[0] = s.pose[1];
    s.pose[1] = s.pose[2];
    s.pose[2] = oldest;
    s.at[0] = s.at[1];
    s.at[1] = s.at[2];
    s.at[2] = x;
    int[] js = s.part.joints();
    for (int i = 0; i < js.length; i++) {
      oldest[i] = q[js[i]];
    }
    boolean turned = s.known > 1 && Math.abs(s.at[2] - s.at[0]) < 1e-9;
    s.known = turned ? 1 : Math.min(3, s.known + 1);
  }

  private boolean carefully() {
    Map<String, Double> targets = new HashMap<>();
    for (int i = 0; i < names.length; i++) {
      targets.put(names[i], target[drivers[i]]);
    }
    Drive d = linkage.drive(targets, Map.of(), Budget.of(budget));
    for (Strand s : strands) {
      s.known = 0;
    }
    for (int j = 0; j < q.length; j++) {
      q[j] = d.reached() ? d.posed().values().get(j) : last[j];
    }
    return d.reached();
  }
}
