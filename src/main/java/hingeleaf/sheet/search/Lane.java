package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Task;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * One searcher: a state that is ruined and recreated. The target is a cost; pieces that find no
 * room within it stay loose, and the area of the loose pieces is what is brought down, with late
 * acceptance (Burke and Bykov, EJOR 258 (2017) 70-78).
 */
final class Lane {
  private static final int WIDE = 3;
  private final Task task;
  private final Dice dice;
  private final Inserter inserter;
  private final Pool pool;
  private final Pricer pricer;
  private final double[] history;
  private final ArrayDeque<Bin> spare = new ArrayDeque<>();
  private final List<Bin> fresh = new ArrayList<>();
  private final List<Bin> replaced = new ArrayList<>();
  private final Loose savedLoose;
  private final Loose loose;
  private Bin[] bins;
  private Bin[] savedBins;
  private int count;
  private int savedCount;
  private int[] open;
  private int[] savedOpen;
  private long cost;
  private long savedCost;
  private long target = Long.MAX_VALUE;
  private double lack;
  private long step;
  private long since;
  private List<Layout> best = List.of();
  private long bestCost = Long.MAX_VALUE;

  Lane(Task task, long seed, Pool pool) {
    this.task = task;
    this.pool = pool;
    dice = new Dice(seed);
    long[] marks = pool.marks();
    inserter = new Inserter(task, dice, marks);
    pricer = new Pricer(task, dice, inserter, pool);
    history = new double[task.count > 400 ? 200 : 1000];
    loose = new Loose(task.count, marks);
    savedLoose = new Loose(task.count, marks);
    bins = new Bin[16];
    savedBins = new Bin[16];
    open = new int[task.stocks];
    savedOpen = new int[task.stocks];
    for (int t = 0; t < task.types; t++) {
      for (int i = 0; i < task.demand[t]; i++) {
        loose.add(t);
      }
    }
    lack = looseArea();
  }

  long bestCost() {
    return bestCost;
  }

  List<Layout> best() {
    return best;
  }

  double lack() {
    return lack;
  }

  /** Lays everything greedily, from nothing, without regard to the cost. */
  void construct(int order) {
    target = Long.MAX_VALUE;
    for (int b = 0; b < count; b++) {
      bins[b].remove(0, loose);
    }
    count = 0;
    cost = 0;
    Arrays.fill(open, 0);
    step++;
    inserter.sort(loose, order);
    recreate();
    lack = looseArea();
    Arrays.fill(history, lack);
    fresh.clear();
    replaced.clear();
    keepIfComplete();
  }

  /** Runs so many steps, or until the best possible cost is reached. */
  void run(int steps, long lowerBound, BooleanSupplier stop) {
    for (int i = 0; i < steps && bestCost > lowerBound; i++) {
      step();
      if ((i & 63) == 0 && stop.getAsBoolean()) {
        return;
      }
    }
  }

  /** Takes another's plan as its own state and aims below it. */
  void adopt(List<Layout> layouts, long layoutsCost) {
    best = layouts;
    bestCost = layoutsCost;
    step++;
    loose.count = 0;
    count = 0;
    cost = 0;
    Arrays.fill(open, 0);
    for (Layout layout : layouts) {
      openBin(layout.stock());
      bins[count - 1].load(layout.root(), pool.marks());
    }
    aimBelow(bestCost - task.costStep());
  }

  /** Lowers the target below its best plan by taking sheets away. */
  void aimBelow(long newTarget) {
    target = newTarget;
    step++;
    for (int b = leastUsed(); cost > target && b >= 0; b = leastUsed()) {
      close(b);
    }
    lack = looseArea();
    Arrays.fill(history, lack);
    since = 0;
    fresh.clear();
    replaced.clear();
  }

  private int leastUsed() {
    int worst = -1;
    double least = Double.MAX_VALUE;
    for (int b = 0; b < count; b++) {
      long price = task.price[bins[b].stock];
      double worth = bins[b].used * (1 + 0.1 * dice.unit()) / price;
      if (price > 0 && worth < least) {
        least = worth;
        worst = b;
      }
    }
    return worst;
  }

  private void close(int b) {
    Bin bin = writable(b);
    if (!bin.isEmpty()) {
      bin.remove(0, loose);
    }
    cost -= task.price[bin.stock];
    open[bin.stock]--;
    bins[b] = bins[--count];
  }

  private void step() {
    save();
    ruin();
    inserter.sort(loose, dice.below(Inserter.ORDERS));
    recreate();
    double now = looseArea();
    int slot = (int) (step % history.length);
    boolean accept = now <= lack || now <= history[slot];
    if (accept) {
      accept(now);
    } else {
      restore();
    }
    if (lack < history[slot]) {
      history[slot] = lack;
    }
    if (lack == 0) {
      keepIfComplete();
    }
  }

  /** Looks for sheets that are worth more than they cost, and puts them into the pool. */
  void price(double[] worths, double[] costs, int steps, BooleanSupplier stop) {
    pricer.run(worths, costs, steps, stop);
  }

  private void save() {
    step++;
    since++;
    if (savedBins.length < bins.length) {
      savedBins = new Bin[bins.length];
    }
    System.arraycopy(bins, 0, savedBins, 0, count);
    System.arraycopy(open, 0, savedOpen, 0, open.length);
    savedCount = count;
    savedCost = cost;
    savedLoose.copyFrom(loose);
  }

  private void restore() {
    Bin[] keep = bins;
    if (keep.length > savedBins.length) {
      System.arraycopy(savedBins, 0, keep, 0, savedCount);
    } else {
      bins = savedBins;
      savedBins = keep;
    }
    int[] keepOpen = open;
    open = savedOpen;
    savedOpen = keepOpen;
    count = savedCount;
    cost = savedCost;
    loose.copyFrom(savedLoose);
    spare.addAll(fresh);
    fresh.clear();
    replaced.clear();
  }

  private void accept(double now) {
    lack = now;
    for (Bin bin : fresh) {
      if (!bin.isEmpty()) {
        pool.offer(bin);
      }
    }
    spare.addAll(replaced);
    fresh.clear();
    replaced.clear();
  }

  private void keepIfComplete() {
    if (loose.count > 0 || cost >= bestCost) {
      return;
    }
    best = layouts();
    bestCost = cost;
    for (int b = 0; b < count; b++) {
      pool.offer(bins[b]);
    }
    aimBelow(bestCost - task.costStep());
  }

  private List<Layout> layouts() {
    List<Layout> result = new ArrayList<>();
    for (int b = 0; b < count; b++) {
      result.add(bins[b].layout(task));
    }
    return List.copyOf(result);
  }

  private void ruin() {
    if (count == 0) {
      return;
    }
    int nodes = 1 + dice.below(Math.min(10, 2 + task.count / 4));
    boolean near = dice.below(10) < 4;
    int bin = dice.below(count);
    for (int i = 0; i < nodes && count > 0; i++) {
      if (!near || i % 4 == 3 || bin >= count) {
        bin = dice.below(count);
      }
      ruinIn(bin);
    }
  }

  private void ruinIn(int b) {
    Bin bin = writable(b);
    int node = dice.below(bin.size);
    for (int tries = 0; !bin.isRemovable(node); tries++) {
      node = tries < 20 ? dice.below(bin.size) : (node + 1) % bin.size;
    }
    if (bin.isRoot(node) && dice.below(4) != 0) {
      return;
    }
    bin.remove(node, loose);
    if (bin.isEmpty()) {
      close(b);
    }
  }

  private Bin writable(int b) {
    Bin bin = bins[b];
    if (bin.stamp == step) {
      return bin;
    }
    Bin copy = obtain(bin.size + 8);
    copy.copyFrom(bin);
    copy.stamp = step;
    fresh.add(copy);
    replaced.add(bin);
    bins[b] = copy;
    return copy;
  }

  private Bin obtain(int capacity) {
    Bin bin = spare.pollLast();
    return bin == null ? new Bin(Math.max(32, capacity)) : bin;
  }

  private void recreate() {
    int kept = 0;
    int failed = -1;
    for (int i = 0; i < loose.count; i++) {
      int type = loose.types[i];
      if (dice.below(100) < WIDE && i + 1 < loose.count && placeWide(type, i)) {
        continue;
      }
      if (type == failed || !place(type)) {
        failed = type;
        loose.types[kept++] = type;
      }
    }
    loose.count = kept;
  }

  /** Lays a piece so that one of the others to come may lie beside it in the same strip. */
  private boolean placeWide(int type, int at) {
    if (inserter.limits) {
      return false;
    }
    int other = loose.types[at + 1 + dice.below(loose.count - at - 1)];
    inserter.beginWide(type, dice.below(2) == 0 ? task.w[other] : task.h[other]);
    for (int b = 0; b < count; b++) {
      inserter.consider(bins[b], b);
    }
    if (!inserter.found()) {
      return false;
    }
    inserter.commit(writable(inserter.bin()));
    return true;
  }

  private boolean place(int type) {
    inserter.begin(type);
    for (int b = 0; b < count; b++) {
      inserter.consider(bins[b], b);
    }
    if (inserter.found()) {
      inserter.commit(writable(inserter.bin()));
      return true;
    }
    int stock = chooseStock(type);
    if (stock < 0) {
      return false;
    }
    openBin(stock);
    inserter.begin(type);
    inserter.considerSurely(bins[count - 1], count - 1);
    inserter.commit(bins[count - 1]);
    return true;
  }

  private int chooseStock(int type) {
    int chosen = -1;
    double least = Double.MAX_VALUE;
    for (int s = 0; s < task.stocks; s++) {
      boolean affordable = cost + task.price[s] <= target && open[s] < task.limit[s];
      if (affordable && task.fits(s, type) && inserter.cuttable(s, type)) {
        double key =
            task.price[s] == 0
                ? -1.0 / task.sheetArea(s)
                : task.price[s] / (double) task.sheetArea(s) * (0.6 + dice.unit());
        if (key < least) {
          least = key;
          chosen = s;
        }
      }
    }
    return chosen;
  }

  private void openBin(int stock) {
    Bin bin = obtain(32);
    bin.reset(task, stock);
    bin.stamp = step;
    fresh.add(bin);
    if (count == bins.length) {
      bins = Arrays.copyOf(bins, count * 2);
    }
    bins[count++] = bin;
    open[stock]++;
    cost += task.price[stock];
  }

  private double looseArea() {
    double sum = 0;
    for (int i = 0; i < loose.count; i++) {
      sum += task.area(loose.types[i]);
    }
    return sum;
  }
}
