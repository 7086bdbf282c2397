package hingeleaf.fold.contact;

import hingeleaf.card.Posed;
import hingeleaf.fold.Budget;
import hingeleaf.fold.Drive;
import hingeleaf.fold.Linkage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The way of a card from made to flat as joint values, straight between nodes, its freedoms in one
 * of the orders in which hands take them.
 */
final class Course {
  /** A pose whose loops gape by less than this is closed, mm. */
  private static final double CLOSED_MM = 1e-6;

  /** Nodes where a straight line in joint values does not keep the loops closed. */
  private static final int BENT_NODES = 48;

  private static final long STEPS = 200_000;

  final Order order;

  /** Joint values at each node, the made pose first. */
  final List<double[]> nodes;

  /** Whether the solver reached every node. */
  final boolean whole;

  private Course(Order order, List<double[]> nodes, boolean whole) {
    this.order = order;
    this.nodes = List.copyOf(nodes);
    this.whole = whole;
  }

  /** From the made pose straight to where one joint alone has a value. */
  static Course turning(int joints, int joint, double value) {
    double[] end = new double[joints];
    end[joint] = value;
    return new Course(Order.TOGETHER, List.of(new double[joints], end), true);
  }

  /** To these values with one joint turned last, all the others standing where they end. */
  static Course turning(double[] end, int joint) {
    double[] start = end.clone();
    start[joint] = 0;
    return new Course(Order.TOGETHER, List.of(start, end.clone()), true);
  }

  /**
   * The course to these joint values.
   *
   * @param start where it begins, stays put away
   */
  static Course to(Linkage linkage, double[] start, List<Double> flat, Order order) {
    double[] end = flat.stream().mapToDouble(Double::doubleValue).toArray();
    List<List<Integer>> movers = new ArrayList<>(linkage.movers());
    if (order == Order.FRONT_FIRST) {
      Collections.reverse(movers);
    }
    List<double[]> nodes = new ArrayList<>();
    double[] at = start;
    nodes.add(at);
    boolean whole = true;
    for (List<Integer> together : groups(movers, order)) {
      double[] next = at.clone();
      together.forEach(j -> next[j] = end[j]);
      if (!Arrays.equals(at, next)) {
        whole &= leg(linkage, at, next, nodes);
        at = next;
      }
    }
    return new Course(order, nodes, whole);
  }

  private static List<List<Integer>> groups(List<List<Integer>> movers, Order order) {
    return order == Order.TOGETHER
        ? List.of(movers.stream().flatMap(List::stream).toList())
        : movers;
  }

  /** Adds the nodes of a straight leg, or of one that the solver bends. */
  private static boolean leg(Linkage linkage, double[] from, double[] to, List<double[]> nodes) {
    boolean straight = true;
    for (double share : new double[] {0.21, 0.5, 0.83}) {
      straight &= linkage.at(between(from, to, share)).gap() <= CLOSED_MM;
    }
    boolean whole = true;
    for (int i = 1; i < BENT_NODES && !straight; i++) {
      double[] q = between(from, to, (double) i / BENT_NODES);
      Drive drive = linkage.drive(Map.of(), near(linkage.at(q), linkage), Budget.of(STEPS));
      if (drive.reached()) {
        nodes.add(drive.posed().values().stream().mapToDouble(Double::doubleValue).toArray());
      } else {
        whole = false;
      }
    }
    nodes.add(to);
    return whole;
  }

  private static Map<String, Double> near(Posed posed, Linkage linkage) {
    Map<String, Double> near = new HashMap<>();
    for (int j = 0; j < posed.values().size(); j++) {
      near.put(linkage.joint(j).id(), posed.values().get(j));
    }
    return near;
  }

  static double[] between(double[] from, double[] to, double share) {
    double[] q = new double[from.length];
    Arrays.setAll(q, j -> from[j] + share * (to[j] - from[j]));
    return q;
  }

  int legs() {
    return nodes.size() - 1;
  }

  /** Joint values at a share of a leg. */
  double[] at(int leg, double share) {
    return between(nodes.get(leg), nodes.get(leg + 1), share);
  }

  double[] end() {
    return nodes.get(nodes.size() - 1);
  }
}
