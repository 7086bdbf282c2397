package hingeleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A step before it has a number: a node of the graph of what must come before what.
 *
 * @param id unique in the graph
 * @param step without number and predecessors
 * @param needs ids of the tasks that must come first; unknown ids are an error
 */
record Task(String id, Step step, Set<String> needs) {
  /** More free steps than these are not listed: nobody does more while one glue line dries. */
  private static final int MOST_MEANWHILE = 4;

  Task {
    needs = new LinkedHashSet<>(needs);
  }

  /**
   * Numbers the tasks so that each comes after all that it needs. Among those that could come next
   * the earliest given is taken, so the order given is kept wherever it may be.
   *
   * @throws IllegalArgumentException if tasks need each other in a circle, or one needs what is not
   *     there
   */
  static List<Step> order(List<Task> tasks) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    List<Task> open = new ArrayList<>(tasks);
    List<Task> placed = new ArrayList<>();
    while (!open.isEmpty()) {
      Task next =
          open.stream()
              .filter(t -> numbers.keySet().containsAll(t.needs))
              .findFirst()
              .orElseThrow(
                  () -> new IllegalArgumentException("no task can come next of " + ids(open)));
      open.removeIf(t -> t == next);
      placed.add(next);
      numbers.put(next.id, placed.size());
    }
    List<List<Integer>> after = new ArrayList<>();
    for (Task t : placed) {
      after.add(t.needs.stream().map(numbers::get).sorted().toList());
    }
    return numbered(placed, after);
  }

  private static List<Step> numbered(List<Task> placed, List<List<Integer>> after) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      Step step = placed.get(i).step;
      List<Integer> free = step.dries() > 0 ? meanwhile(i + 1, after) : List.of();
      steps.add(step.placed(i + 1, after.get(i), free));
    }
    return List.copyOf(steps);
  }

  /** Later steps that hang neither on a step nor on anything that does. */
  private static List<Integer> meanwhile(int number, List<List<Integer>> after) {
    Set<Integer> waiting = new LinkedHashSet<>(Set.of(number));
    List<Integer> free = new ArrayList<>();
    for (int later = number + 1; later <= after.size(); later++) {
      boolean waits = after.get(later - 1).stream().anyMatch(waiting::contains);
      if (waits) {
        waiting.add(later);
      } else if (free.size() < MOST_MEANWHILE && ready(later, number, free, after)) {
        free.add(later);
      }
    }
    return free;
  }

  /** Whether all that a later step needs is done by then, or is free as well. */
  private static boolean ready(
      int later, int number, List<Integer> free, List<List<Integer>> after) {
    return after.get(later - 1).stream().allMatch(n -> n < number || free.contains(n));
  }

  private static List<String> ids(List<Task> tasks) {
    return tasks.stream().map(Task::id).toList();
  }
}
