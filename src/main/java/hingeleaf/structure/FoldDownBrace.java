package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A fold-down brace: a flap as wide as a stage is between its sides, hung on the layer behind. Up,
 * it lies flat against that layer; folded down it fills the stage from side to side, and neither
 * side can lean. It holds one stage.
 */
final class FoldDownBrace implements Structure {
  /** It must slip between the sides and clear the frame in front: common practice, no source. */
  private static final double SLIP_MM = 0.3;

  private static final double SHORT_MM = 1;

  private static final double LEAST_DEPTH_MM = 4;

  private static final Form FORM =
      StayParts.form(
          "fold-down-brace",
          "a fold-down brace",
          "a stay: a flap that fills one stage from side to side",
          FormField.reference("on", "a layer of the stack", "what it is hung on; it holds the next")
              .usually("back"),
          StayParts.tab().usually("10 mm", "3/8 in"));

  @Override
  public Form form() {
    return FORM;
  }

  @Override
  public void build(Values v, Workshop shop) {
    Optional<Surface> on = shop.surface(v, "on", v.text("name"));
    Optional<StayParts> parts = StayParts.of(v, shop, "bottom", "left");
    if (on.isEmpty() || parts.isEmpty()) {
      return;
    }
    int stage = parts.get().stack.layers().indexOf(on.get().name());
    if (stage < 0 || stage >= parts.get().stack.frames()) {
      shop.card()
          .report(
              v.problem(
                  "no-stage",
                  v.text("name"),
                  "on",
                  v.text("name")
                      + ": in front of "
                      + on.get().name()
                      + " there is no stage to hold - hang it on the back or on a frame behind"
                      + " another"));
      return;
    }
    run(parts.get(), stage);
  }

  private static void run(StayParts p, int stage) {
    Surface on = p.layer(stage);
    Surface frame = p.layer(stage + 1);
    Axes ax = p.stack.axes();
    double tab = p.shop.mm(p.v, "tab");
    double paper = p.stack.papers().get(stage + 1);
    double inside = ax.across(frame.box()) - paper - SLIP_MM;
    double width = Math.floor(inside * 10 + 1e-9) / 10;
    double deep = p.shop.bearings().down(p.stack.least().get(stage) - SHORT_MM);
    double hung = p.shop.bearings().down(ax.across(Fittings.free(on, Face.FRONT)) - 2);
    if (deep < LEAST_DEPTH_MM || hung < 2 * tab) {
      p.shop.card().report(deep < LEAST_DEPTH_MM ? shallow(p, stage) : narrow(p, hung / 2));
      return;
    }
    if (!p.room(List.of(StayParts.Need.of(on, "its glued strip", hung / 2, "tab", tab)))) {
      return;
    }
    double x = (width - hung) / 2;
    Region shape =
        Overlay.union(
                List.of(
                    Region.of(Ring.rectangle(0, 0, width, deep)),
                    Region.of(Ring.rectangle(x, deep, width - x, deep + tab))))
            .get(0);
    List<Score> scores =
        List.of(new Score("fold", Segment.of(x, deep, width - x, deep), Math.PI / 2));
    List<Label> labels =
        List.of(
            new Label("tab", new Vec2(width / 2, deep + tab / 2)),
            new Label("flap", new Vec2(width / 2, deep / 2)));
    if (!p.piece(shape, List.of(), scores, labels, Grain.ANY)) {
      return;
    }
    p.glueTab(Face.BACK, new Box(x, deep, width - x, deep + tab), on, Face.FRONT, 0);
    p.shop.card().add(on.withStrip(p.area(on, hung / 2, 0, tab).box()));
    List<String> catches = new ArrayList<>();
    Piece sides = p.shop.card().piece(frame.piece()).orElseThrow();
    for (String end : List.of(ax.first(), ax.second())) {
      Box own = new Box(0, 0, width, deep);
      catches.add(p.catches("flap", own, sides.id(), "side-" + end, side(sides, end)));
    }
    p.stay(
        "fold-down brace",
        catches,
        Map.of(p.name + "/fold", Math.PI),
        (inside + SLIP_MM - width) / 2);
  }

  private static Problem shallow(StayParts p, int stage) {
    double least = LEAST_DEPTH_MM + SHORT_MM;
    String why =
        "shallow for a brace - make its sides " + p.shop.bearings().say(least) + " or more";
    return tooSmall(p, "on", why).wanting(Want.atLeast(p.stack.sidePaths().get(stage), least));
  }

  /** Its strip would be deeper than half its length. */
  private static Problem narrow(StayParts p, double most) {
    String why =
        "narrow for its glued strip - make its tab " + p.shop.bearings().say(most) + " or less";
    return tooSmall(p, "tab", why).wanting(Want.atMost(p.v.path("tab"), most));
  }

  private static Problem tooSmall(StayParts p, String key, String why) {
    String message = p.name + ": this stage is too " + why + ", or use another stay";
    return p.v.problem("stay-too-small", p.name, key, message);
  }

  /** Of a side only its place matters: it is met along the flap's end. */
  private static Region side(Piece piece, String end) {
    Vec2 at =
        piece.labels().stream()
            .filter(l -> l.name().equals("side-" + end))
            .findFirst()
            .orElseThrow()
            .at();
    return Region.of(Ring.rectangle(at.x() - 1, at.y() - 1, at.x() + 1, at.y() + 1));
  }
}
