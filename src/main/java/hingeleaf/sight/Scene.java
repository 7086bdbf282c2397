package hingeleaf.sight;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Posed;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Panels in space, ready to be looked at: a whole card, or what there is of it at one step.
 *
 * @param parts in the card's order; ties of panels in one plane and one layer go to the later
 */
public record Scene(List<Placed> parts) {
  public Scene {
    parts = List.copyOf(parts);
  }

  /** A card as it stands when made. */
  public static Scene of(MadeCard made) {
    return of(made.card(), made.panels(), made.panels().stream().map(Panel::made).toList());
  }

  /**
   * A card at another moment of its motion.
   *
   * @param posed with one motion for each of the card's panels
   */
  public static Scene of(MadeCard made, Posed posed) {
    List<Rigid> poses = new ArrayList<>();
    for (int i = 0; i < made.panels().size(); i++) {
      poses.add(made.panels().get(i).made().then(posed.motions().get(i)));
    }
    return of(made.card(), made.panels(), poses);
  }

  /**
   * A card pressed flat, as it is drawn: foam takes no height, so that what stands on foam does not
   * come through the layers that lie over it.
   */
  public static Scene pressed(MadeCard made, Posed posed) {
    Rigid[] poses = new Rigid[made.panels().size()];
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < poses.length; i++) {
      poses[i] = made.panels().get(i).made().then(posed.motions().get(i));
      index.put(made.panels().get(i).id(), i);
    }
    for (Join join : made.card().joins()) {
      join.<Boolean>match(g -> lower(g, poses, index), s -> false, p -> false, p -> false);
    }
    return of(made.card(), made.panels(), List.of(poses));
  }

  /** Lowers a raised part onto what bears it; the part's piece has no folds, so nothing follows. */
  private static boolean lower(Join.Glue g, Rigid[] poses, Map<String, Integer> index) {
    Integer part = index.get(g.a().piece() + "/" + g.a().panel());
    Integer base = index.get(g.b().piece() + "/" + g.b().panel());
    if (g.raisedBy() <= 0 || part == null || base == null) {
      return false;
    }
    double out = g.b().face() == Face.FRONT ? 1 : -1;
    Vec3 down = poses[base].normal().times(-out * g.raisedBy());
    poses[part] = poses[part].then(Rigid.translation(down));
    return true;
  }

  /**
   * Any panels of a card anywhere. What is glued on a face lies over it, later glues over earlier
   * ones.
   *
   * @param card gives pieces and joins; joins of panels that are not there are passed over
   * @param panels all or some of its panels
   * @param poses one for each panel
   * @throws IllegalArgumentException if the counts differ or the card lacks a panel's piece
   */
  public static Scene of(Card card, List<Panel> panels, List<Rigid> poses) {
    if (panels.size() != poses.size()) {
      throw new IllegalArgumentException(panels.size() + " panels have " + poses.size() + " poses");
    }
    List<Placed> parts = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      Panel panel = panels.get(i);
      parts.add(new Placed(card.piece(panel.piece()), panel, poses.get(i), 0));
    }
    return new Scene(parts).withLayers(Layers.of(card, parts));
  }

  /** The same with layers told by somebody who knows better, such as the order of a flat pile. */
  public Scene withLayers(List<Integer> layers) {
    List<Placed> now = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Placed p = parts.get(i);
      now.add(new Placed(p.piece(), p.panel(), p.pose(), layers.get(i)));
    }
    return new Scene(now);
  }

  /**
   * The same with curves drawn with fewer points, for small pictures, which it makes several times
   * faster.
   *
   * @param distance how far a line may be from its true place, mm
   */
  public Scene coarser(double distance) {
    List<Placed> now = new ArrayList<>();
    for (Placed p : parts) {
      Panel fine = p.panel();
      Region region = Overlay.coarser(fine.region(), distance);
      Panel panel = new Panel(fine.piece(), fine.name(), region, fine.made());
      now.add(new Placed(p.piece(), panel, p.pose(), p.layer()));
    }
    return new Scene(now);
  }

  /** Only some of the parts. */
  public Scene keeping(Predicate<Placed> which) {
    return new Scene(parts.stream().filter(which).toList());
  }
}
