package hingeleaf.web;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Ink;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Posed;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec3;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The card for the eye: its panels as cut, where each lies in the made card, and its papers. */
final class SceneJson {
  private final JsonOut out;
  private final MadeCard made;
  private final Map<String, Double> lifts = new HashMap<>();

  private SceneJson(JsonOut out, MadeCard made) {
    this.out = out;
    this.made = made;
  }

  /** Panels in mm; poses as twelve numbers, the rows of the rotation and then the shift. */
  static void write(JsonOut out, Pack pack) {
    SceneJson scene = new SceneJson(out, pack.made());
    scene.lift(pack.card());
    out.each("pieces", pack.card().pieces(), scene::piece);
    out.each("panels", pack.made().panels(), scene::panel);
  }

  /**
   * The reckoning knows no thickness, so panels that are glued together lie in one plane; here each
   * is set upon the one that holds it.
   */
  private void lift(Card card) {
    for (Join j : card.joins()) {
      j.<Boolean>match(g -> lift(card, g.a(), g.b()), s -> false, p -> false, p -> false);
    }
  }

  private boolean lift(Card card, Patch a, Patch b) {
    Piece on = card.piece(a.piece());
    double half = (on.stock().thickness() + card.piece(b.piece()).stock().thickness()) / 2;
    String below = b.piece() + "/" + b.panel();
    double out = a.face() == Face.FRONT ? -1 : 1;
    double carried = lifts.getOrDefault(below, 0.0) * (b.face() == Face.FRONT ? 1 : -1);
    double by = out * (half + Math.max(0, carried));
    Panel glued = panel(a.piece() + "/" + a.panel());
    for (Panel p : made.panels()) {
      if (p.piece().equals(a.piece()) && together(glued.made(), p.made())) {
        lifts.put(p.id(), by);
      }
    }
    return true;
  }

  private Panel panel(String id) {
    return made.panels().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  /** Whether two panels of a piece lie in one plane: a leaf with its strip is lifted whole. */
  private static boolean together(Rigid a, Rigid b) {
    Vec3 n = a.normal();
    return n.minus(b.normal()).length() < 1e-9
        && Math.abs(n.dot(a.apply(Vec3.ZERO).minus(b.apply(Vec3.ZERO)))) < 1e-9;
  }

  private void piece(Piece p) {
    out.put("id", p.id()).put("name", p.name()).put("origin", p.origin());
    out.put("stock", p.stock().title()).put("thickness", p.stock().thickness());
    out.put("clear", p.stock().clear());
    out.put("front", p.stock().faces().front()).put("back", p.stock().faces().back());
    out.put("core", p.stock().faces().core());
  }

  private void panel(Panel p) {
    Piece piece = made.card().piece(p.piece());
    out.put("piece", p.piece()).put("name", p.name());
    out.put("lift", lifts.getOrDefault(p.id(), 0.0));
    out.list("shape", () -> rings(p.region()));
    out.list("made", () -> pose(out, p.made()));
    List<Ink> inks = piece.inks();
    out.each("inks", inks, i -> ink(i, p.region()));
  }

  private void ink(Ink ink, Region panel) {
    out.put("colour", ink.colour())
        .put("back", ink.face() == Face.BACK)
        .put("origin", ink.origin());
    List<Region> here = new ArrayList<>();
    for (Region r : ink.regions()) {
      if (panel.box().grown(0.01).union(r.box()).width() <= panel.box().width() + 0.1) {
        here.add(r);
      }
    }
    out.list("regions", () -> here.forEach(r -> out.item(() -> rings(r))));
  }

  private void rings(Region r) {
    rings(out, r);
  }

  /** The outer ring and the holes, x and y after each other. */
  static void rings(JsonOut out, Region r) {
    ring(out, r.outer());
    r.holes().forEach(h -> ring(out, h));
  }

  private static void ring(JsonOut out, Ring ring) {
    out.item(
        () ->
            ring.points()
                .forEach(
                    p -> {
                      out.number(p.x());
                      out.number(p.y());
                    }));
  }

  private static void pose(JsonOut out, Rigid m) {
    double[] all = {m.xx(), m.xy(), m.xz(), m.yx(), m.yy(), m.yz(), m.zx(), m.zy(), m.zz()};
    for (double d : all) {
      out.number(d);
    }
    out.number(m.shift().x());
    out.number(m.shift().y());
    out.number(m.shift().z());
  }

  /** How each panel moves: the motions that occur, once each, and which panel follows which. */
  static void motion(JsonOut out, List<Posed> poses, int panels) {
    Map<List<Rigid>, Integer> known = new LinkedHashMap<>();
    List<Integer> follows = new ArrayList<>();
    for (int i = 0; i < panels; i++) {
      int panel = i;
      List<Rigid> path = poses.stream().map(p -> p.motions().get(panel)).toList();
      follows.add(known.computeIfAbsent(path, k -> known.size()));
    }
    out.list("follows", () -> follows.forEach(f -> out.number(f)));
    out.list(
        "paths",
        () ->
            known
                .keySet()
                .forEach(path -> out.item(() -> path.forEach(m -> out.item(() -> pose(out, m))))));
  }
}
