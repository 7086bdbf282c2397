package hingeleaf.sheet.task;

import java.util.List;

/** One sheet of a stock and how it is cut. */
public record Layout(int stock, Part root) {

  /** Adds what lies on this sheet to {@code sums}, indexed by type. */
  public void count(int[] sums) {
    count(root, sums);
  }

  private static void count(Part part, int[] sums) {
    if (part instanceof Part.Laid laid) {
      sums[laid.type()]++;
    } else if (part instanceof Part.Split split) {
      split.parts().forEach(p -> count(p, sums));
    }
  }

  /** What the sheets cost together. */
  public static long cost(Task task, List<Layout> layouts) {
    return layouts.stream().mapToLong(l -> task.price[l.stock()]).sum();
  }
}
