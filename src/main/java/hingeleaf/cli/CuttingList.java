package hingeleaf.cli;

import hingeleaf.paper.SheetJson;
import hingeleaf.sheet.Axis;
import hingeleaf.sheet.Cut;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sheet.PlacedPiece;
import hingeleaf.sheet.PlannedSheet;
import hingeleaf.sheet.Scrap;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPlan;
import hingeleaf.sheet.SheetStock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A sheet plan in words that a maker can follow at the trimmer. */
public final class CuttingList {
  private final SheetJob job;
  private final SheetPlan plan;
  private final JobUnit unit;
  private final StringBuilder text = new StringBuilder();

  private CuttingList(SheetJob job, SheetPlan plan) {
    this.job = job;
    this.plan = plan;
    unit = job.unit();
  }

  /** The cost, the sheets and the cuts in the order in which they are made. */
  public static String write(SheetJob job, SheetPlan plan) {
    CuttingList list = new CuttingList(job, plan);
    list.head();
    list.sheets();
    list.cuts();
    plan.warnings().forEach(w -> list.line("Mind: " + w + "."));
    return list.text.toString();
  }

  private void line(String s) {
    text.append(s).append('\n');
  }

  private String bare(long nm) {
    return unit.fromNanometres(nm).toPlainString();
  }

  private String size(long w, long h) {
    return bare(w) + " x " + unit.tell(h);
  }

  private void head() {
    int n = plan.sheets().size();
    String proof =
        plan.provenOptimal()
            ? "no cheaper plan exists (" + plan.bound() + ")"
            : "no plan costs less than "
                + SheetJson.money(plan.lowerBound()).toPlainString()
                + " ("
                + plan.bound()
                + ")";
    line(
        (n == 1 ? "1 sheet" : n + " sheets")
            + ", cost "
            + SheetJson.money(plan.cost()).toPlainString()
            + "; "
            + proof
            + ".");
    line("The trimmer is set " + plan.settings() + (plan.settings() == 1 ? " time." : " times."));
  }

  private void sheets() {
    for (int s = 0; s < plan.sheets().size(); s++) {
      PlannedSheet sheet = plan.sheets().get(s);
      SheetStock stock = job.stock().get(sheet.stock());
      line("");
      line(
          "Sheet "
              + (s + 1)
              + (stock.name().isEmpty() ? "" : " (" + stock.name() + ")")
              + ", "
              + size(sheet.w(), sheet.h()));
      pieces(sheet);
      for (Scrap scrap : sheet.scraps()) {
        line("  left over: " + size(scrap.w(), scrap.h()));
      }
    }
  }

  private void pieces(PlannedSheet sheet) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (PlacedPiece p : sheet.pieces()) {
      String what =
          job.pieces().get(p.piece()).name()
              + ", "
              + size(p.w(), p.h())
              + (p.rotated() ? ", turned" : "");
      counts.merge(what, 1, Integer::sum);
    }
    counts.forEach((what, n) -> line("  " + n + " x " + what));
  }

  private void cuts() {
    line("");
    line("Cutting, in this order:");
    int number = 0;
    long set = -1;
    List<Cut> cuts = new ArrayList<>(plan.cuts());
    for (Cut cut : cuts) {
      if (cut.setting() != set) {
        set = cut.setting();
        line("set the trimmer to " + unit.tell(set) + ":");
      }
      number++;
      line(
          String.format(
              java.util.Locale.ROOT,
              "  %3d. sheet %d%s: cut the line %s = %s from %s to %s; %s falls off",
              number,
              cut.sheet() + 1,
              cut.turn() ? ", turn" : "",
              cut.axis() == Axis.X ? "x" : "y",
              bare(cut.at()),
              bare(cut.from()),
              bare(cut.to()),
              cut.fallsOff()));
    }
  }
}
