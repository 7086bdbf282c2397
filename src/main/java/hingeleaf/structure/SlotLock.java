package hingeleaf.structure;

import hingeleaf.card.Card;
import hingeleaf.card.Label;
import hingeleaf.card.Stay;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.Grain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A slot-lock: a strip on edge across all layers, halved with them: its notches drop over the
 * layers and their slits take the strip. It is loose and lies in the flat card when that is posted.
 */
final class SlotLock implements Structure {
  /** A notch is wider than the paper in it by this: common practice, no source. */
  private static final double LOOSE_MM = 0.2;

  /** Less leaves no card beside its notches: common practice, no source. */
  static final double LEAST_HEIGHT_MM = 6;

  private static final Form FORM =
      StayParts.form(
          "slot-lock",
          "a slot-lock",
          "a stay: a loose strip with notches that drops over all layers",
          StayParts.edge("top, or right where the sides are at top and bottom"),
          StayParts.at(),
          FormField.length(
                  "height", Range.from(LEAST_HEIGHT_MM, 100), "of the strip; half of it is notched")
              .usually("10 mm", "3/8 in"),
          FormField.length("past", Range.from(3, 50), "how far it reaches past back and front")
              .usually("5 mm", "1/4 in"));

  @Override
  public Form form() {
    return FORM;
  }

  @Override
  public void build(Values v, Workshop shop) {
    StayParts.of(v, shop, "top", "right").ifPresent(SlotLock::run);
  }

  private static void run(StayParts p) {
    double high = p.shop.mm(p.v, "height");
    double past = p.shop.mm(p.v, "past");
    double deep = high / 2;
    int layers = p.stack.layers().size();
    double length = p.shop.bearings().nearest(p.stack.ahead(layers - 1) + 2 * past);
    List<StayParts.Need> needs = new ArrayList<>();
    for (int k = 0; k < layers; k++) {
      double border = p.layer(k).stock().leastBorder();
      needs.add(StayParts.Need.of(p.layer(k), "the strip on edge", border, "height", high));
    }
    if (!p.room(needs)) {
      return;
    }
    List<Region> notches = new ArrayList<>();
    for (int k = 0; k < layers; k++) {
      double half = (p.stack.papers().get(k) + LOOSE_MM) / 2;
      double x = past + p.stack.ahead(k);
      notches.add(Region.of(Ring.rectangle(x - half, -1, x + half, deep)));
    }
    Region shape =
        Overlay.difference(List.of(Region.of(Ring.rectangle(0, 0, length, high))), notches).get(0);
    List<Label> labels = List.of(new Label("strip", new Vec2(length / 2, high * 0.75)));
    if (!p.piece(shape, List.of(), List.of(), labels, Grain.WIDTH)) {
      return;
    }
    Rigid set = set(p, high, past);
    p.shop.card().root(new Card.Root(p.name, "strip", set));
    List<String> catches = new ArrayList<>();
    for (int k = 0; k < layers; k++) {
      Surface layer = p.layer(k);
      p.slit(layer, new Segment(p.point(layer, 0, 0), p.point(layer, 0, deep)));
      Box own = notches.get(k).box();
      Region area = p.area(layer, 0.5, 0, deep);
      catches.add(p.catches("strip", own, layer.piece(), layer.panel(), area));
    }
    p.shop
        .card()
        .add(new Stay(p.name, "slot-lock", catches, Map.of(), laid(p, length, high), LOOSE_MM / 2));
  }

  private static Vec3 world(StayParts p, Vec2 onBack, double z) {
    Vec2 q = onBack.minus(p.layer(0).box().centre());
    return new Vec3(q.x(), q.y(), z);
  }

  /** On edge across the layers: it runs forward, its notches open into the card. */
  private static Rigid set(StayParts p, double high, double past) {
    Vec3 out = new Vec3(-p.inward().x(), -p.inward().y(), 0);
    Vec3 forward = new Vec3(0, 0, 1);
    return Rigid.frame(
        world(p, p.point(p.layer(0), 0, high), -past), forward, out, forward.cross(out));
  }

  /** Flat on the back's front along that edge, just above it so that it counts as lying on it. */
  private static Rigid laid(StayParts p, double length, double high) {
    Vec3 out = new Vec3(-p.inward().x(), -p.inward().y(), 0);
    Vec3 up = new Vec3(0, 0, 1);
    Vec3 along = out.cross(up);
    Vec3 middle = world(p, p.point(p.layer(0), 0, high + 2), 1e-3);
    return Rigid.frame(middle.plus(along.times(-length / 2)), along, out, up);
  }
}
