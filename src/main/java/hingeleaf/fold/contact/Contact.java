package hingeleaf.fold.contact;

import hingeleaf.card.Join;
import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.card.Stay;
import hingeleaf.fold.Budget;
import hingeleaf.fold.Linkage;
import hingeleaf.fold.Stays;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What touches on a card's way from made to flat. */
public final class Contact {
  private static final long STEPS = 4_000_000;

  private final MadeCard made;
  private final Linkage linkage;
  private final List<Solid> solids;
  private final Chains chains;
  private final Set<Long> passages = new HashSet<>();
  private final double clearance;
  private final Stays stays;
  private final Runnable goOn;

  private Contact(MadeCard made, double clearance) {
    this(made, clearance, () -> {});
  }

  private Contact(MadeCard made, double clearance, Runnable goOn) {
    this.made = made;
    this.goOn = goOn;
    this.clearance = clearance;
    stays = Stays.of(made);
    linkage = Linkage.of(made.mechanism(), Budget.of(STEPS));
    solids = Solids.of(made, linkage);
    chains = new Chains(made.mechanism(), linkage);
    Map<String, Integer> index = new HashMap<>();
    for (Solid s : solids) {
      index.put(s.id(), s.panel());
    }
    made.card()
        .joins()
        .forEach(j -> j.<Boolean>match(g -> false, s -> false, p -> false, p -> passage(p, index)));
  }

  private boolean passage(Join.Passage p, Map<String, Integer> index) {
    Integer tab = index.get(p.tab().piece() + "/" + p.tab().panel());
    Integer slit = index.get(p.slit().piece() + "/" + p.slit().panel());
    return tab != null && slit != null && passages.add(key(tab, slit));
  }

  private long key(int a, int b) {
    return (long) Math.min(a, b) * solids.size() + Math.max(a, b);
  }

  /**
   * The contacts on the way to a rest: all freedoms together; where that is blocked one after the
   * other from the front, then from the back. Told is the first order that is free, or what blocks
   * when all move together.
   *
   * @param clearance mm that sheets keep beside their paper before they count as layers
   */
  public static Way way(MadeCard made, Rest rest, double clearance) {
    return way(made, rest, clearance, () -> {});
  }

  /**
   * The same, for work that may be stopped.
   *
   * @param goOn run before every pair of sheets; what it throws ends the work
   */
  public static Way way(MadeCard made, Rest rest, double clearance, Runnable goOn) {
    Contact contact = new Contact(made, clearance, goOn);
    Way together = contact.along(rest, Order.TOGETHER);
    if (!together.blocked()) {
      return together.close().isEmpty() ? together : contact.advised(together, rest);
    }
    for (Order order : List.of(Order.FRONT_FIRST, Order.BACK_FIRST)) {
      Way other = contact.along(rest, order);
      if (!other.blocked()) {
        return other.close().isEmpty() ? other : contact.advised(other, rest);
      }
    }
    return contact.advised(together, rest);
  }

  /** How far each door opens: folds that are in no loop and flat in the made card. */
  public static List<Swing> swings(MadeCard made) {
    if (noDoors(made)) {
      return List.of();
    }
    Contact contact = new Contact(made, 0);
    return contact.doors().stream().map(contact::swing).toList();
  }

  /** The pairs of leaves that meet when they are shut. */
  public static List<Meeting> meetings(MadeCard made) {
    if (noDoors(made)) {
      return List.of();
    }
    Contact contact = new Contact(made, 0);
    List<Leaf> leaves = contact.doors().stream().map(contact::leaf).toList();
    List<Meeting> all = new ArrayList<>();
    for (int i = 0; i < leaves.size(); i++) {
      for (int j = i + 1; j < leaves.size(); j++) {
        leaves.get(i).meets(leaves.get(j)).ifPresent(all::add);
      }
    }
    return all;
  }

  /** Most cards have none, and then no solids need be made to learn it. */
  private static boolean noDoors(MadeCard made) {
    return made.mechanism().joints().stream()
        .noneMatch(j -> j instanceof Joint.Hinge h && h.made() == 0);
  }

  /** A fold on which a leaf hangs. */
  private record Door(int joint, Joint.Hinge hinge) {}

  private List<Door> doors() {
    List<Door> all = new ArrayList<>();
    for (List<Integer> together : linkage.movers()) {
      if (together.size() == 1 && linkage.joint(together.get(0)) instanceof Joint.Hinge h) {
        if (h.made() == 0) {
          all.add(new Door(together.get(0), h));
        }
      }
    }
    return all;
  }

  /** The leaf is what moves: the body of the two that is not the ground's side of the fold. */
  private int leafOf(Joint.Hinge h) {
    return linkage.bodyOf(h.a()) == 0 || moves(h.b(), h.a()) ? h.b() : h.a();
  }

  private Leaf leaf(Door door) {
    int facet = leafOf(door.hinge());
    return new Leaf(made, name(solids.get(facet), door.hinge()), facet, door.hinge());
  }

  private static String name(Solid leaf, Joint.Hinge h) {
    return leaf.id().endsWith("/leaf") ? leaf.piece() : h.id();
  }

  /**
   * Stays that cannot be folded out of the way while the card stands, their tongues pulled out; one
   * that comes to lie on something raised is no fault.
   */
  public static List<Blocked> stays(MadeCard made) {
    if (made.card().stays().isEmpty()) {
      return List.of();
    }
    Contact contact = new Contact(made, 0);
    List<Blocked> all = new ArrayList<>();
    for (Stay s : made.card().stays()) {
      Blocked b = contact.putAway(s);
      if (b != null) {
        all.add(b);
      }
    }
    return all;
  }

  private @Nullable Blocked putAway(Stay stay) {
    Swept swept = swept(stay);
    if (swept == null) {
      return null;
    }
    Advance advance = new Advance(swept.course(), 0, false);
    double share = 1 - RESTS_ON_RAD / swept.whole();
    String against = null;
    for (Solid part : solids) {
      for (Solid other : solids) {
        boolean asked = part.piece().equals(stay.piece()) && !stays.has(other.panel());
        Chain chain = asked ? chains.between(part.body(), other.body()) : null;
        Chain back = asked ? chains.between(other.body(), part.body()) : null;
        if (chain == null || back == null || !swings(part, other, chain)) {
          continue;
        }
        Advance.Outcome o = advance.run(part, other, chain, back, share);
        if (o.end() == Advance.End.TOUCH && o.share() < share) {
          share = o.share();
          against = other.id();
        }
      }
    }
    return against == null
        ? null
        : new Blocked(stay.piece(), against, share * swept.whole(), swept.whole());
  }

  /** Whether a stay's panel can run into another: not its slit, nor a sheet through its fold. */
  private boolean swings(Solid part, Solid other, Chain chain) {
    boolean host = !other.prism() && chain.oneLine() && chain.lineIn(other);
    return !host && !passages.contains(key(part.panel(), other.panel()));
  }

  /** A stay's turn about the fold that it hangs on. */
  private record Swept(Course course, double whole) {}

  private @Nullable Swept swept(Stay stay) {
    double[] end = stays.released();
    int main = -1;
    for (int j = 0; j < end.length; j++) {
      boolean own = stays.folds(j) && linkage.joint(j).id().startsWith(stay.piece() + "/");
      if (own && (main < 0 || Math.abs(end[j]) > Math.abs(end[main]))) {
        main = j;
      }
    }
    return main < 0 ? null : new Swept(Course.turning(end, main), Math.abs(end[main]));
  }

  /** So near its place what it touches is under it, rad. */
  private static final double RESTS_ON_RAD = 0.35;

  private Swing swing(Door door) {
    int joint = door.joint();
    Joint.Hinge h = door.hinge();
    Solid solid = solids.get(leafOf(h));
    double reach = reach(solid, h);
    Opening whole = opening(joint, h, solid, 1);
    double share = 1;
    while (whole.opens() < Math.PI / 2 && share * reach > 2) {
      share -= 0.5 / reach;
      if (opening(joint, h, solid, share).opens() >= Math.PI / 2) {
        break;
      }
    }
    Leaf leaf = leaf(door);
    return new Swing(
        leaf.door,
        solid.id(),
        whole.opens(),
        whole.against(),
        reach,
        share * reach,
        leaf.passes(whole.opens()),
        leaf.ajar(whole.opens()));
  }

  /** How far a leaf opens, rad, and what stops it. */
  private record Opening(double opens, @Nullable String against) {}

  /** Whether the first panel's body hangs on fewer joints than the second's: it is the leaf. */
  private boolean moves(int leaf, int host) {
    int body = linkage.bodyOf(leaf);
    long at = made.mechanism().joints().stream().filter(j -> touches(j, body)).count();
    int other = linkage.bodyOf(host);
    long beside = made.mechanism().joints().stream().filter(j -> touches(j, other)).count();
    return at < beside;
  }

  private boolean touches(Joint j, int body) {
    return linkage.bodyOf(j.a()) == body || linkage.bodyOf(j.b()) == body;
  }

  private static double reach(Solid leaf, Joint.Hinge h) {
    Vec3 u = h.to().minus(h.from()).unit();
    Vec3 c = h.from();
    return leaf.shell()
        .reach(new double[] {c.x(), c.y(), c.z()}, new double[] {u.x(), u.y(), u.z()});
  }

  private Opening opening(int joint, Joint.Hinge h, Solid leaf, double share) {
    Course course = Course.turning(made.mechanism().joints().size(), joint, Math.PI);
    Advance advance = new Advance(course, 0, false);
    Solid tried = share == 1 ? leaf : Solids.narrowed(leaf, h.from(), h.to(), share);
    double opens = Math.PI;
    String against = null;
    for (Solid other : solids) {
      Chain chain = chains.between(leaf.body(), other.body());
      Chain back = chains.between(other.body(), leaf.body());
      boolean host = !other.prism() && chain != null && chain.oneLine() && chain.lineIn(other);
      if (chain == null || back == null || host) {
        continue;
      }
      Advance.Outcome o = advance.run(tried, other, chain, back, opens / Math.PI);
      if (o.end() == Advance.End.TOUCH && o.share() * Math.PI < opens) {
        opens = o.share() * Math.PI;
        against = other.id();
      }
    }
    return new Opening(opens, against);
  }

  private Way along(Rest rest, Order order) {
    Course course = Course.to(linkage, stays.released(), rest.posed().values(), order);
    Pairs pairs = new Pairs(course);
    List<Touch> touches = new ArrayList<>();
    for (int[] pair : nearestFirst()) {
      goOn.run();
      Touch t = pairs.touch(solids.get(pair[0]), solids.get(pair[1]));
      if (t != null) {
        touches.add(t);
      }
    }
    touches.sort(Comparator.comparing(Touch::kind).reversed().thenComparingDouble(Touch::share));
    return new Way(order, course.whole, touches, List.of());
  }

  /** All pairs that can touch, those with few joints between them first. */
  private List<int[]> nearestFirst() {
    List<List<int[]>> byLength = new ArrayList<>();
    for (int i = 0; i < solids.size(); i++) {
      for (int j = i + 1; j < solids.size(); j++) {
        Chain chain = chains.between(solids.get(i).body(), solids.get(j).body());
        if (chain != null && meet(i, j, chain)) {
          while (byLength.size() <= chain.length()) {
            byLength.add(new ArrayList<>());
          }
          byLength.get(chain.length()).add(new int[] {i, j});
        }
      }
    }
    return byLength.stream().flatMap(List::stream).toList();
  }

  /**
   * Whether a pair is asked about: not a tab and its slit, nor a stay that is put away and what it
   * lies on, nor one that is loose.
   */
  private boolean meet(int i, int j, Chain chain) {
    boolean stay = stays.has(i) || stays.has(j);
    boolean still = stay && chain.only(stays::folds);
    boolean loose = stays.loose(i) || stays.loose(j);
    return !passages.contains(key(i, j)) && !still && !loose;
  }

  /** One course and what is asked along it. */
  private final class Pairs {
    private final Course course;
    private final Advance advance;
    private final Judge judge;

    /**
     * When a layer came down on a part, by panel: layers beyond that one matter until then only.
     */
    private final double[] covered = new double[solids.size()];

    private final int[] coveredBy = new int[solids.size()];

    Pairs(Course course) {
      advance = new Advance(course, clearance, true);
      judge = new Judge(course);
      this.course = course;
      Arrays.fill(covered, 1);
      Arrays.fill(coveredBy, Integer.MAX_VALUE);
    }

    private double until(Solid a, int length) {
      return length > coveredBy[a.panel()] ? covered[a.panel()] : 1;
    }

    private void cover(Solid a, Solid b, int length, Touch t) {
      int part = t.part().equals(a.id()) ? a.panel() : b.panel();
      if (t.kind() == Touch.Kind.RESTS_ON && length <= coveredBy[part]) {
        covered[part] = Math.min(covered[part], t.share());
        coveredBy[part] = length;
      }
    }

    @Nullable Touch touch(Solid a, Solid b) {
      Chain chain = chains.between(a.body(), b.body());
      Chain back = chains.between(b.body(), a.body());
      if (chain == null || back == null) {
        return null;
      }
      boolean line = chain.oneLine();
      if (line && sheetsMeet(a, b, chain)) {
        return null;
      }
      double until = Math.min(until(a, chain.length()), until(b, chain.length()));
      Advance.Outcome o = advance.run(a, b, chain, back, until);
      if (o.end() == Advance.End.UNDECIDED) {
        return judge.close(a, b, o);
      }
      if (o.end() != Advance.End.TOUCH) {
        return null;
      }
      Touch t = judge.of(a, b, chain, line, o);
      if (t != null && t.kind() == Touch.Kind.CROSSES && Glance.only(course, chain, a, b, o)) {
        return null;
      }
      if (t != null) {
        cover(a, b, chain.length(), t);
      }
      return t;
    }

    /** Two sheets through one fold line: their angle is limited by the fold, not by contact. */
    private boolean sheetsMeet(Solid a, Solid b, Chain chain) {
      return !a.prism() && !b.prism() && chain.lineIn(a) && chain.lineIn(b);
    }
  }

  /** Adds what would free each jam, found by trying it on all other parts. */
  private Way advised(Way way, Rest rest) {
    Course course = Course.to(linkage, stays.released(), rest.posed().values(), way.order());
    Remedies remedies = new Remedies(solids, (a, b) -> new Pairs(course).touch(a, b));
    List<Remedy> found = new ArrayList<>();
    way.touches().stream()
        .filter(t -> t.height() > 0 && Remedies.wanted(t))
        .map(Touch::part)
        .distinct()
        .limit(MOST_ADVISED)
        .forEach(part -> remedies.of(part).ifPresent(found::add));
    return new Way(way.order(), way.whole(), way.touches(), found);
  }

  private static final int MOST_ADVISED = 12;
}
