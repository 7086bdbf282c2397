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
 * @param step with number 0 and no predecessors
 * @param needs ids of the tasks that must come first; unknown ids are an error
 */
record Task(String id, Step step, Set<String> needs) {
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
    List<Step> steps = new ArrayList<>();
    while (!open.isEmpty()) {
      Task next =
          open.stream()
              .filter(t -> numbers.keySet().containsAll(t.needs))
              .findFirst()
              .orElseThrow(
                  () -> new IllegalArgumentException("no task can come next of " + ids(open)));
      open.remove(next);
      numbers.put(next.id, numbers.size() + 1);
      List<Integer> after = next.needs.stream().map(numbers::get).sorted().toList();
      steps.add(numbered(next.step, numbers.size(), after));
    }
    return List.copyOf(steps);
  }

  private static List<String> ids(List<Task> tasks) {
    return tasks.stream().map(Task::id).toList();
  }

  private static Step numbered(Step s, int number, List<Integer> after) {
    return new Step(
        number,
        s.kind(),
        s.pieces(),
        s.title(),
        s.text(),
        s.check(),
        s.tools(),
        s.hands(),
        s.dries(),
        after,
        s.joins());
  }
}
