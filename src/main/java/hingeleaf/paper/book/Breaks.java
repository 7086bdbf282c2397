package hingeleaf.paper.book;

import java.util.ArrayList;
import java.util.List;

/**
 * Where pages end: as few pages as can be, and of those ways the one that leaves no page much
 * emptier than the others and tears the least apart (after Knuth and Plass, Breaking paragraphs
 * into lines, Software: Practice and Experience 11, 1981, with pages for lines).
 */
final class Breaks {
  /** A page more is worse than any emptiness. */
  private static final double PAGE = 100;

  /** The last page before a chapter that starts a page may well be short. */
  private static final double LAST = 0.3;

  /** Tearing lines of one block apart is as bad as a third of an empty page. */
  private static final double TORN = 0.11;

  /** Tearing paragraphs apart that belong together is as bad as a sixth of one. */
  private static final double PARTED = 0.03;

  /** Slabs with this much room above begin something new: a step, a heading, mm. */
  private static final double NEW_MM = 4.5;

  /** Paragraphs have this much room above, mm. */
  private static final double PARAGRAPH_MM = 2;

  /** So much room is added between two steps at most, mm: more looks like a gap. */
  private static final double MOST_MORE_MM = 6;

  private final List<List<Slab>> groups;
  private final double height;

  private Breaks(List<List<Slab>> groups, double height) {
    this.groups = groups;
    this.height = height;
  }

  /** The slabs of each page; none for no slabs. */
  static List<List<Slab>> pages(List<Slab> slabs, double height) {
    List<List<Slab>> pages = new ArrayList<>();
    List<Slab> section = new ArrayList<>();
    for (Slab s : slabs) {
      if (s.breaks()) {
        pages.addAll(section(section, height));
        section.clear();
      } else {
        section.add(s);
      }
    }
    pages.addAll(section(section, height));
    return pages;
  }

  private static List<List<Slab>> section(List<Slab> slabs, double height) {
    List<List<Slab>> groups = new ArrayList<>();
    for (int i = 0; i < slabs.size(); ) {
      int end = i + 1;
      while (end < slabs.size() && slabs.get(end - 1).stays()) {
        end++;
      }
      List<Slab> group = List.copyOf(slabs.subList(i, end));
      if (tall(group) - group.get(0).before() <= height) {
        groups.add(group);
      } else {
        group.forEach(s -> groups.add(List.of(s)));
      }
      i = end;
    }
    return new Breaks(groups, height).best();
  }

  private static double tall(List<Slab> group) {
    return group.stream().mapToDouble(s -> s.before() + s.height()).sum();
  }

  /** From the end backwards: the cheapest way to set what is left, for each place to begin. */
  private List<List<Slab>> best() {
    int n = groups.size();
    double[] cost = new double[n + 1];
    int[] next = new int[n + 1];
    for (int i = n - 1; i >= 0; i--) {
      cost[i] = Double.POSITIVE_INFINITY;
      double used = head(i);
      for (int j = i + 1; j <= n; j++) {
        List<Slab> group = groups.get(j - 1);
        used += tall(group) - (j == i + 1 && used == 0 ? group.get(0).before() : 0);
        if (j > i + 1 && used > height + 1e-6) {
          break;
        }
        double all = page(used, j) + cost[j];
        if (all < cost[i]) {
          cost[i] = all;
          next[i] = j;
        }
      }
    }
    List<List<Slab>> pages = new ArrayList<>();
    for (int i = 0; i < n; i = next[i]) {
      List<Slab> page = new ArrayList<>();
      groups.subList(i, next[i]).forEach(page::addAll);
      pages.add(next[i] < n ? spread(page, height - head(i)) : page);
    }
    return pages;
  }

  /** Some of the room that is left at the foot goes between what begins something new. */
  private static List<Slab> spread(List<Slab> page, double height) {
    long gaps = page.stream().skip(1).filter(Breaks::opens).count();
    double left = height - tall(page) + page.get(0).before();
    if (gaps == 0 || left <= 0) {
      return page;
    }
    double more = Math.min(MOST_MORE_MM, left / gaps);
    List<Slab> wide = new ArrayList<>(page.subList(0, 1));
    for (Slab s : page.subList(1, page.size())) {
      wide.add(opens(s) ? s.after(s.before() + more) : s);
    }
    return wide;
  }

  private static boolean opens(Slab s) {
    return s.before() >= NEW_MM;
  }

  /** What is set again above a group that begins a page. */
  private double head(int group) {
    return groups.get(group).get(0).head().stream().mapToDouble(Slab::height).sum();
  }

  private double page(double used, int end) {
    double empty = Math.max(0, 1 - used / height);
    boolean last = end == groups.size();
    return PAGE + (last ? LAST : 1) * empty * empty + (last ? 0 : torn(groups.get(end).get(0)));
  }

  private static double torn(Slab first) {
    return opens(first) ? 0 : first.before() >= PARAGRAPH_MM ? PARTED : TORN;
  }
}
