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
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The ways in which a card lies flat, found by the engine and ranked as a maker would take them.
 *
 * <p>Every combination of the ways of its independent parts is counted. The least footprints are
 * found by deciding part after part, best first: what is decided already can only grow. Piles are
 * worked out for the few that are listed only.
 */
public final class FlatStates {
  /**
   * So many beginnings are looked at, all those of twelve stages; after that the search narrows.
   */
  private static final int MOST_TRIED = 8192;

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
   * A way to lie flat, or the beginning of one, before it is looked at closely.
   *
   * @param pick the ways of the first parts, or of all
   * @param area of the footprint of all panels that hang on these alone, mm2
   */
  private record Pattern(int[] pick, List<Integer> leans, long area, int pushes) {}

  /** Nothing that begins like a pattern comes before it. */
  private static final Comparator<Pattern> LEAST =
      Comparator.comparingLong(Pattern::area)
          .thenComparingInt(Pattern::pushes)
          .thenComparing(Pattern::leans, FlatStates::lexically)
          .thenComparing(Pattern::pick, Arrays::compare);

  private Flats flats(int listed, Runnable goOn) {
    List<Rest> best = new ArrayList<>();
    double count = rests.count();
    Least least = least(count <= listed ? (int) count : (listed + 1) / 2, goOn);
    for (Pattern p : least.patterns) {
      goOn.run();
      best.add(rest(p));
    }
    best.sort(
        Comparator.comparingLong((Rest r) -> Math.round(r.width() * r.height()))
            .thenComparingLong(r -> Math.round(r.rigid() * 1000)));
    return new Flats(rests.complete() && least.certain, (long) count, best);
  }

  /** The few least footprints, in their order, and whether they are for certain. */
  private record Least(List<Pattern> patterns, boolean certain) {}

  private Least least(int few, Runnable goOn) {
    Function<int[], List<Rigid>> motions = linkage.restMotions(rests);
    int[] decided = linkage.decided(rests);
    PriorityQueue<Pattern> open = new PriorityQueue<>(LEAST);
    open.add(pattern(new int[0], motions, decided));
    List<Pattern> least = new ArrayList<>();
    int tried = 0;
    while (least.size() < few) {
      goOn.run();
      Pattern p = open.remove();
      if (p.pick.length == rests.choices().size()) {
        least.add(p);
        continue;
      }
      for (int way = 0; way < rests.choices().get(p.pick.length).ways().size(); way++) {
        int[] pick = Arrays.copyOf(p.pick, p.pick.length + 1);
        pick[p.pick.length] = way;
        open.add(pattern(pick, motions, decided));
      }
      if (++tried > MOST_TRIED) {
        open =
            Stream.generate(open::poll)
                .limit(Math.min(few, open.size()))
                .collect(Collectors.toCollection(() -> new PriorityQueue<>(LEAST)));
      }
    }
    return new Least(least, tried <= MOST_TRIED);
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

  private Pattern pattern(int[] pick, Function<int[], List<Rigid>> motions, int[] decided) {
    int[] all = Arrays.copyOf(pick, rests.choices().size());
    List<Rigid> moved = stays.laid(motions.apply(all));
    Box box = outskirts.footprint(moved, i -> decided[i] < pick.length);
    List<Integer> leans = leans(pick);
    int pushes = 1;
    for (int i = 1; i < leans.size(); i++) {
      pushes += leans.get(i).equals(leans.get(i - 1)) ? 0 : 1;
    }
    double area = Math.max(0, box.width()) * Math.max(0, box.height());
    return new Pattern(pick, leans, Math.round(area), pushes);
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
    for (int c = 0; c < pick.length; c++) {
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
