package hingeleaf.fold.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Label;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.card.Score;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bare sheets that meet on the way, which no stack of frames brings about: a lid of 70 that stands
 * upright on its fold and comes down over a sheet that stands in its way. Its end passes a point at
 * distance d from the fold when 70 cos(theta) = d, theta being what is left of the quarter turn
 * (elementary); no order of freedoms helps, for only the lid moves.
 */
class CrossingSheetsTest {
  private static final Stock WHITE = BuiltInBench.metric().papers().get(0);

  private static MadeCard lidAndWall(double distance, double high) {
    Piece lid =
        new Piece(
            "box",
            "box",
            WHITE,
            Grain.ANY,
            Region.of(Ring.rectangle(0, 0, 170, 100)),
            List.of(),
            List.of(new Score("hinge", Segment.of(100, 0, 100, 100), Math.PI / 2)),
            List.of(new Label("base", new Vec2(50, 50)), new Label("lid", new Vec2(135, 50))),
            List.of(),
            "box");
    Piece wall =
        Piece.flat(
            "wall",
            "wall",
            WHITE,
            Grain.ANY,
            Region.of(Ring.rectangle(0, 0, high, 60)),
            new Label("panel", new Vec2(high / 2, 30)),
            "wall");
    Rigid upright =
        Rigid.frame(
            new Vec3(100 - distance, 20, 1),
            new Vec3(0, 0, 1),
            new Vec3(0, 1, 0),
            new Vec3(-1, 0, 0));
    return FoldForward.of(
        new Card(
            "lid",
            List.of(
                new Card.Root("box", "base", Rigid.IDENTITY),
                new Card.Root("wall", "panel", upright)),
            List.of(lid, wall),
            List.of()));
  }

  /** The lid folded in, not laid open beside the base nor swung round behind it. */
  private static Rest shut(MadeCard made) {
    return FlatStates.of(made, 8).states().stream()
        .filter(r -> r.posed().values().get(0) > 0)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"60, 40", "50, 55", "65, 30", "40, 60", "30, 65", "69, 20"})
  void aLidThatComesDownOnAStandingSheet(double distance, double high) {
    MadeCard made = lidAndWall(distance, high);
    Way way = Contact.way(made, shut(made), 0.1);
    assertThat(way.blocked()).isTrue();
    Touch t =
        way.touches().stream()
            .filter(x -> x.kind() == Touch.Kind.CROSSES)
            .findFirst()
            .orElseThrow();
    assertThat(List.of(t.part(), t.against())).containsExactlyInAnyOrder("box/lid", "wall/panel");
    double left = Math.acos(distance / 70);
    assertThat(t.share()).isCloseTo(1 - left / (Math.PI / 2), within(1e-3));
  }

  @Test
  void aLidThatIsTooShortToReachIt() {
    MadeCard made = lidAndWall(75, 40);
    Way way = Contact.way(made, shut(made), 0.1);
    assertThat(way.touches()).noneMatch(t -> t.kind() == Touch.Kind.CROSSES);
    assertThat(way.blocked()).isFalse();
  }
}
