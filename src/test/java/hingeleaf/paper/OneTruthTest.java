package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.paper.glb.CardGlb;
import hingeleaf.paper.svg.PieceSvg;
import hingeleaf.plan.CutList;
import hingeleaf.plan.ScoreChart;
import hingeleaf.plan.WorkPlan;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.SampleStacks;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The pieces are the one truth: move one score, and everything that is told of the card moves. */
class OneTruthTest {
  private static final Bench BENCH = BuiltInBench.metric();

  private static MadeCard made() {
    return SampleStacks.plain(150, 150, 12, 12, 2, 0.356);
  }

  /** The same card with one score of its first frame 1 mm further to the right. */
  private static MadeCard moved() {
    Card card = made().card();
    List<Piece> pieces = new ArrayList<>();
    for (Piece p : card.pieces()) {
      pieces.add(p.id().equals("far") ? shifted(p) : p);
    }
    return FoldForward.of(new Card(card.title(), card.roots(), pieces, card.joins()));
  }

  private static Piece shifted(Piece p) {
    List<Score> scores = new ArrayList<>();
    for (Score s : p.scores()) {
      double by = s.name().equals("side-right") ? 1 : 0;
      Vec2 move = new Vec2(by, 0);
      Segment at = new Segment(s.at().from().plus(move), s.at().to().plus(move));
      scores.add(new Score(s.name(), at, s.made()));
    }
    return new Piece(
        p.id(),
        p.name(),
        p.stock(),
        p.grain(),
        p.shape(),
        p.slits(),
        scores,
        p.labels(),
        p.inks(),
        p.origin());
  }

  @Test
  void theMisfitChanges() {
    // The panel grows by 1 mm and the right side shrinks by 1 mm: the tab ends 1 mm to the right of
    // its place and 1 mm above it, so its corners are off by sqrt(2).
    assertThat(made().misfits().get(0).gap()).isLessThan(1e-12);
    assertThat(moved().misfits().get(0).gap()).isCloseTo(Math.sqrt(2), within(1e-9));
  }

  @Test
  void theSolidThePictureThePieceAndThePlanChange() {
    assertThat(glb(moved())).isNotEqualTo(glb(made()));
    Piece before = made().card().piece("far");
    Piece after = moved().card().piece("far");
    assertThat(PieceSvg.write(after)).isNotEqualTo(PieceSvg.write(before));
    assertThat(settings(moved())).contains(175d);
    assertThat(settings(made())).doesNotContain(175d);
    assertThat(steps(moved())).contains("175 mm");
    assertThat(steps(made())).doesNotContain("175 mm");
  }

  @Test
  void theRestPoseChanges() {
    assertThat(FlatStates.of(moved(), 4).states()).isNotEqualTo(FlatStates.of(made(), 4).states());
  }

  @Test
  void everyPanelOfTheMadeCardUnfoldsOntoItsPiece() {
    MadeCard made = made();
    for (int i = 0; i < made.panels().size(); i++) {
      Panel panel = made.panels().get(i);
      Rigid back = panel.made().inverse();
      List<Vec3> placed = made.mechanism().facets().get(i).outline();
      for (int k = 0; k < placed.size(); k++) {
        Vec3 flat = back.apply(placed.get(k));
        Vec2 cut = panel.region().outer().points().get(k);
        assertThat(flat.distance(new Vec3(cut.x(), cut.y(), 0))).isLessThan(1e-9);
      }
    }
    double panels = made.panels().stream().mapToDouble(p -> p.region().area()).sum();
    double pieces = made.card().pieces().stream().mapToDouble(p -> p.shape().area()).sum();
    assertThat(panels).isCloseTo(pieces, within(1e-6));
  }

  private static byte[] glb(MadeCard made) {
    return CardGlb.write(made, List.of(), List.of());
  }

  private static List<Double> settings(MadeCard made) {
    return ScoreChart.of(CutList.of(made.card().pieces(), BENCH), BENCH).rows().stream()
        .flatMap(r -> r.settings().stream())
        .map(ScoreChart.Setting::at)
        .toList();
  }

  private static String steps(MadeCard made) {
    CutList cuts = CutList.of(made.card().pieces(), BENCH);
    return WorkPlan.of(made.card(), cuts, ScoreChart.of(cuts, BENCH), BENCH, MakerUnits.of(Unit.MM))
        .steps()
        .toString();
  }
}
