package hingeleaf.fold.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.fold.FoldForward;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What thickness forces, against the worked case of a box card. */
class ThicknessMisfitTest {
  private static final double RIGHT = Math.PI / 2;
  private static final Vec2 UP = new Vec2(0, 1);

  /**
   * Walls 70 high on a floor of {@code side}, and a strip from wall to wall, scored {@code side}
   * apart, its tabs glued inside.
   */
  private static MadeCard box(double side, double thickness) {
    Stock stock = SampleStacks.card(thickness);
    double high = 70;
    double tab = 15;
    Piece body =
        piece(
            "body",
            stock,
            new double[] {high, high + side},
            2 * high + side,
            RIGHT,
            List.of("left", "floor", "right"));
    Piece strip =
        piece(
            "strip",
            stock,
            new double[] {tab, tab + side},
            2 * tab + side,
            RIGHT,
            List.of("first", "middle", "last"));
    // 30 above the floor; the tabs stand up along the walls, their backs on the walls' fronts
    List<Join> joins =
        List.of(
            glue("strip/first", "first", tab, "left", high - 30),
            glue("strip/last", "last", tab + side, "right", high + side + 30));
    Card.Root root = new Card.Root("body", "floor", Rigid.IDENTITY);
    return FoldForward.of(new Card("box", List.of(root), List.of(body, strip), joins));
  }

  private static Join glue(String id, String tab, double at, String wall, double on) {
    return new Join.Glue(
        id,
        new Patch("strip", tab, Face.BACK, square(at), new Vec2(at, 0), UP),
        new Patch("body", wall, Face.FRONT, square(on), new Vec2(on, 0), UP),
        0,
        "pva",
        "");
  }

  private static Region square(double at) {
    return Region.of(Ring.rectangle(at - 1, 0, at + 1, 10));
  }

  private static Piece piece(
      String id, Stock stock, double[] scores, double wide, double angle, List<String> names) {
    double[] edges = {0, scores[0], scores[1], wide};
    return new Piece(
        id,
        id,
        stock,
        Grain.ANY,
        Region.of(Ring.rectangle(0, 0, wide, 40)),
        List.of(),
        List.of(score("a", scores[0], angle), score("b", scores[1], angle)),
        List.of(0, 1, 2).stream()
            .map(i -> new Label(names.get(i), new Vec2((edges[i] + edges[i + 1]) / 2, 20)))
            .toList(),
        List.of(),
        "");
  }

  private static Score score(String name, double at, double angle) {
    return new Score(name, new Segment(new Vec2(at, 0), new Vec2(at, 40)), angle);
  }

  @Test
  void stripInsideABox_wantsTwoThicknessesLessStandingThanFlat() {
    // Trade case: side 65, t 0.35: the strip needs s - 2 t = 64.3 standing but about 65 flat.
    MadeCard made = box(65, 0.35);
    assertThat(made.misfits()).hasSize(1);
    assertThat(made.misfits().get(0).gap()).isCloseTo(0, within(1e-9));
    List<ThicknessMisfit> forced = ThicknessMisfit.of(made);
    assertThat(forced).hasSize(1);
    assertThat(forced.get(0).piece()).isEqualTo("strip");
    assertThat(forced.get(0).misfit()).isCloseTo(0.7, within(1e-9));
    assertThat(65 - forced.get(0).misfit()).isCloseTo(64.3, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.356, 0.5})
  void frameOnTheLayerBehind_isForcedByNothing(double thickness) {
    // Both tabs are lifted alike: the offsets are at right angles to the panel.
    List<ThicknessMisfit> forced =
        ThicknessMisfit.of(SampleStacks.plain(150, 150, 12, 12, 3, thickness));
    assertThat(forced).hasSize(3);
    assertThat(forced).allSatisfy(f -> assertThat(f.misfit()).isCloseTo(0, within(1e-9)));
  }
}
