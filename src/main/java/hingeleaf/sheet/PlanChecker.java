package hingeleaf.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Checks a plan against its job without trusting how it was made: pieces are split apart along free
 * lines until each is alone, and the cuts are replayed one by one.
 */
public final class PlanChecker {
  private final SheetJob job;
  private final SheetPlan plan;
  private final List<String> faults = new ArrayList<>();

  private record Box(long x, long y, long w, long h) {
    boolean same(Box o) {
      return x == o.x && y == o.y && w == o.w && h == o.h;
    }
  }

  private PlanChecker(SheetJob job, SheetPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  /** What is wrong with the plan, one sentence each; empty when it can be cut as told. */
  public static List<String> check(SheetJob job, SheetPlan plan) {
    PlanChecker checker = new PlanChecker(job, plan);
    checker.counts();
    for (int s = 0; s < plan.sheets().size(); s++) {
      checker.sheet(s, plan.sheets().get(s));
    }
    checker.sequence();
    return checker.faults;
  }

  private void counts() {
    long[] pieces = new long[job.pieces().size()];
    long[] stock = new long[job.stock().size()];
    long cost = 0;
    for (PlannedSheet sheet : plan.sheets()) {
      stock[sheet.stock()]++;
      cost += job.stock().get(sheet.stock()).price();
      sheet.pieces().forEach(p -> pieces[p.piece()]++);
    }
    for (int i = 0; i < pieces.length; i++) {
      if (pieces[i] != job.pieces().get(i).quantity()) {
        faults.add("piece " + i + " is laid " + pieces[i] + " times");
      }
    }
    for (int i = 0; i < stock.length; i++) {
      if (stock[i] > job.stock().get(i).most()) {
        faults.add("stock " + i + " is used " + stock[i] + " times");
      }
    }
    if (cost != plan.cost()) {
      faults.add("the cost is " + cost + ", not " + plan.cost());
    }
    if (plan.lowerBound() > plan.cost()) {
      faults.add("the lower bound is above the cost");
    }
  }

  private void sheet(int index, PlannedSheet sheet) {
    SheetStock stock = job.stock().get(sheet.stock());
    if (sheet.w() != stock.w() || sheet.h() != stock.h()) {
      faults.add("sheet " + index + " is not of its stock's size");
    }
    List<Box> boxes = new ArrayList<>();
    for (PlacedPiece p : sheet.pieces()) {
      SheetPiece piece = job.pieces().get(p.piece());
      boolean fits = p.rotated() ? piece.liesTurned(stock) : piece.liesUpright(stock);
      long w = p.rotated() ? piece.h() : piece.w();
      long h = p.rotated() ? piece.w() : piece.h();
      if (!fits || w != p.w() || h != p.h()) {
        faults.add("piece " + p.piece() + " may not lie so on sheet " + index);
      }
      boxes.add(new Box(p.x(), p.y(), p.w(), p.h()));
    }
    if (!apart(boxes, new Box(0, 0, sheet.w(), sheet.h()))) {
      faults.add("sheet " + index + " cannot be cut edge to edge");
    }
  }

  private static boolean apart(List<Box> boxes, Box within) {
    for (Box b : boxes) {
      boolean inside =
          b.x >= within.x
              && b.y >= within.y
              && b.x + b.w <= within.x + within.w
              && b.y + b.h <= within.y + within.h;
      if (!inside) {
        return false;
      }
    }
    return boxes.size() < 2 || parted(boxes, within, true) || parted(boxes, within, false);
  }

  private static boolean parted(List<Box> boxes, Box in, boolean x) {
    List<Box> sorted = new ArrayList<>(boxes);
    sorted.sort((a, b) -> Long.compare(x ? a.x : a.y, x ? b.x : b.y));
    long reach = Long.MIN_VALUE;
    for (int i = 0; i < sorted.size(); i++) {
      Box b = sorted.get(i);
      long start = x ? b.x : b.y;
      if (i > 0 && start >= reach) {
        Box low =
            x ? new Box(in.x, in.y, start - in.x, in.h) : new Box(in.x, in.y, in.w, start - in.y);
        Box high =
            x
                ? new Box(start, in.y, in.x + in.w - start, in.h)
                : new Box(in.x, start, in.w, in.y + in.h - start);
        return apart(sorted.subList(0, i), low) && apart(sorted.subList(i, sorted.size()), high);
      }
      reach = Math.max(reach, x ? b.x + b.w : b.y + b.h);
    }
    return false;
  }

  private void sequence() {
    List<List<Box>> parts = new ArrayList<>();
    for (PlannedSheet sheet : plan.sheets()) {
      parts.add(new ArrayList<>(List.of(new Box(0, 0, sheet.w(), sheet.h()))));
    }
    int settings = 0;
    long set = -1;
    Map<Integer, List<Cut>> bySheet = new HashMap<>();
    for (Cut cut : plan.cuts()) {
      cut(parts.get(cut.sheet()), cut);
      settings += cut.setting() == set ? 0 : 1;
      set = cut.setting();
      bySheet.computeIfAbsent(cut.sheet(), k -> new ArrayList<>()).add(cut);
    }
    if (settings != plan.settings()) {
      faults.add("the trimmer is set " + settings + " times, not " + plan.settings());
    }
    for (int s = 0; s < parts.size(); s++) {
      PlannedSheet sheet = plan.sheets().get(s);
      List<Box> said = new ArrayList<>();
      sheet.pieces().forEach(p -> said.add(new Box(p.x(), p.y(), p.w(), p.h())));
      sheet.scraps().forEach(p -> said.add(new Box(p.x(), p.y(), p.w(), p.h())));
      if (!same(said, parts.get(s))) {
        faults.add("the cuts of sheet " + s + " do not leave its pieces and scraps");
      }
      if (!sheet.cuts().equals(bySheet.getOrDefault(s, List.of()))) {
        faults.add("sheet " + s + " lists other cuts than the plan");
      }
    }
  }

  private static boolean same(List<Box> a, List<Box> b) {
    List<Box> p = sorted(a);
    List<Box> q = sorted(b);
    boolean same = p.size() == q.size();
    for (int i = 0; same && i < p.size(); i++) {
      same = p.get(i).same(q.get(i));
    }
    return same;
  }

  private static List<Box> sorted(List<Box> boxes) {
    Box[] result = boxes.toArray(new Box[0]);
    Arrays.sort(result, (p, q) -> p.x != q.x ? Long.compare(p.x, q.x) : Long.compare(p.y, q.y));
    return List.of(result);
  }

  private void cut(List<Box> parts, Cut cut) {
    boolean x = cut.axis() == Axis.X;
    for (int i = 0; i < parts.size(); i++) {
      Box p = parts.get(i);
      boolean meant =
          x
              ? p.y == cut.from() && p.y + p.h == cut.to() && p.x < cut.at() && cut.at() < p.x + p.w
              : p.x == cut.from()
                  && p.x + p.w == cut.to()
                  && p.y < cut.at()
                  && cut.at() < p.y + p.h;
      if (meant) {
        long low = cut.at() - (x ? p.x : p.y);
        long high = (x ? p.w : p.h) - low;
        parts.set(i, x ? new Box(p.x, p.y, low, p.h) : new Box(p.x, p.y, p.w, low));
        parts.add(x ? new Box(cut.at(), p.y, high, p.h) : new Box(p.x, cut.at(), p.w, high));
        limits(cut, low, high);
        return;
      }
    }
    faults.add("sheet " + cut.sheet() + " has no part that the cut at " + cut.at() + " crosses");
  }

  private void limits(Cut cut, long low, long high) {
    Trimmer trimmer = job.trimmer();
    if (trimmer.longest() > 0 && cut.length() > trimmer.longest()) {
      faults.add("the cut at " + cut.at() + " is longer than the trimmer's longest");
    }
    if (Math.min(low, high) < trimmer.leastStrip()) {
      faults.add("the cut at " + cut.at() + " leaves less than the least strip");
    }
    if (cut.setting() != low && cut.setting() != high) {
      faults.add("the setting of the cut at " + cut.at() + " is neither of its parts");
    }
  }
}
