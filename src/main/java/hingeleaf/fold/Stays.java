package hingeleaf.fold;

import hingeleaf.card.Join;
import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.card.Stay;
import hingeleaf.geom.Rigid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The stays of a made card as the engine sees them: which panels and folds are theirs, where those
 * are when the stays are put away, and the mechanism in which what they catch holds.
 */
public final class Stays {
  private final MadeCard made;
  private final Map<Integer, Double> away = new LinkedHashMap<>();
  private final boolean[] panel;
  private final Rigid[] laid;
  private final boolean loose;

  private Stays(MadeCard made) {
    this.made = made;
    int n = made.panels().size();
    panel = new boolean[n];
    laid = new Rigid[n];
    Map<String, Stay> byPiece = new HashMap<>();
    made.card().stays().forEach(s -> byPiece.put(s.piece(), s));
    loose = made.card().stays().stream().anyMatch(Stay::loose);
    for (int i = 0; i < n; i++) {
      Stay s = byPiece.get(made.panels().get(i).piece());
      panel[i] = s != null;
      Rigid flat = s == null ? null : s.laid();
      laid[i] = flat == null ? Rigid.IDENTITY : made.panels().get(i).made().inverse().then(flat);
    }
    Map<String, Double> total = new HashMap<>();
    made.card().stays().forEach(s -> total.putAll(s.away()));
    for (int j = 0; j < made.mechanism().joints().size(); j++) {
      Joint joint = made.mechanism().joints().get(j);
      Double to = total.get(joint.id());
      if (to != null && joint instanceof Joint.Hinge h) {
        away.put(j, to - h.made());
      }
    }
  }

  public static Stays of(MadeCard made) {
    return new Stays(made);
  }

  /** Whether a panel, by index, is part of a stay. */
  public boolean has(int facet) {
    return panel[facet];
  }

  /** Whether a panel, by index, is part of a stay that is taken off. */
  public boolean loose(int facet) {
    return panel[facet] && laid[facet] != Rigid.IDENTITY;
  }

  /** Whether a joint, by index, is a fold of a stay. */
  public boolean folds(int joint) {
    return away.containsKey(joint);
  }

  /** The value of a stay's fold once it is put away, rad from the made pose. */
  public double away(int joint) {
    return away.getOrDefault(joint, 0.0);
  }

  /** How many folds the stays have that nothing else moves. */
  public int folds() {
    return away.size();
  }

  /** Joint values of the standing card with its stays put away. */
  public double[] released() {
    double[] q = new double[made.mechanism().joints().size()];
    away.forEach((j, value) -> q[j] = value);
    return q;
  }

  /** The same pose with loose stays laid where they are posted. */
  Posed laid(Posed posed) {
    return new Posed(laid(posed.motions()), posed.values(), posed.gap());
  }

  /** The same for motions alone, one for each panel. */
  List<Rigid> laid(List<Rigid> motions) {
    if (!loose) {
      return motions;
    }
    List<Rigid> all = new ArrayList<>(motions);
    for (int i = 0; i < laid.length; i++) {
      if (laid[i] != Rigid.IDENTITY) {
        all.set(i, laid[i]);
      }
    }
    return all;
  }

  /** The mechanism with everything held that its stays catch; the joints keep their indices. */
  public Mechanism set() {
    Mechanism m = made.mechanism();
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < made.panels().size(); i++) {
      index.put(made.panels().get(i).id(), i);
    }
    List<Mechanism.Bond> bonds = new ArrayList<>(m.bonds());
    for (Join j : made.card().joins()) {
      if (j instanceof Join.Passage p && caught(p.id())) {
        bonds.add(
            new Mechanism.Bond(
                at(index, p.tab().piece(), p.tab().panel()),
                at(index, p.slit().piece(), p.slit().panel())));
      }
    }
    return new Mechanism(m.facets(), m.joints(), bonds, m.fixed());
  }

  private static int at(Map<String, Integer> index, String piece, String name) {
    Integer i = index.get(piece + "/" + name);
    if (i == null) {
      throw new IllegalArgumentException("a stay catches " + piece + "/" + name + ", not there");
    }
    return i;
  }

  private boolean caught(String passage) {
    return made.card().stays().stream().anyMatch(s -> s.catches().contains(passage));
  }
}
