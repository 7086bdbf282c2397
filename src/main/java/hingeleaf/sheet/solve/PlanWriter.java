package hingeleaf.sheet.solve;

import hingeleaf.sheet.Axis;
import hingeleaf.sheet.Cut;
import hingeleaf.sheet.CutTree;
import hingeleaf.sheet.PlacedPiece;
import hingeleaf.sheet.PlannedSheet;
import hingeleaf.sheet.Scrap;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPlan;
import hingeleaf.sheet.SheetStock;
import hingeleaf.sheet.bound.Bound;
import hingeleaf.sheet.order.CutOrder;
import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns layouts into a plan in nanometres: order of cuts, places, names. */
final class PlanWriter {
  private static final long NARROW = 15_000_000;
  private final SheetJob job;
  private final Task task;
  private final List<Layout> layouts;
  private final CutOrder.Result order;
  private final Map<Integer, List<Integer>> offs = new HashMap<>();
  private final int[] memberAt;
  private final long[] memberLeft;
  private int node;
  private long narrowest = Long.MAX_VALUE;

  /** Where a split lies and how its parts follow one another. */
  private record Place(long x, long y, long w, long h, boolean across) {}

  private final Map<Integer, Place> places = new HashMap<>();
  private final Map<Integer, Map<Integer, String>> names = new HashMap<>();
  private final Map<Integer, Map<Integer, Long>> starts = new HashMap<>();

  private PlanWriter(SheetJob job, Task task, List<Layout> layouts, CutOrder.Result order) {
    this.job = job;
    this.task = task;
    this.layouts = layouts;
    this.order = order;
    memberAt = new int[task.types];
    memberLeft = new long[task.types];
    for (int t = 0; t < task.types; t++) {
      memberLeft[t] = job.pieces().get(task.members.get(t).get(0)).quantity();
    }
    for (CutOrder.Step step : order.steps()) {
      offs.computeIfAbsent(step.node(), k -> new ArrayList<>()).add(step.part());
    }
  }

  static SheetPlan write(
      SheetJob job, Task task, List<Layout> layouts, CutOrder.Result order, Bound bound) {
    return new PlanWriter(job, task, layouts, order).plan(bound);
  }

  private SheetPlan plan(Bound bound) {
    List<CutTree> trees = new ArrayList<>();
    List<List<PlacedPiece>> pieces = new ArrayList<>();
    List<List<Scrap>> scraps = new ArrayList<>();
    for (Layout layout : layouts) {
      List<PlacedPiece> laid = new ArrayList<>();
      List<Scrap> left = new ArrayList<>();
      SheetStock stock = job.stock().get(layout.stock());
      trees.add(tree(layout.root(), stock, 0, 0, laid, left));
      pieces.add(laid);
      scraps.add(left);
    }
    List<Cut> cuts = cuts();
    Map<Integer, List<Cut>> bySheet = new HashMap<>();
    cuts.forEach(c -> bySheet.computeIfAbsent(c.sheet(), k -> new ArrayList<>()).add(c));
    List<PlannedSheet> sheets = new ArrayList<>();
    long cost = 0;
    for (int s = 0; s < layouts.size(); s++) {
      int stock = layouts.get(s).stock();
      cost += job.stock().get(stock).price();
      List<Cut> own = bySheet.getOrDefault(s, List.of());
      SheetStock of = job.stock().get(stock);
      sheets.add(
          new PlannedSheet(stock, of.w(), of.h(), trees.get(s), pieces.get(s), own, scraps.get(s)));
    }
    return new SheetPlan(
        sheets,
        cuts,
        cost,
        Math.min(bound.cost(), cost),
        bound.name(),
        order.settings(),
        warnings(cuts));
  }

  private CutTree tree(
      Part part, SheetStock stock, long x, long y, List<PlacedPiece> laid, List<Scrap> left) {
    long w = part.w() * task.scale;
    long h = part.h() * task.scale;
    if (part instanceof Part.Laid l) {
      int piece = member(l.type());
      boolean turned = l.turned() || !job.pieces().get(piece).liesUpright(stock);
      laid.add(new PlacedPiece(piece, x, y, w, h, turned));
      return new CutTree.Piece(piece, turned, w, h);
    }
    if (part instanceof Part.Free) {
      left.add(new Scrap(x, y, w, h));
      return new CutTree.Scrap(w, h);
    }
    return split((Part.Split) part, stock, x, y, laid, left);
  }

  private CutTree split(
      Part.Split split,
      SheetStock stock,
      long x,
      long y,
      List<PlacedPiece> laid,
      List<Scrap> left) {
    int own = node++;
    boolean across = split.across();
    places.put(own, new Place(x, y, split.w() * task.scale, split.h() * task.scale, across));
    List<Integer> sequence = new ArrayList<>(offs.getOrDefault(own, List.of()));
    int n = split.parts().size();
    for (int k = 0; k < n; k++) {
      if (!sequence.contains(k)) {
        sequence.add(k);
      }
    }
    long[] start = new long[n];
    long at = 0;
    for (int k : sequence) {
      start[k] = at;
      Part p = split.parts().get(k);
      at += (across ? p.w() : p.h()) * task.scale;
    }
    CutTree[] parts = new CutTree[n];
    Map<Integer, String> called = new HashMap<>();
    Map<Integer, Long> begins = new HashMap<>();
    for (int k = 0; k < n; k++) {
      long px = across ? x + start[k] : x;
      long py = across ? y : y + start[k];
      parts[k] = tree(split.parts().get(k), stock, px, py, laid, left);
      called.put(k, call(parts[k]));
      begins.put(k, start[k]);
    }
    names.put(own, called);
    starts.put(own, begins);
    List<CutTree> inOrder = sequence.stream().map(k -> parts[k]).toList();
    return new CutTree.Split(
        across ? Axis.X : Axis.Y, split.w() * task.scale, split.h() * task.scale, inOrder);
  }

  private String call(CutTree part) {
    if (part instanceof CutTree.Piece p) {
      return job.pieces().get(p.piece()).name();
    }
    return part instanceof CutTree.Scrap ? "scrap" : "a strip";
  }

  private int member(int type) {
    List<Integer> members = task.members.get(type);
    while (memberLeft[type] == 0) {
      memberAt[type]++;
      memberLeft[type] = job.pieces().get(members.get(memberAt[type])).quantity();
    }
    memberLeft[type]--;
    return members.get(memberAt[type]);
  }

  private List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    boolean before = false;
    for (CutOrder.Step step : order.steps()) {
      Place place = java.util.Objects.requireNonNull(places.get(step.node()));
      long setting = step.setting() * task.scale;
      long begin =
          java.util.Objects.requireNonNull(
              java.util.Objects.requireNonNull(starts.get(step.node())).get(step.part()));
      long at = (place.across ? place.x : place.y) + begin + setting;
      long from = place.across ? place.y : place.x;
      long to = from + (place.across ? place.h : place.w);
      String name =
          java.util.Objects.requireNonNull(
              java.util.Objects.requireNonNull(names.get(step.node())).get(step.part()));
      boolean turn = !cuts.isEmpty() && place.across != before;
      before = place.across;
      cuts.add(
          new Cut(step.sheet(), place.across ? Axis.X : Axis.Y, at, from, to, setting, name, turn));
      narrowest = Math.min(narrowest, setting);
    }
    return cuts;
  }

  private List<String> warnings(List<Cut> cuts) {
    List<String> result = new ArrayList<>();
    if (narrowest < NARROW) {
      result.add(
          "a strip of "
              + job.unit().tell(narrowest)
              + " is cut: under 15 mm hold the wide side, and keep your fingers off the blade's way");
    }
    long step = job.trimmer().step();
    if (step > 0) {
      cuts.stream()
          .map(Cut::setting)
          .distinct()
          .filter(s -> s % step != 0)
          .forEach(
              s ->
                  result.add(
                      job.unit().tell(s)
                          + " is not on a mark of the trimmer: measure it with a ruler"));
    }
    return result;
  }
}
