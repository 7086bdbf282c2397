package hingeleaf.paper.glb;

import hingeleaf.card.Embossing;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Posed;
import hingeleaf.geom.Rigid;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A made card, and its poses in time, as a GLB file. */
public final class CardGlb {
  private CardGlb() {}

  /**
   * The file's bytes.
   *
   * @param times in s, one for each pose; both empty for a still card in its made pose
   */
  public static byte[] write(MadeCard made, List<Double> times, List<Posed> poses) {
    if (times.size() != poses.size()) {
      throw new IllegalArgumentException(times.size() + " times for " + poses.size() + " poses");
    }
    List<Moment> moments = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      moments.add(new Moment(times.get(i), placed(made, poses.get(i))));
    }
    return GlbWriter.write(made.card().title(), solids(made), moments);
  }

  private static List<Rigid> placed(MadeCard made, Posed posed) {
    List<Rigid> poses = new ArrayList<>();
    for (int i = 0; i < made.panels().size(); i++) {
      poses.add(made.panels().get(i).made().then(posed.motions().get(i)));
    }
    return poses;
  }

  /** The panels as boards, in the card's order. */
  static List<Solid> solids(MadeCard made) {
    Map<String, Double> lifts = lifts(made);
    List<Solid> solids = new ArrayList<>();
    for (Panel p : made.panels()) {
      Piece piece = made.card().piece(p.piece());
      Stock stock = piece.stock();
      Optional<Embossing> pressed = piece.embossing();
      solids.add(
          new Solid(
              p.piece(),
              p.name(),
              p.region(),
              stock.thickness(),
              lifts.getOrDefault(p.id(), 0.0),
              stock.faces(),
              stock.clear(),
              p.made(),
              pressed.map(e -> e.pressed(p.region())).orElse(List.of()),
              pressed.map(Embossing::raises).orElse(0.0)));
    }
    return solids;
  }

  /**
   * How far glued panels lie off their own planes. Folding knows no thickness, so glued faces share
   * a plane; here the one that is laid on moves out by half of both papers, and by what a pattern
   * between them stands up, or the picture would flicker.
   */
  private static Map<String, Double> lifts(MadeCard made) {
    Map<String, Double> lifts = new LinkedHashMap<>();
    for (Join join : made.card().joins()) {
      if (join instanceof Join.Glue glue) {
        Patch a = glue.a();
        Patch b = glue.b();
        double apart = reach(made, a) + reach(made, b);
        double base = lifts.getOrDefault(id(b), 0.0);
        double outOfB = base * out(b.face()) + apart;
        // The glued faces look at each other, so out of b is into a.
        lifts.put(id(a), -outOfB * out(a.face()));
      }
    }
    return lifts;
  }

  private static double out(Face face) {
    return face == Face.FRONT ? 1 : -1;
  }

  /** From the middle of a panel's paper to the face that is glued; a pattern stands up in front. */
  private static double reach(MadeCard made, Patch p) {
    Piece piece = made.card().piece(p.piece());
    double half = piece.stock().thickness() / 2;
    return p.face() == Face.FRONT ? half + piece.thickness(p.panel()) - 2 * half : half;
  }

  private static String id(Patch p) {
    return p.piece() + "/" + p.panel();
  }
}
