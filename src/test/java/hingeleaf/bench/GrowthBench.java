package hingeleaf.bench;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.fold.accuracy.CuttingStudy;
import hingeleaf.fold.contact.Contact;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.util.Arrays;
import java.util.Locale;

/**
 * How contact on the way and the trials of cutting grow with frames and cut-outs: the table of
 * docs/accuracy.md. Run: {@code java -cp ... hingeleaf.bench.GrowthBench}.
 */
public final class GrowthBench {
  private static final int WARM = 10;
  private static final int RUNS = 15;

  private GrowthBench() {}

  /** Prints the table. */
  public static void main(String[] args) {
    System.out.println("| frames | cut-outs | contact, ms | trials, ms |");
    System.out.println("|---|---|---|---|");
    int[][] rows = {
      {1, 0}, {3, 0}, {6, 0}, {12, 0}, {3, 10}, {3, 40}, {3, 100}, {3, 200}, {12, 40}, {12, 100},
      {12, 200}
    };
    for (int[] row : rows) {
      row(row[0], row[1]); // all of it once, so that the first rows are as warm as the last
    }
    for (int[] row : rows) {
      System.out.println(row(row[0], row[1]));
    }
  }

  private static String row(int frames, int cutOuts) {
    Pack pack = SamplePacks.of(design(frames, cutOuts), BuiltInBench.metric(), 1);
    MadeCard made = pack.made();
    Rest rest = pack.flats().states().get(0);
    double contact = median(() -> Contact.way(made, rest, 0.1));
    double trials = median(() -> CuttingStudy.of(made, rest, 1));
    return String.format(
        Locale.ROOT, "| %d | %d | %.1f | %.1f |", frames, cutOuts, contact, trials);
  }

  private static double median(Runnable what) {
    for (int i = 0; i < WARM; i++) {
      what.run();
    }
    double[] ms = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long from = System.nanoTime();
      what.run();
      ms[i] = (System.nanoTime() - from) / 1e6;
    }
    Arrays.sort(ms);
    return ms[RUNS / 2];
  }

  /** Frames with an opening, and small round cut-outs spread over them and the back. */
  private static String design(int frames, int cutOuts) {
    StringBuilder yaml = new StringBuilder();
    yaml.append("hingeleaf: 1\ntitle: t\nbase:\n  stacked-frames:\n    width: 150\n");
    yaml.append("    height: 150\n    stock: white-300\n    side: 12\n    tab: 10\n    frames:\n");
    for (int i = 0; i < frames; i++) {
      yaml.append("      - {name: f").append(i).append(", aperture: {circle: 90}}\n");
    }
    yaml.append(cutOuts > 0 ? "cut-outs:\n" : "");
    for (int i = 0; i < cutOuts; i++) {
      int on = i % (frames + 1);
      int place = i / (frames + 1);
      double angle = 2 * Math.PI * (place % 26) / 26;
      double out = 52 + 7 * (place / 26);
      yaml.append("  - {name: c")
          .append(i)
          .append(", on: ")
          .append(on == 0 ? "back" : "f" + (on - 1));
      yaml.append(", stock: navy-220, raised-by: 1, outline: {circle: 5}, at: [");
      yaml.append(
          String.format(
              Locale.ROOT, "%.1f, %.1f]}%n", out * Math.cos(angle), out * Math.sin(angle)));
    }
    return yaml.toString();
  }
}
