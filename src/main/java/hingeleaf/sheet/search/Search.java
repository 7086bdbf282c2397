package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Several lanes side by side in synchronised rounds: what comes of a round depends on seed and
 * steps alone, not on how the threads were scheduled, unless the stop signal falls into it.
 */
public final class Search implements AutoCloseable {
  private static final int LANES = 2;
  private static final int PRICINGS = 8;
  private static final int PRICING_STEPS = 1_500;
  private final Task task;
  private final List<Lane> lanes = new ArrayList<>();
  private final List<Pool> pools = new ArrayList<>();
  private final ExecutorService threads;
  private List<Layout> best = List.of();
  private @Nullable Recombination recombination;
  private long bestCost = Long.MAX_VALUE;

  /**
   * @param threads how many threads to use; the result does not depend on it
   */
  public Search(Task task, long seed, int threads) {
    this.task = task;
    for (int l = 0; l < LANES; l++) {
      Pool pool = new Pool(task, task.count > 2000 ? 0 : 60_000);
      pools.add(pool);
      lanes.add(new Lane(task, seed * LANES + l, pool));
    }
    this.threads = Executors.newFixedThreadPool(Math.max(1, Math.min(LANES, threads)));
  }

  /** Lays everything greedily in several orders; may fail when the stock is short. */
  public void construct(BooleanSupplier stop) {
    int orders = task.count > 3000 ? 1 : Inserter.ORDERS;
    for (int order = 0; order < orders && !(stop.getAsBoolean() && order > 0); order++) {
      lanes.get(0).construct(order);
      take();
    }
    for (Lane lane : lanes) {
      if (complete()) {
        lane.adopt(best, bestCost);
      }
    }
  }

  private void each(Consumer<Lane> work) {
    List<Future<?>> running = new ArrayList<>();
    for (Lane lane : lanes) {
      running.add(threads.submit(() -> work.accept(lane)));
    }
    for (Future<?> f : running) {
      try {
        f.get();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      } catch (ExecutionException e) {
        throw new IllegalStateException("a search lane failed", e.getCause());
      }
    }
  }

  /** One round of so many steps in each lane. */
  public void round(int steps, long lowerBound, BooleanSupplier stop) {
    each(lane -> lane.run(steps, lowerBound, stop));
    take();
    share();
  }

  /**
   * Tries to cover the demand more cheaply with sheets seen so far, and looks for sheets that would
   * help at the prices of the program over them.
   */
  public void recombine(int mostNodes, BooleanSupplier stop) {
    if (!complete() || task.types > 400 || task.count > 2000) {
      return;
    }
    long target = bestCost - task.costStep();
    Recombination r = recombination == null ? new Recombination(task, pools, stop) : recombination;
    recombination = r;
    boolean priced = r.price();
    for (int i = 0; i < PRICINGS && priced; i++) {
      double[] worths = r.worths();
      double[] costs = r.sheetCosts();
      int before = pools.stream().mapToInt(Pool::size).sum();
      each(lane -> lane.price(worths, costs, PRICING_STEPS, stop));
      if (pools.stream().mapToInt(Pool::size).sum() == before || stop.getAsBoolean()) {
        break;
      }
      priced = r.price();
    }
    List<Layout> found = priced ? r.cover(target, mostNodes) : List.of();
    if (!found.isEmpty()) {
      offer(found);
    }
  }

  /** A plan found elsewhere. */
  public void offer(List<Layout> layouts) {
    long cost = Layout.cost(task, layouts);
    if (cost < bestCost) {
      best = layouts;
      bestCost = cost;
      share();
    }
  }

  private void take() {
    for (Lane lane : lanes) {
      if (lane.bestCost() < bestCost) {
        bestCost = lane.bestCost();
        best = lane.best();
      }
    }
  }

  private void share() {
    for (Lane lane : lanes) {
      if (lane.bestCost() > bestCost) {
        lane.adopt(best, bestCost);
      }
    }
  }

  /** Whether some plan lays everything. */
  public boolean complete() {
    return bestCost < Long.MAX_VALUE;
  }

  /** The best plan; empty before there is one. */
  public List<Layout> best() {
    return best;
  }

  /** What the best plan costs. */
  public long bestCost() {
    return bestCost;
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
