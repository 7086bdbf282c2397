package hingeleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanCheckerTest {
  private static final long MM = 1_000_000;
  private final SheetJob job = Jobs.on(100, 100, 1).piece(60, 40, 2, true).job();

  private static CutTree tree() {
    CutTree a = new CutTree.Piece(0, false, 60 * MM, 40 * MM);
    return new CutTree.Split(Axis.X, 100 * MM, 100 * MM, List.of(a, a));
  }

  private static SheetPlan plan(List<PlacedPiece> pieces, List<Cut> cuts, List<Scrap> scraps) {
    PlannedSheet sheet = new PlannedSheet(0, 100 * MM, 100 * MM, tree(), pieces, cuts, scraps);
    int settings = 0;
    long set = -1;
    for (Cut c : cuts) {
      settings += c.setting() == set ? 0 : 1;
      set = c.setting();
    }
    return new SheetPlan(List.of(sheet), cuts, MM, MM, "area", settings, List.of());
  }

  private static Cut cut(Axis axis, long at, long from, long to, long setting) {
    return new Cut(0, axis, at * MM, from * MM, to * MM, setting * MM, "p0", false);
  }

  private static PlacedPiece at(long x, long y, long w, long h, boolean rotated) {
    return new PlacedPiece(0, x * MM, y * MM, w * MM, h * MM, rotated);
  }

  private static final List<PlacedPiece> TWO =
      List.of(at(0, 0, 60, 40, false), at(60, 0, 40, 60, true));
  private static final List<Cut> CUTS =
      List.of(
          cut(Axis.X, 60, 0, 100, 60), cut(Axis.Y, 40, 0, 60, 40), cut(Axis.Y, 60, 60, 100, 60));
  private static final List<Scrap> SCRAPS =
      List.of(
          new Scrap(0, 40 * MM, 60 * MM, 60 * MM), new Scrap(60 * MM, 60 * MM, 40 * MM, 40 * MM));

  @Test
  void acceptsAPlanMadeByHand() {
    assertThat(PlanChecker.check(job, plan(TWO, CUTS, SCRAPS))).isEmpty();
  }

  @Test
  void refusesOverlap() {
    List<PlacedPiece> pieces = List.of(at(0, 0, 60, 40, false), at(59, 0, 40, 60, true));
    assertThat(PlanChecker.check(job, plan(pieces, CUTS, SCRAPS)))
        .anyMatch(f -> f.contains("cannot be cut edge to edge"));
  }

  @Test
  void refusesAPinwheel() {
    SheetJob five = Jobs.on(5, 5, 1).piece(2, 3, 4, true).job();
    PlannedSheet sheet =
        new PlannedSheet(
            0,
            5 * MM,
            5 * MM,
            new CutTree.Scrap(5 * MM, 5 * MM),
            List.of(
                at(0, 0, 3, 2, true),
                at(3, 0, 2, 3, false),
                at(2, 3, 3, 2, true),
                at(0, 2, 2, 3, false)),
            List.of(),
            List.of());
    SheetPlan plan = new SheetPlan(List.of(sheet), List.of(), MM, MM, "area", 0, List.of());
    assertThat(PlanChecker.check(five, plan))
        .anyMatch(f -> f.contains("cannot be cut edge to edge"));
  }

  @Test
  void refusesAMissingPieceAWrongTurnAndAWrongCost() {
    assertThat(PlanChecker.check(job, plan(TWO.subList(0, 1), CUTS, SCRAPS)))
        .anyMatch(f -> f.contains("laid 1 times"));
    SheetJob locked = Jobs.on(100, 100, 1).piece(60, 40, 2, false).job();
    assertThat(PlanChecker.check(locked, plan(TWO, CUTS, SCRAPS)))
        .anyMatch(f -> f.contains("may not lie so"));
    SheetJob dear = Jobs.on(100, 100, 2).piece(60, 40, 2, true).job();
    assertThat(PlanChecker.check(dear, plan(TWO, CUTS, SCRAPS)))
        .anyMatch(f -> f.contains("the cost is"));
  }

  @Test
  void refusesACutThatDoesNotRunAcrossAPart() {
    List<Cut> cuts = new ArrayList<>(CUTS);
    cuts.set(1, cut(Axis.Y, 40, 0, 50, 40));
    assertThat(PlanChecker.check(job, plan(TWO, cuts, SCRAPS)))
        .anyMatch(f -> f.contains("no part that the cut"));
  }

  @Test
  void refusesCutsBeyondTheTrimmer() {
    SheetJob small = Jobs.on(100, 100, 1).piece(60, 40, 2, true).trimmer(90, 0, 0).job();
    assertThat(PlanChecker.check(small, plan(TWO, CUTS, SCRAPS)))
        .anyMatch(f -> f.contains("longer than the trimmer"));
    SheetJob strip = Jobs.on(100, 100, 1).piece(60, 40, 2, true).trimmer(0, 0, 45).job();
    assertThat(PlanChecker.check(strip, plan(TWO, CUTS, SCRAPS)))
        .anyMatch(f -> f.contains("least strip"));
  }
}
