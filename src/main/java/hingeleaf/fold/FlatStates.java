package hingeleaf.fold;

import hingeleaf.card.Flats;
import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.geom.Box;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * The ways in which a card lies flat, found by the engine and ranked as a maker would take them.
 *
 * <p>Every combination of the ways of its independent parts is counted. Up to {@value #MOST_TRIED}
 * combinations each is posed and its footprint found; of more, that many of the least moves. Piles
 * are worked out for the few that are listed only.
 */
public final class FlatStates {
  private static final int MOST_TRIED = 4096;

  /** The search's budget: some hundred times what twelve stages need. */
  private static final long STEPS = 4_000_000;

  /** To a millionth: below what counts as panels crossing. */
  private static final double POINT = 1e-6;

  /** How far before flat the order of layers is read, as a share of the way there. */
  private static final double NEARLY = 1 - 0.01 / (Math.PI / 2);

  private final MadeCard made;
  private final Linkage linkage;
  private final Rests rests;
  private final Outskirts outskirts;
  private final Stays stays;
  private final Piles piles;

  private FlatStates(MadeCard made) {
    this.made = made;
    this.stays = Stays.of(made);
    this.outskirts = new Outskirts(made);
    this.piles = new Piles(made);
    this.linkage = Linkage.of(withoutOrnaments(made, stays), Budget.of(STEPS));
    this.rests = flat(linkage.rests(false, Budget.of(STEPS)));
  }

  /**
   * The mechanism with every ornament shrunk to a point. How a card lies flat is a matter of its
   * folds; an ornament in the way is told as such, and must not hide the state that it blocks.
   * Stays are put away before, wherever they are drawn.
   */
  private static Mechanism withoutOrnaments(MadeCard made, Stays stays) {
    Mechanism m = made.mechanism();
    List<Mechanism.Facet> facets = new ArrayList<>();
    for (int i = 0; i < m.facets().size(); i++) {
      Mechanism.Facet f = m.facets().get(i);
      Piece piece = made.card().piece(made.panels().get(i).piece());
      boolean folds = (!piece.scores().isEmpty() || m.fixed().contains(i)) && !stays.has(i);
      facets.add(folds ? f : point(f));
    }
    return new Mechanism(facets, m.joints(), m.bonds(), m.fixed());
  }

  private static Mechanism.Facet point(Mechanism.Facet f) {
    Vec3 at = f.outline().get(0);
    List<Vec3> small = f.outline().stream().map(p -> at.plus(p.minus(at).times(POINT))).toList();
    return new Mechanism.Facet(f.id(), small, List.of(), f.thickness());
  }

  /** Only what lies flat: parts that rest at an angle keep those ways in the engine's own list. */
  private Rests flat(Rests all) {
    List<Rests.Choice> choices = new ArrayList<>();
    for (Rests.Choice c : all.choices()) {
      if (isStay(c)) {
        double value = stays.away(c.joints().get(0));
        RestState put = new RestState(List.of(value), (int) Math.signum(value), true, false, false);
        choices.add(new Rests.Choice(c.joints(), List.of(put)));
        continue;
      }
      List<RestState> flat = c.ways().stream().filter(RestState::coplanar).toList();
      if (isDoor(c)) {
        flat = flat.stream().filter(w -> Math.abs(w.values().get(0)) < 1e-9).toList();
      }
      choices.add(new Rests.Choice(c.joints(), flat.isEmpty() ? c.ways() : flat));
    }
    return new Rests(all.complete(), choices);
  }

  /** A fold of a stay: it is put away in one way. */
  private boolean isStay(Rests.Choice c) {
    return c.joints().size() == 1 && stays.folds(c.joints().get(0));
  }

  /** A fold in no loop that is flat in the made card: a door, which lies flat closed. */
  private static boolean isDoor(Rests.Choice c) {
    return c.joints().size() == 1
        && c.ways().stream().anyMatch(w -> w.coplanar() && Math.abs(w.values().get(0)) < 1e-9);
  }

  /**
   * The flat states of a card.
   *
   * @param listed at most so many are listed with their piles, half as many where there are more
   *     ways than that; all are counted
   */
  public static Flats of(MadeCard made, int listed) {
    return of(made, listed, () -> {});
  }

  /**
   * The same, for work that may be stopped.
   *
   * @param goOn run before every state; what it throws ends the work
   */
  public static Flats of(MadeCard made, int listed, Runnable goOn) {
    return new FlatStates(made).flats(listed, goOn);
  }

  /**
   * One way to lie flat, before it is looked at closely.
   *
   * @param area of its footprint, mm2
   */
  private record Pattern(int[] pick, List<Integer> leans, long area, int pushes) {}

  private static final Comparator<Pattern> LEAST =
      Comparator.comparingLong(Pattern::area)
          .thenComparingInt(Pattern::pushes)
          .thenComparing(Pattern::leans, FlatStates::lexically);

  private Flats flats(int listed, Runnable goOn) {
    List<Rest> best = new ArrayList<>();
    for (Pattern p : least(listed, goOn)) {
      goOn.run();
      best.add(rest(p));
    }
    best.sort(
        Comparator.comparingLong((Rest r) -> Math.round(r.width() * r.height()))
            .thenComparingLong(r -> Math.round(r.rigid() * 1000)));
    boolean all = rests.complete() && rests.count() <= MOST_TRIED;
    return new Flats(all, (long) rests.count(), best);
  }

  /** The few least footprints, in their order. */
  private List<Pattern> least(int listed, Runnable goOn) {
    Function<int[], List<Rigid>> motions = linkage.restMotions(rests);
    List<int[]> picks = rests.ranked((choice, way) -> 0, MOST_TRIED);
    int few = picks.size() <= listed ? picks.size() : (listed + 1) / 2;
    List<Pattern> least = new ArrayList<>();
    for (int[] pick : picks) {
      goOn.run();
      Box box = outskirts.footprint(stays.laid(motions.apply(pick)));
      long area = Math.round(box.width() * box.height());
      if (least.size() < few || area <= least.get(few - 1).area) { // few of thousands
        least.add(pattern(pick, area));
        least.sort(LEAST);
        least.subList(Math.min(few, least.size()), least.size()).clear();
      }
    }
    return least;
  }

  private static int lexically(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      int order = Integer.compare(a.get(i), b.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(a.size(), b.size());
  }

  private Pattern pattern(int[] pick, long area) {
    List<Integer> leans = leans(pick);
    int pushes = 1;
    for (int i = 1; i < leans.size(); i++) {
      pushes += leans.get(i).equals(leans.get(i - 1)) ? 0 : 1;
    }
    return new Pattern(pick, leans, area, pushes);
  }

  private Rest rest(Pattern p) {
    Posed flat = stays.laid(linkage.rest(rests, p.pick));
    double[] values = flat.values().stream().mapToDouble(v -> v * NEARLY).toArray();
    Box box = Piles.footprint(made, flat);
    Piles.Pile pile = piles.pile(flat, stays.laid(linkage.at(values)));
    String held = pile.chain().isEmpty() ? "" : pile.chain().get(pile.chain().size() - 1);
    return new Rest(flat, p.leans, box.width(), box.height(), pile.limp(), pile.rigid(), held);
  }

  /**
   * Which way each part goes: the way in which the last panel of its piece moves when only this
   * part moves, -1 to the left (or down), 1 to the right (or up).
   */
  private List<Integer> leans(int[] pick) {
    List<Integer> leans = new ArrayList<>();
    for (int c = 0; c < rests.choices().size(); c++) {
      Rests.Choice choice = rests.choices().get(c);
      if (!isDoor(choice) && !isStay(choice)) {
        leans.add(lean(c, pick[c]));
      }
    }
    return leans;
  }

  private final List<List<Integer>> known = new ArrayList<>();

  private int lean(int choice, int way) {
    while (known.size() <= choice) {
      int next = known.size();
      Rests.Choice c = rests.choices().get(next);
      known.add(c.ways().stream().map(w -> lean(c, w)).toList());
    }
    return known.get(choice).get(way);
  }

  private int lean(Rests.Choice c, RestState way) {
    double[] values = new double[made.mechanism().joints().size()];
    for (int i = 0; i < values.length && i < c.joints().size(); i++) {
      values[c.joints().get(i)] = way.values().get(i);
    }
    Posed posed = linkage.at(values);
    double most = 0;
    for (int j : c.joints()) {
      Joint joint = made.mechanism().joints().get(j);
      for (int facet : new int[] {joint.a(), joint.b()}) {
        double moved = moved(facet, posed);
        most = Math.abs(moved) > Math.abs(most) ? moved : most;
      }
    }
    return most < 0 ? -1 : 1;
  }

  /** How far the middle of a panel goes sideways: along x, or along y where that is more. */
  private double moved(int facet, Posed posed) {
    Panel p = made.panels().get(facet);
    Vec2 middle = p.region().box().centre();
    Vec3 from = p.made().apply(middle);
    Vec3 to = posed.motions().get(facet).apply(from);
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    return Math.abs(x) >= Math.abs(y) ? x : y;
  }
}
