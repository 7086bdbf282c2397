package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Embossing;
import hingeleaf.card.Label;
import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.EmbossingFolder;
import hingeleaf.stock.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The drawn slopes of a pattern of 60 x 40 in the middle of a mat of 100 x 80, by hand: a contour
 * 0.8 inside is 58.4 x 38.4, one 3.6 inside 52.8 x 32.8; moved by 0.9 along both axes each leaves
 * 0.9 x (width + height) - 0.81 of itself. (That light comes from the upper left: common practice
 * of draughtsmen, no source.)
 */
class ReliefTest {
  private static final double SLOPES =
      0.9 * (58.4 + 38.4) - 0.81 + 0.9 * (52.8 + 32.8) - 0.81; // 162.54

  private static Piece flat(String id, Ring shape) {
    Region region = Region.of(shape);
    Label label = new Label(id, region.box().centre());
    return Piece.flat(
        id, id, Stacks.paper("white", "#ffffff", "#eeeeee"), Grain.ANY, region, label, id);
  }

  private static Piece mat(Box plates) {
    var folder = new EmbossingFolder("waves", "waves", plates.width(), plates.height(), 0.8);
    return flat("mat", Ring.rectangle(0, 0, 100, 80))
        .embossed(new Embossing(folder, "mat", plates, "mats/0"));
  }

  private static Scene scene(Piece... pieces) {
    List<Panel> panels =
        List.of(pieces).stream()
            .map(p -> new Panel(p.id(), p.id(), p.shape(), Rigid.IDENTITY))
            .toList();
    List<Rigid> poses = new java.util.ArrayList<>();
    for (int i = 0; i < pieces.length; i++) {
      poses.add(Rigid.translation(new Vec3(0, 0, 5 * i)));
    }
    Card card =
        new Card(
            "t", List.of(new Card.Root("mat", "mat", Rigid.IDENTITY)), List.of(pieces), List.of());
    return Scene.of(card, panels, poses);
  }

  private static List<VisiblePolygon> slopes(View view, VisiblePolygon.Kind kind) {
    return view.polygons().stream().filter(p -> p.kind() == kind).toList();
  }

  private static double area(View view, VisiblePolygon.Kind kind) {
    return slopes(view, kind).stream().mapToDouble(p -> p.onPiece().area()).sum();
  }

  private static final Box MIDDLE = new Box(20, 20, 80, 60);

  @Test
  void lightFallsFromTheUpperLeft() {
    View view = Sight.look(scene(mat(MIDDLE)), Look.straightOn());
    assertThat(area(view, VisiblePolygon.Kind.LIT)).isCloseTo(SLOPES, within(1e-6));
    assertThat(area(view, VisiblePolygon.Kind.SHADED)).isCloseTo(SLOPES, within(1e-6));
    for (VisiblePolygon p : slopes(view, VisiblePolygon.Kind.LIT)) {
      // A corner of two strips, the upper and the left one.
      assertThat(p.region().contains(p.region().box().centre())).isFalse();
      assertThat(p.onPiece().box().minX()).isBetween(20.79, 23.61);
      assertThat(p.onPiece().box().maxY()).isBetween(56.39, 59.21);
    }
  }

  /** Seen from behind left is right, and what stood up is sunk. */
  @Test
  void fromBehindThePatternIsSunk() {
    View view = Sight.look(scene(mat(MIDDLE)), Look.fromBehind());
    assertThat(area(view, VisiblePolygon.Kind.LIT)).isCloseTo(SLOPES, within(1e-6));
    double shadedLeft =
        slopes(view, VisiblePolygon.Kind.SHADED).stream()
            .mapToDouble(p -> p.region().outer().points().stream().filter(q -> q.x() < -75).count())
            .sum();
    // The picture's left is the piece's right, x from -80: the slope there lies in shade.
    assertThat(shadedLeft).isPositive();
    assertThat(slopes(view, VisiblePolygon.Kind.LIT))
        .noneMatch(p -> p.region().contains(new hingeleaf.geom.Vec2(-79, 40)));
  }

  @ParameterizedTest
  @CsvSource({
    // what lies before the mat, from x to x over its whole height; what of the slopes is seen
    "0, 100, 0", // all covered
    "0, 50, 0.5", // half of lit and shaded together
    "50, 100, 0.5",
    "85, 100, 1", // beside the pattern
  })
  void whatIsCoveredIsNotDrawn(double from, double to, double share) {
    Piece over = flat("over", Ring.rectangle(from, 0, to, 80));
    View view = Sight.look(scene(mat(MIDDLE), over), Look.straightOn());
    double both = area(view, VisiblePolygon.Kind.LIT) + area(view, VisiblePolygon.Kind.SHADED);
    assertThat(both).isCloseTo(2 * SLOPES * share, within(1e-6));
  }

  @Test
  void aFolderLargerThanThePiecePressesAllOfIt() {
    View view = Sight.look(scene(mat(new Box(-10, -10, 110, 90))), Look.straightOn());
    double whole = 0.9 * (98.4 + 78.4) - 0.81 + 0.9 * (92.8 + 72.8) - 0.81;
    assertThat(area(view, VisiblePolygon.Kind.LIT)).isCloseTo(whole, within(1e-6));
  }

  @Test
  void aPlainPieceHasNoSlopes() {
    View view = Sight.look(scene(flat("mat", Ring.rectangle(0, 0, 100, 80))), Look.straightOn());
    assertThat(view.polygons())
        .extracting(VisiblePolygon::kind)
        .containsOnly(VisiblePolygon.Kind.PAPER);
  }
}
