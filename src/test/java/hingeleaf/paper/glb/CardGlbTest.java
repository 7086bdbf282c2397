package hingeleaf.paper.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Embossing;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.paper.Samples;
import hingeleaf.stock.EmbossingFolder;
import hingeleaf.stock.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;

class CardGlbTest {
  private static final Region SQUARE = Region.of(Ring.rectangle(0, 0, 40, 40));

  private static Piece flat(String id) {
    Label label = new Label(id, new Vec2(20, 20));
    return Piece.flat(id, id, Samples.white(), Grain.ANY, SQUARE, label, id);
  }

  private static Patch patch(String id, Face face) {
    return new Patch(id, id, face, SQUARE, Vec2.ZERO, new Vec2(1, 0));
  }

  /** A mat on the front of a back, and an ornament turned over and laid on the mat. */
  private static MadeCard card() {
    return card(flat("mat"));
  }

  private static MadeCard card(Piece mat) {
    Rigid over = Rigid.rotation(Vec3.ZERO, new Vec3(0, 1, 0), Math.PI);
    List<Join> joins =
        List.of(
            new Join.Glue("g1", patch("mat", Face.BACK), patch("back", Face.FRONT), 0, "pva", "m"),
            new Join.Glue(
                "g2", patch("boat", Face.FRONT), patch("mat", Face.FRONT), 0, "pva", "b"));
    Card card =
        new Card(
            "Three",
            List.of(new Card.Root("back", "back", Rigid.IDENTITY)),
            List.of(flat("back"), mat, flat("boat")),
            joins);
    return new MadeCard(
        card,
        List.of(
            new Panel("back", "back", SQUARE, Rigid.IDENTITY),
            new Panel("mat", "mat", SQUARE, Rigid.IDENTITY),
            new Panel("boat", "boat", SQUARE, over)),
        new Mechanism(List.of(), List.of(), List.of(), List.of(0)),
        List.of());
  }

  @Test
  void gluedPanels_lieUponEachOther_byTheirThickness() {
    List<Solid> solids = CardGlb.solids(card());
    double[] expected = {0, 0.356, 2 * 0.356};
    for (int i = 0; i < 3; i++) {
      // The middle of the board in the world: lift along the front's normal.
      Vec3 middle = solids.get(i).made().apply(new Vec3(0, 0, solids.get(i).lift()));
      assertThat(middle.z()).isCloseTo(expected[i], within(1e-12));
    }
  }

  /** A pattern of 0.8 mm that is 30 x 20 in the middle of the mat's 40 x 40. */
  private static Piece pressed() {
    var folder = new EmbossingFolder("waves", "waves", 30, 20, 0.8);
    return flat("mat").embossed(new Embossing(folder, "mat", new Box(5, 10, 35, 30), "m"));
  }

  @Test
  void whatIsLaidOnAPattern_liesOnItsTop() {
    List<Solid> solids = CardGlb.solids(card(pressed()));
    double[] expected = {0, 0.356, 2 * 0.356 + 0.8};
    for (int i = 0; i < 3; i++) {
      Vec3 middle = solids.get(i).made().apply(new Vec3(0, 0, solids.get(i).lift()));
      assertThat(middle.z()).isCloseTo(expected[i], within(1e-12));
    }
  }

  @Test
  void aPattern_isRaisedOverItsOwnArea_byWhatTheFolderAdds() {
    List<Solid> solids = CardGlb.solids(card(pressed()));
    assertThat(solids.get(0).raised()).isEmpty();
    assertThat(solids.get(1).raises()).isEqualTo(0.8);
    assertThat(solids.get(1).raised())
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.area()).isCloseTo(600, within(1e-9));
              assertThat(r.box()).isEqualTo(new Box(5, 10, 35, 30));
            });
  }

  @Test
  void write_unequalLists_isRefused() {
    assertThatThrownBy(() -> CardGlb.write(card(), List.of(1.0), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("1 times for 0 poses");
  }

  @Test
  void write_stillCard_isAFile() {
    byte[] glb = CardGlb.write(card(), List.of(), List.of());
    assertThat(new String(glb, 0, 4, java.nio.charset.StandardCharsets.US_ASCII)).isEqualTo("glTF");
    assertThat(new String(glb, 20, 600, java.nio.charset.StandardCharsets.UTF_8))
        .contains("back/back", "mat/mat", "boat/boat")
        .doesNotContain("animations");
  }
}
