package hingeleaf.cli;

import hingeleaf.sheet.Grain;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPiece;
import hingeleaf.sheet.SheetStock;
import hingeleaf.sheet.Trimmer;
import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs the sheet planner over a file of classic bin-packing instances, one JSON object a line. */
@Command(
    name = "sheets-benchmark",
    hidden = true,
    description = "Measure the sheet planner on a file of classic instances.",
    mixinStandardHelpOptions = true)
public final class SheetsBenchmarkCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(paramLabel = "FILE", description = "instances, one JSON object a line")
  @Nullable Path file;

  @Option(names = "--seconds", description = "search time an instance (default: 10)")
  double seconds = 10;

  @Option(names = "--rotate", description = "let the pieces be turned")
  boolean rotate;

  @Option(names = "--classes", split = ",", description = "only these classes, such as 1,3,7")
  List<Integer> classes = List.of();

  @Option(names = "--jobs", description = "instances at a time (default: 1)")
  int jobs = 1;

  @Option(names = "--threads", description = "threads an instance (default: 2)")
  int threads = 2;

  @Option(names = "--each", description = "tell every instance on stderr")
  boolean each;

  public SheetsBenchmarkCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  private record Row(
      int set, int n, long ours, long bound, long reference, long lower, double took) {}

  @Override
  public Integer call() throws InterruptedException {
    List<JsonNode> instances = new ArrayList<>();
    Path path = java.util.Objects.requireNonNull(file);
    try {
      JsonMapper mapper = JsonMapper.builder().build();
      for (String line : Files.readAllLines(path)) {
        JsonNode node = mapper.readTree(line);
        if (classes.isEmpty() || classes.contains(number(node, 6))) {
          instances.add(node);
        }
      }
    } catch (IOException e) {
      err.println(path + ": cannot be read");
      return Exit.FILES;
    } catch (JacksonException e) {
      err.println(path + ": this is not one JSON object a line: " + e.getOriginalMessage());
      return Exit.CONTENT;
    }
    print(measure(instances));
    return Exit.FINE;
  }

  private List<Row> measure(List<JsonNode> instances) throws InterruptedException {
    ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, jobs));
    try {
      List<Callable<Row>> tasks = new ArrayList<>();
      instances.forEach(node -> tasks.add(() -> solve(node)));
      List<Row> rows = new ArrayList<>();
      for (Future<Row> f : pool.invokeAll(tasks)) {
        rows.add(f.get());
      }
      return rows;
    } catch (ExecutionException e) {
      throw new IllegalStateException("an instance failed", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  /** The number after the class or count in a name such as Class_01.2bp_20_1. */
  private static int number(JsonNode node, int at) {
    String name = node.get("name").asString();
    return at == 6 ? Integer.parseInt(name.substring(6, 8)) : Integer.parseInt(name.split("_")[2]);
  }

  private Row solve(JsonNode node) {
    SheetStock stock =
        new SheetStock(
            "bin",
            node.get("bin").get(0).asLong() * 1_000_000,
            node.get("bin").get(1).asLong() * 1_000_000,
            1_000_000,
            OptionalLong.empty(),
            Grain.ANY);
    List<SheetPiece> pieces = new ArrayList<>();
    for (JsonNode item : node.get("items")) {
      pieces.add(
          new SheetPiece(
              "item " + (pieces.size() + 1),
              item.get(0).asLong() * 1_000_000,
              item.get(1).asLong() * 1_000_000,
              1,
              rotate,
              Grain.ANY));
    }
    SheetJob job = new SheetJob(JobUnit.MM, List.of(stock), pieces, Trimmer.UNSAID);
    long begin = System.nanoTime();
    long end = begin + (long) (seconds * 1e9);
    Outcome outcome =
        SheetPlanner.plan(
            job,
            new Effort(1, Long.MAX_VALUE / 4, threads),
            () -> System.nanoTime() > end,
            p -> {});
    double took = (System.nanoTime() - begin) * 1e-9;
    if (!(outcome instanceof Outcome.Planned planned)) {
      throw new IllegalStateException("no plan");
    }
    String way = rotate ? "rotated" : "oriented";
    Row row =
        new Row(
            number(node, 6),
            number(node, 0),
            planned.plan().cost() / 1_000_000,
            planned.plan().lowerBound() / 1_000_000,
            node.get("best3stage").get(way).asLong(),
            node.get("lower").get(way).asLong(),
            took);
    if (each) {
      err.println(node.get("name").asString() + " " + row + " " + planned.plan().bound());
    }
    return row;
  }

  private void print(List<Row> rows) {
    out.println("class     n   ours   our bound   best 3-stage   known bound   seconds   unproven");
    TreeMap<Integer, List<Row>> groups = new TreeMap<>();
    for (Row row : rows) {
      groups.computeIfAbsent(row.set * 1000 + row.n, k -> new ArrayList<>()).add(row);
      groups.computeIfAbsent(row.set * 1000 + 999, k -> new ArrayList<>()).add(row);
    }
    groups.forEach(
        (key, list) ->
            line(String.valueOf(key / 1000), key % 1000 == 999 ? "all" : "" + key % 1000, list));
    line("all", "all", rows);
  }

  private void line(String set, String n, List<Row> rows) {
    out.printf(
        Locale.ROOT,
        "%5s %5s %6d %11d %14d %13d %9.2f %10d%n",
        set,
        n,
        rows.stream().mapToLong(Row::ours).sum(),
        rows.stream().mapToLong(Row::bound).sum(),
        rows.stream().mapToLong(Row::reference).sum(),
        rows.stream().mapToLong(Row::lower).sum(),
        rows.stream().mapToDouble(Row::took).average().orElse(0),
        rows.stream().filter(r -> r.ours > r.bound).count());
  }
}
