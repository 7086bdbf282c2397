package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.ToIntFunction;

/**
 * Among plans of equal cost looks for the one that is easier at the trimmer: fewer settings, then a
 * larger single scrap. A few sheets are emptied and laid anew, mostly in one direction, which makes
 * rows and columns of equal pieces.
 */
public final class Tidy {
  private final Task task;
  private final Dice dice;
  private final Inserter inserter;
  private final long[] marks;
  private final ToIntFunction<List<Layout>> settings;
  private List<Layout> best;
  private int bestSettings;
  private long bestScrap;

  private Tidy(Task task, long seed, List<Layout> layouts, ToIntFunction<List<Layout>> settings) {
    this.task = task;
    this.settings = settings;
    dice = new Dice(seed);
    marks = new Pool(task, 0).marks();
    inserter = new Inserter(task, dice, marks);
    best = layouts;
    bestSettings = settings.applyAsInt(layouts);
    bestScrap = largestScrap(layouts);
  }

  /**
   * Improves a complete plan without touching its cost.
   *
   * @param settings counts the trimmer's settings of a plan
   * @param trials how many plans may be looked at
   */
  public static List<Layout> improve(
      Task task,
      long seed,
      List<Layout> layouts,
      ToIntFunction<List<Layout>> settings,
      int trials,
      BooleanSupplier stop) {
    Tidy tidy = new Tidy(task, seed, layouts, settings);
    for (int i = 0; i < trials && !stop.getAsBoolean(); i++) {
      tidy.trial(i);
    }
    return tidy.best;
  }

  private void trial(int number) {
    int n = best.size();
    boolean[] chosen = new boolean[n];
    boolean alike = dice.below(2) == 0;
    int first = dice.below(n);
    int many = number % 4 == 0 ? n : 1 + dice.below(Math.min(n, 4));
    chosen[first] = true;
    for (int i = 1; i < many; i++) {
      chosen[dice.below(n)] = true;
    }
    if (many == n) {
      Arrays.fill(chosen, true);
    }
    List<Layout> next = alike && many < n ? relayAlike(first) : relay(chosen);
    if (!next.isEmpty()) {
      consider(next);
    }
  }

  private void consider(List<Layout> next) {
    int s = settings.applyAsInt(next);
    long scrap = largestScrap(next);
    if (s < bestSettings || (s == bestSettings && scrap >= bestScrap)) {
      best = next;
      bestSettings = s;
      bestScrap = scrap;
    }
  }

  /** Lays one sheet anew and gives all sheets of the same content the same cuts. */
  private List<Layout> relayAlike(int which) {
    int[] content = new int[task.types];
    best.get(which).count(content);
    boolean[] one = new boolean[best.size()];
    one[which] = true;
    List<Layout> next = new ArrayList<>(dice.below(3) == 0 ? best : relay(one));
    for (int b = 0; b < next.size(); b++) {
      int[] other = new int[task.types];
      next.get(b).count(other);
      if (best.get(b).stock() == best.get(which).stock() && Arrays.equals(content, other)) {
        next.set(b, next.get(which));
      }
    }
    return next;
  }

  /** Lays the chosen sheets anew; empty when not everything found room. */
  private List<Layout> relay(boolean[] chosen) {
    Loose loose = new Loose(task.count, marks);
    List<Integer> places = new ArrayList<>();
    List<Bin> bins = new ArrayList<>();
    int[] content = new int[task.types];
    for (int b = 0; b < chosen.length; b++) {
      if (chosen[b]) {
        Bin bin = new Bin(64);
        bin.reset(task, best.get(b).stock());
        bins.add(bin);
        places.add(b);
        best.get(b).count(content);
      }
    }
    for (int t = 0; t < content.length; t++) {
      for (int i = 0; i < content[t]; i++) {
        loose.add(t);
      }
    }
    inserter.sortByType(loose, dice.below(Inserter.ORDERS));
    inserter.lean(dice.below(3) - 1);
    boolean all = lay(loose, bins);
    inserter.lean(0);
    if (!all) {
      return List.of();
    }
    List<Layout> next = new ArrayList<>(best);
    for (int k = 0; k < bins.size(); k++) {
      next.set(places.get(k), bins.get(k).layout(task));
    }
    return next;
  }

  private boolean lay(Loose loose, List<Bin> bins) {
    boolean firstFit = dice.below(2) == 0;
    for (int i = 0; i < loose.count; i++) {
      inserter.begin(loose.types[i]);
      for (int b = 0; b < bins.size() && !(firstFit && inserter.found()); b++) {
        inserter.consider(bins.get(b), b);
      }
      if (!inserter.found()) {
        return false;
      }
      inserter.commit(bins.get(inserter.bin()));
    }
    return true;
  }

  private static long largestScrap(List<Layout> layouts) {
    long largest = 0;
    for (Layout layout : layouts) {
      largest = Math.max(largest, largestScrap(layout.root()));
    }
    return largest;
  }

  private static long largestScrap(Part part) {
    if (part instanceof Part.Free) {
      return (long) part.w() * part.h();
    }
    long largest = 0;
    if (part instanceof Part.Split split) {
      for (Part p : split.parts()) {
        largest = Math.max(largest, largestScrap(p));
      }
    }
    return largest;
  }
}
