package hingeleaf.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.fold.FoldForward;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Stacked frames against cases worked by hand and in closed form: sizes as cut, where scores stand,
 * mass from areas and grammage, and that the pieces fold to layers one side apart.
 */
class StackedLayoutTest {
  private static final Stock CARD =
      new Stock(
          "art-300",
          "art card 300 g/m2, 14 pt",
          Stock.Kind.CARD,
          300,
          0.356, // 14 pt = 0.356 mm: 1 pt is 0.001 in, 25.4 um, exactly
          Stock.Faces.alike("#ffffff"),
          List.of(),
          3);

  private static StackedLayout.Layer layer(String name, Ring opening) {
    return new StackedLayout.Layer(name, 12, List.of(opening), CARD, Grain.ANY, "frames." + name);
  }

  /** W 150, H 150, sides and tabs 12, apertures round 90, round 110, square 130. */
  private static StackedLayout.Sizes threeFrames(Axes axes, boolean tabsIn) {
    double wider = tabsIn ? 0 : 72; // tabs folded out take two tabs off every layer
    return new StackedLayout.Sizes(
        axes == Axes.LEFT_RIGHT ? 150 + wider : 150,
        axes == Axes.LEFT_RIGHT ? 150 : 150 + wider,
        axes,
        12,
        tabsIn,
        new StackedLayout.Layer("back", 0, List.of(), CARD, Grain.ANY, "back"),
        List.of(
            layer("far", Shapes.circle(90)),
            layer("middle", Shapes.circle(110)),
            layer("near", Ring.rectangle(-65, -65, 65, 65))),
        "pva");
  }

  private static MadeCard made(StackedLayout.Sizes sizes) {
    StackedLayout.Laid laid = StackedLayout.of(sizes);
    return FoldForward.of(new Card("test", laid.roots(), laid.pieces(), laid.joins()));
  }

  @Test
  void framePieceIs198By150_scoredAt12_24_174_186() {
    Piece far = StackedLayout.of(threeFrames(Axes.LEFT_RIGHT, true)).pieces().get(1);
    assertThat(far.width()).isEqualTo(198); // 150 + 2 x 12 + 2 x 12
    assertThat(far.height()).isEqualTo(150);
    assertThat(far.scores())
        .extracting(s -> s.at().from().x())
        .containsExactly(12d, 24d, 174d, 186d);
    assertThat(far.scores()).allMatch(Score::mountain);
  }

  @Test
  void inchPanelOf7By7WithHalfInchSidesAndTabs_cutsNineBySeven() {
    // common practice, no source: a 7 x 7 in panel with half-inch sides and tabs is a piece of
    // 9 x 7 in scored at 1/2, 1, 8 and 8 1/2
    double in = 25.4;
    Piece frame =
        StackedLayout.of(
                new StackedLayout.Sizes(
                    7 * in,
                    7 * in,
                    Axes.LEFT_RIGHT,
                    in / 2,
                    true,
                    new StackedLayout.Layer("back", 0, List.of(), CARD, Grain.ANY, "back"),
                    List.of(
                        new StackedLayout.Layer(
                            "front", in / 2, List.of(Shapes.circle(100)), CARD, Grain.ANY, "f")),
                    "pva"))
            .pieces()
            .get(1);
    assertThat(frame.width() / in).isCloseTo(9, within(1e-12));
    assertThat(frame.height() / in).isCloseTo(7, within(1e-12));
    double[] at = {0.5, 1, 8, 8.5};
    for (int i = 0; i < 4; i++) {
      assertThat(frame.scores().get(i).at().from().x() / in).isCloseTo(at[i], within(1e-12));
    }
  }

  @Test
  void massOfThreeFramesBeforeGlue_is23point65g() {
    // By hand: 300 g/m2 x (150^2 + 3 x 198 x 150 - pi 45^2 - pi 55^2 - 130^2) mm2 = 23.67 g less
    // the chords' share; the worked figure is 23.65 g to the nearest 0.01 by whole-number areas.
    double area = 150 * 150 + 3 * 198 * 150 - Math.PI * 45 * 45 - Math.PI * 55 * 55 - 130 * 130;
    double mass = made(threeFrames(Axes.LEFT_RIGHT, true)).card().mass();
    assertThat(mass).isCloseTo(area * 300e-6, within(0.003));
    assertThat(mass).isCloseTo(23.65, within(0.005));
  }

  @Test
  void layersStandOneSideApart_andNothingMisfits() {
    for (Axes axes : Axes.values()) {
      for (boolean in : new boolean[] {true, false}) {
        MadeCard made = made(threeFrames(axes, in));
        assertThat(made.misfits()).hasSize(3);
        assertThat(made.misfits()).allMatch(m -> m.gap() < 1e-12 && m.angle() < 1e-12);
        assertThat(panel(made, "far/panel").made().apply(Vec2.ZERO).z())
            .isCloseTo(12, within(1e-12));
        assertThat(panel(made, "middle/panel").made().apply(Vec2.ZERO).z())
            .isCloseTo(24, within(1e-12));
        assertThat(panel(made, "near/panel").made().apply(Vec2.ZERO).z())
            .isCloseTo(36, within(1e-12));
        assertThat(made.mechanism().joints()).hasSize(12);
        assertThat(made.mechanism().facets()).hasSize(16);
      }
    }
  }

  @Test
  void everyPanelLooksForwardAndSitsCentred() {
    for (Axes axes : Axes.values()) {
      for (boolean in : new boolean[] {true, false}) {
        MadeCard made = made(threeFrames(axes, in));
        for (String frame : List.of("far", "middle", "near")) {
          Panel p = panel(made, frame + "/panel");
          Vec2 c = p.region().box().centre();
          Vec3 at = p.made().apply(c);
          assertThat(Math.hypot(at.x(), at.y())).isLessThan(1e-12);
          assertThat(p.made().normal().z()).isCloseTo(1, within(1e-12));
        }
      }
    }
  }

  @Test
  void tabsFoldedInLandInsideTheEdge_foldedOutBesideIt() {
    Panel in = panel(made(threeFrames(Axes.LEFT_RIGHT, true)), "far/tab-left");
    assertThat(in.made().apply(new Vec2(0, 0)).x()).isCloseTo(-75 + 12, within(1e-12));
    assertThat(in.made().apply(new Vec2(0, 0)).z()).isCloseTo(0, within(1e-12));
    assertThat(in.made().normal().z()).isCloseTo(-1, within(1e-12));
    Panel out = panel(made(threeFrames(Axes.LEFT_RIGHT, false)), "far/tab-left");
    assertThat(out.made().apply(new Vec2(0, 0)).x()).isCloseTo(-111, within(1e-12));
    assertThat(out.made().normal().z()).isCloseTo(1, within(1e-12));
  }

  @Test
  void oneScoreHalfAMillimetreOff_misfitsHalfAMillimetre() {
    // Panel 150.5 on hinges 150 apart: the second tab lands 0.5 mm beside its place.
    StackedLayout.Laid laid = StackedLayout.of(threeFrames(Axes.LEFT_RIGHT, true));
    List<Piece> pieces = new ArrayList<>(laid.pieces());
    Piece far = pieces.get(1);
    List<Score> scores = new ArrayList<>(far.scores());
    scores.set(2, new Score("side-right", Segment.of(174.5, 0, 174.5, 150), -Math.PI / 2));
    scores.set(3, new Score("tab-right", Segment.of(186.5, 0, 186.5, 150), -Math.PI / 2));
    Ring outer = Ring.rectangle(0, 0, 198.5, 150);
    pieces.set(
        1,
        new Piece(
            far.id(),
            far.name(),
            far.stock(),
            far.grain(),
            new Region(outer, far.apertures()),
            far.slits(),
            scores,
            far.labels(),
            far.inks(),
            far.origin()));
    List<Join> joins = new ArrayList<>(laid.joins());
    Join.Glue right = (Join.Glue) joins.get(1);
    Patch a = right.a();
    Region tab = a.area().moved(new Vec2(0.5, 0));
    Patch moved = new Patch(a.piece(), a.panel(), a.face(), tab, new Vec2(186.5, 0), a.along());
    joins.set(1, new Join.Glue(right.id(), moved, right.b(), 0, "pva", right.origin()));
    MadeCard made = FoldForward.of(new Card("test", laid.roots(), pieces, joins));
    assertThat(made.misfits().get(0).glue()).isEqualTo("far/tab-right");
    assertThat(made.misfits().get(0).gap()).isCloseTo(0.5, within(1e-12));
    assertThat(made.misfits().get(1).gap()).isLessThan(1e-12);
  }

  private static Panel panel(MadeCard made, String id) {
    return made.panels().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }
}
