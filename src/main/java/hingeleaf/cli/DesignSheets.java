package hingeleaf.cli;

import hingeleaf.finding.Problem;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SizeSweep;
import hingeleaf.paper.SheetJson;
import hingeleaf.paper.figure.StepPlot;
import hingeleaf.plan.SheetOrder;
import hingeleaf.plan.SheetWork;
import hingeleaf.sheet.JobUnit;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Sheets for whole designs: a batch of them, or how one size changes what they need. */
final class DesignSheets {
  private final Common common;
  private final List<Named> named;
  private final boolean dropOuts;
  private final boolean json;
  private final PrintStream out;
  private final PrintStream err;

  /**
   * A design and how many of it.
   *
   * @param copies 0 where the name did not say
   */
  record Named(Path file, int copies) {}

  DesignSheets(
      Common common,
      List<Named> named,
      boolean dropOuts,
      boolean json,
      PrintStream out,
      PrintStream err) {
    this.common = common;
    this.named = named;
    this.dropOuts = dropOuts;
    this.json = json;
    this.out = out;
    this.err = err;
  }

  /** Plans every paper of the batch and prints what to cut. */
  int plan(SheetSearch search) {
    List<SheetOrder.Batch> batches = new ArrayList<>();
    List<Pack> packs = new ArrayList<>();
    for (Named n : named) {
      Pack pack = load(n.file());
      packs.add(pack);
      int copies = n.copies() > 0 ? n.copies() : pack.inputs().wants().copies();
      batches.add(new SheetOrder.Batch(pack.title(), pack.cuts(), copies));
    }
    Pack first = packs.get(0);
    List<SheetOrder> orders = SheetOrder.of(batches, first.inputs().bench(), unit(first), dropOuts);
    List<SheetWork> work = new ArrayList<>();
    double took = 0;
    for (SheetOrder order : orders) {
      err.println(order.stock().title());
      SheetSearch.Found found = search.plan(order.job());
      took += found.seconds();
      work.add(SheetWork.of(order, found.outcome()));
    }
    print(work, batches, took);
    return work.stream().allMatch(w -> w.plan().isPresent()) ? Exit.FINE : Exit.CONTENT;
  }

  private Pack load(Path file) {
    Common.Loaded loaded = common.load(file, false);
    Pack pack = loaded.pack();
    List<Problem> problems = pack == null ? loaded.problems() : pack.problems();
    if (pack == null || pack.blocked()) {
      throw new DoorException(Exit.CONTENT, Telling.lines(problems).stripTrailing());
    }
    return pack;
  }

  private static JobUnit unit(Pack pack) {
    Unit unit = pack.inputs().wants().units().unit();
    return unit == Unit.IN ? JobUnit.IN : unit == Unit.CM ? JobUnit.CM : JobUnit.MM;
  }

  private void print(List<SheetWork> work, List<SheetOrder.Batch> batches, double took) {
    if (json) {
      StringBuilder all = new StringBuilder("{\"papers\":[");
      for (int i = 0; i < work.size(); i++) {
        SheetWork w = work.get(i);
        all.append(i == 0 ? "" : ",").append("{\"stock\":\"").append(w.order().stock().name());
        all.append("\",\"plan\":");
        all.append(
            w.plan().map(p -> SheetJson.write(w.order().job(), p, took).strip()).orElse("null"));
        all.append('}');
      }
      out.println(all.append("]}"));
    } else {
      work.forEach(this::tell);
      total(work, batches);
    }
    out.flush();
  }

  private void tell(SheetWork w) {
    out.println(w.order().stock().title());
    w.plan().ifPresent(p -> out.println(CuttingList.write(w.order().job(), p)));
    w.why().forEach(s -> out.println("  " + s));
    if (!w.order().priced()) {
      out.println("  (the bench tells no price for this paper: its cost is told in mm2 of sheet)");
    }
    out.println();
  }

  private void total(List<SheetWork> work, List<SheetOrder.Batch> batches) {
    int cards = batches.stream().mapToInt(SheetOrder.Batch::copies).sum();
    int sheets = work.stream().mapToInt(SheetWork::sheets).sum();
    String money = "";
    if (work.stream().allMatch(w -> w.order().priced())) {
      double cost = work.stream().mapToDouble(SheetWork::cost).sum();
      money = String.format(Locale.ROOT, ", cost %.2f, %.2f a card", cost, cost / cards);
    }
    out.println(
        cards
            + (cards == 1 ? " card: " : " cards: ")
            + sheets
            + (sheets == 1 ? " sheet" : " sheets")
            + money
            + ".");
  }

  /** Tells how the sheets step as one size goes through a range. */
  int vary(String size, String range, @Nullable Path plot) {
    if (named.size() != 1) {
      throw new DoorException(Exit.USAGE, "--vary takes one design");
    }
    Pack pack = load(named.get(0).file());
    SizeSweep.Outcome outcome = SizeSweep.of(pack, size, range, dropOuts);
    if (outcome instanceof SizeSweep.Outcome.Refused r) {
      throw new DoorException(Exit.USAGE, "--vary: " + r.why());
    }
    SizeSweep sweep = ((SizeSweep.Outcome.Swept) outcome).sweep();
    sweep.rows().forEach(row -> out.println(sweep.line(row)));
    sweep.cliffs().forEach(out::println);
    out.flush();
    if (plot != null) {
      write(plot, sweep);
    }
    return Exit.FINE;
  }

  private void write(Path plot, SizeSweep sweep) {
    String name = plot.toString().toLowerCase(Locale.ROOT);
    byte[] bytes;
    if (name.endsWith(".svg")) {
      bytes = StepPlot.svg(sweep).getBytes(StandardCharsets.UTF_8);
    } else if (name.endsWith(".png")) {
      bytes = StepPlot.png(sweep, hingeleaf.paper.HouseFonts.read());
    } else {
      throw new DoorException(Exit.USAGE, "--out ends in .svg or .png here, not " + plot);
    }
    OutputFile.write(plot, bytes);
    err.println(plot + ": " + sweep.rows().size() + " sizes drawn");
  }
}
