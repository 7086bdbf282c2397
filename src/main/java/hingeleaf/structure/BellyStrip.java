package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Score;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import java.util.List;
import java.util.Map;

/**
 * A belly strip: glued behind the back at its upper edge, it lies over the frames and its end hooks
 * into a slit of the foremost one. Only that frame is held firmly; those between are held taut.
 * Unhooked, it folds down behind the back.
 */
final class BellyStrip implements Structure {
  private static final Form FORM =
      StayParts.form(
          "belly-strip",
          "a belly strip",
          "a stay: a strip over the frames that hooks into the foremost one",
          StayParts.edge("top, or right where the sides are at top and bottom"),
          StayParts.at(),
          FormField.length("width", Range.from(6, 500), "of the strip").usually("20 mm", "3/4 in"),
          FormField.length("hook", Range.from(4, 50), "how far its end comes down in front")
              .usually("10 mm", "3/8 in"),
          StayParts.tab().usually("12 mm", "1/2 in"));

  @Override
  public Form form() {
    return FORM;
  }

  @Override
  public void build(Values v, Workshop shop) {
    StayParts.of(v, shop, "top", "right").ifPresent(BellyStrip::run);
  }

  private static void run(StayParts p) {
    double width = p.shop.mm(p.v, "width");
    double hook = p.shop.mm(p.v, "hook");
    double tab = p.shop.mm(p.v, "tab");
    int last = p.stack.frames();
    double papers = (p.stack.papers().get(0) + p.stack.papers().get(last)) / 2;
    double deep = p.shop.bearings().nearest(p.stack.ahead(last) + papers);
    double end = hook + deep;
    Surface front = p.front();
    double half = (width + StayParts.PLAY_MM) / 2;
    double slit = hook / 2;
    List<StayParts.Need> needs =
        List.of(
            StayParts.Need.of(p.layer(0), "its glued strip", width / 2, "tab", tab),
            StayParts.Need.slit(front, "the slit for its hook", half, "hook", hook));
    if (!p.room(needs)) {
      return;
    }
    List<Score> scores =
        List.of(
            new Score("hook", Segment.of(0, hook, width, hook), -Math.PI / 2),
            new Score("edge", Segment.of(0, end, width, end), -Math.PI / 2));
    List<Label> labels =
        List.of(
            new Label("hook", new Vec2(width / 2, hook / 2)),
            new Label("strip", new Vec2(width / 2, hook + deep / 2)),
            new Label("tab", new Vec2(width / 2, end + tab / 2)));
    Region shape = Region.of(Ring.rectangle(0, 0, width, end + tab));
    if (!p.piece(shape, List.of(), scores, labels, Grain.ANY)) {
      return;
    }
    p.glueTab(Face.BACK, new Box(0, end, width, end + tab), p.layer(0), Face.BACK, 0);
    p.slit(front, new Segment(p.point(front, -half, slit), p.point(front, half, slit)));
    Box own = new Box(0, 0, width, hook);
    Region area = p.area(front, half, 0, hook);
    String id = p.catches("hook", own, front.piece(), front.panel(), area);
    p.stay(
        "belly strip",
        List.of(id),
        Map.of(p.name + "/hook", 0.0, p.name + "/edge", Math.PI),
        StayParts.PLAY_MM / 2);
  }
}
