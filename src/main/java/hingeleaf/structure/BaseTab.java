package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Score;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A base tab: glued behind the back at its lower edge, it runs forward under the frames. A tongue
 * for each frame stands up from it and is tucked into a slit in that frame's border, so that no
 * frame can move sideways. Pulled out, it folds up behind the back.
 */
final class BaseTab implements Structure {
  /** From a tongue's tip to the fold behind it: card tears where less is left; no source. */
  private static final double BEHIND_TONGUE_MM = 2;

  private static final Form FORM =
      StayParts.form(
          "base-tab",
          "a base tab",
          "a stay: a strip under the frames whose tongues are tucked into them",
          StayParts.edge("bottom, or left where the sides are at top and bottom"),
          StayParts.at(),
          FormField.length("width", Range.from(20, 500), "of the strip")
              .usually("40 mm", "1 1/2 in"),
          FormField.length("tongue", Range.from(4, 50), "length of the tongues")
              .usually("8 mm", "3/8 in"),
          StayParts.tab().usually("12 mm", "1/2 in"));

  @Override
  public Form form() {
    return FORM;
  }

  @Override
  public void build(Values v, Workshop shop) {
    StayParts.of(v, shop, "bottom", "left").ifPresent(p -> new Build(p).run());
  }

  private static final class Build {
    private final StayParts p;
    private final double width;
    private final double tongue;
    private final double tab;
    private final double deep;
    private final List<Segment> slits = new ArrayList<>();
    private final List<Score> scores = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final Map<String, Double> away = new LinkedHashMap<>();
    private final List<String> catches = new ArrayList<>();

    Build(StayParts p) {
      this.p = p;
      this.width = p.shop.mm(p.v, "width");
      this.tongue = p.shop.mm(p.v, "tongue");
      this.tab = p.shop.mm(p.v, "tab");
      this.deep = forward(p.stack.frames());
    }

    /** From the fold behind the back to a tongue in front of its frame, on the bench's marks. */
    private double forward(int frame) {
      double papers = (p.stack.papers().get(0) + p.stack.papers().get(frame)) / 2;
      return p.shop.bearings().nearest(p.stack.ahead(frame) + papers);
    }

    private double end() {
      return tongue + deep;
    }

    void run() {
      needs.add(StayParts.Need.of(p.layer(0), "its glued strip", width / 2, "tab", tab));
      fold("edge", 0, width, end(), -Math.PI);
      labels.add(new Label("tab", new Vec2(width / 2, end() + tab / 2)));
      double clear = deep - (p.stack.frames() > 1 ? forward(p.stack.frames() - 1) : 0);
      labels.add(new Label("base", new Vec2(width / 2, tongue + clear / 2)));
      boolean good = true;
      for (int k = 1; k < p.stack.frames(); k++) {
        good &= between(k);
      }
      last();
      if (!good || !p.room(needs)) {
        return;
      }
      Region shape = Region.of(Ring.rectangle(0, 0, width, end() + tab));
      if (p.piece(shape, slits, scores, labels, Grain.ANY)) {
        p.glueTab(Face.FRONT, new Box(0, end(), width, end() + tab), p.layer(0), Face.BACK, 0);
        links.forEach(Runnable::run);
        p.stay("base tab", catches, away, StayParts.PLAY_MM / 2);
      }
    }

    private final List<StayParts.Need> needs = new ArrayList<>();
    private final List<Runnable> links = new ArrayList<>();

    private void fold(String score, double x0, double x1, double y, double put) {
      scores.add(new Score(score, Segment.of(x0, y, x1, y), Math.PI / 2));
      away.put(p.name + "/" + score, put);
    }

    /** The end folds up in front of the foremost frame. */
    private void last() {
      fold("tongue", 0, width, tongue, 0);
      labels.add(new Label("tongue", new Vec2(width / 2, tongue / 2)));
      tucked("tongue", new Box(0, 0, width, tongue), p.front(), tongue);
    }

    /** A tongue cut out of the strip on three sides, folded up in front of its frame. */
    private boolean between(int k) {
      Surface frame = p.layer(k);
      double long_ = Math.min(tongue, p.stack.least().get(k - 1) - BEHIND_TONGUE_MM);
      double border = p.stock.leastBorder();
      if (long_ < StayParts.LEAST_TONGUE_MM || width - 2 * border < 2 * border) {
        p.shop
            .card()
            .report(
                p.v
                    .problem(
                        "stay-too-small",
                        p.name,
                        "width",
                        p.name
                            + ": no tongue for "
                            + frame.name()
                            + " can be cut from it - make it at least "
                            + p.shop.bearings().say(4 * border)
                            + " wide, and the sides at least "
                            + p.shop.bearings().say(StayParts.LEAST_TONGUE_MM + BEHIND_TONGUE_MM))
                    .wanting(
                        Want.atLeast(p.v.path("width"), 4 * border),
                        Want.atLeast(
                            p.stack.sidePaths().get(k - 1),
                            StayParts.LEAST_TONGUE_MM + BEHIND_TONGUE_MM)));
        return false;
      }
      String panel = "tongue-" + frame.name();
      double y = end() - forward(k);
      Box b = new Box(border, y, width - border, y + long_);
      slits.add(Segment.of(b.minX(), b.minY(), b.minX(), b.maxY()));
      slits.add(Segment.of(b.minX(), b.maxY(), b.maxX(), b.maxY()));
      slits.add(Segment.of(b.maxX(), b.minY(), b.maxX(), b.maxY()));
      fold(panel, b.minX(), b.maxX(), y, 0);
      labels.add(new Label(panel, b.centre()));
      tucked(panel, b, frame, long_);
      return true;
    }

    /** A slit at half the tongue's height, a little longer than the tongue is wide. */
    private void tucked(String panel, Box own, Surface frame, double high) {
      double half = (own.width() + StayParts.PLAY_MM) / 2;
      double slit = high / 2;
      needs.add(StayParts.Need.slit(frame, "the slit for its tongue", half, "tongue", high));
      links.add(
          () -> {
            p.slit(frame, new Segment(p.point(frame, -half, slit), p.point(frame, half, slit)));
            Region area = p.area(frame, half, 0, high);
            catches.add(p.catches(panel, own, frame.piece(), frame.panel(), area));
          });
    }
  }
}
