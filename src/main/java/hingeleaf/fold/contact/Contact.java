package hingeleaf.fold.contact;

import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.fold.Budget;
import hingeleaf.fold.Linkage;
import java.util.ArrayList;
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

  private Contact(MadeCard made, double clearance) {
    this.made = made;
    this.clearance = clearance;
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
    Contact contact = new Contact(made, clearance);
    Way together = contact.along(rest, Order.TOGETHER);
    if (!together.blocked()) {
      return together;
    }
    for (Order order : List.of(Order.FRONT_FIRST, Order.BACK_FIRST)) {
      Way other = contact.along(rest, order);
      if (!other.blocked()) {
        return other;
      }
    }
    return contact.advised(together, rest);
  }

  private Way along(Rest rest, Order order) {
    Course course = Course.to(linkage, rest.posed().values(), order);
    Pairs pairs = new Pairs(course);
    List<Touch> touches = new ArrayList<>();
    for (int i = 0; i < solids.size(); i++) {
      for (int j = i + 1; j < solids.size(); j++) {
        if (!passages.contains(key(i, j))) {
          Touch t = pairs.touch(solids.get(i), solids.get(j));
          if (t != null) {
            touches.add(t);
          }
        }
      }
    }
    touches.sort(Comparator.comparing(Touch::kind).reversed().thenComparingDouble(Touch::share));
    return new Way(order, course.whole, touches, List.of(), pairs.undecided);
  }

  /** One course and what is asked along it. */
  private final class Pairs {
    private final Advance advance;
    private final Judge judge;
    private int undecided;

    Pairs(Course course) {
      advance = new Advance(course, clearance);
      judge = new Judge(course);
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
      Advance.Outcome o = advance.run(a, b, chain, back);
      if (o.end() == Advance.End.UNDECIDED) {
        undecided++;
      }
      return o.end() == Advance.End.TOUCH ? judge.of(a, b, chain, line, o) : null;
    }

    /** Two sheets through one fold line: their angle is limited by the fold, not by contact. */
    private boolean sheetsMeet(Solid a, Solid b, Chain chain) {
      return !a.prism() && !b.prism() && chain.lineIn(a) && chain.lineIn(b);
    }
  }

  /** Adds what would free each jam, found by trying it on all other parts. */
  private Way advised(Way way, Rest rest) {
    Course course = Course.to(linkage, rest.posed().values(), way.order());
    Remedies remedies = new Remedies(solids, new Pairs(course)::touch);
    List<Remedy> found = new ArrayList<>();
    way.touches().stream()
        .filter(t -> t.fault() && t.height() > 0)
        .map(Touch::part)
        .distinct()
        .limit(MOST_ADVISED)
        .forEach(part -> remedies.of(part).ifPresent(found::add));
    return new Way(way.order(), way.whole(), way.touches(), found, way.undecided());
  }

  private static final int MOST_ADVISED = 12;
}
