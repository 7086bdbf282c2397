package hingeleaf.fold;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Misfit;
import hingeleaf.card.Panel;
import hingeleaf.card.PanelLayout;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Folds a card's pieces at their nominal angles, from the roots outwards, along the joins in their
 * order.
 *
 * <p>A piece is placed by the first glue that reaches it and folded whole from there; every further
 * glue closes a loop, and how badly its patches then meet is its misfit. Roots first, then joins in
 * the card's order, again and again until nothing more is reached.
 */
public final class FoldForward {
  /** Patches that miss by less have met, mm. */
  private static final double MEETS_MM = 1e-9;

  private static final long SETTLING_STEPS = 4_000_000;

  private final Card card;
  private final Map<String, PanelLayout> layouts = new LinkedHashMap<>();
  private final Map<String, Rigid[]> placed = new HashMap<>();
  private final List<Misfit> misfits = new ArrayList<>();

  private FoldForward(Card card) {
    this.card = card;
    card.pieces().forEach(p -> layouts.put(p.id(), PanelLayout.of(p)));
  }

  /**
   * The made card.
   *
   * @throws IllegalArgumentException if a piece is reached by no join, or a join names what the
   *     card has not: faults of the structure that made the card
   */
  public static MadeCard of(Card card) {
    FoldForward folding = new FoldForward(card);
    folding.place();
    return folding.made();
  }

  private void place() {
    for (Card.Root root : card.roots()) {
      foldOut(root.piece(), root.panel(), root.pose());
    }
    List<Join> open = new ArrayList<>(card.joins());
    boolean moved = true;
    while (moved) {
      moved = false;
      for (var it = open.iterator(); it.hasNext(); ) {
        if (close(it.next())) {
          it.remove();
          moved = true;
        }
      }
    }
    for (Piece p : card.pieces()) {
      if (!placed.containsKey(p.id())) {
        throw new IllegalArgumentException("no join holds the piece " + p.id());
      }
    }
  }

  /** Whether the join has been dealt with: it placed a piece, or it closed a loop. */
  private boolean close(Join join) {
    return join.match(
        g -> closeGlue(g.id(), g.a(), g.b(), g.raisedBy()),
        s -> closeGlue(s.id(), s.strip(), s.guide(), 0),
        p -> closeGlue(p.id(), p.wheel(), p.seat(), 0),
        passage -> true);
  }

  private boolean closeGlue(String id, Patch a, Patch b, double raisedBy) {
    Rigid poseA = pose(a);
    Rigid poseB = pose(b);
    if (poseA == null && poseB == null) {
      return false;
    }
    if (poseA == null && poseB != null) {
      foldOut(a.piece(), a.panel(), laidOn(a, b, poseB, raisedBy));
    } else if (poseB == null && poseA != null) {
      foldOut(b.piece(), b.panel(), laidOn(b, a, poseA, raisedBy));
    } else if (poseA != null && poseB != null) {
      misfits.add(misfit(id, a, poseA, laidOn(a, b, poseB, raisedBy)));
    }
    return true;
  }

  private @Nullable Rigid pose(Patch patch) {
    Rigid[] poses = placed.get(patch.piece());
    return poses == null ? null : poses[layout(patch.piece()).index(patch.panel())];
  }

  private PanelLayout layout(String piece) {
    PanelLayout layout = layouts.get(piece);
    if (layout == null) {
      throw new IllegalArgumentException("the card has no piece " + piece);
    }
    return layout;
  }

  /**
   * Where a's piece lies when its patch is laid on b's: origins and directions meet, faces kiss.
   */
  static Rigid laidOn(Patch a, Patch b, Rigid poseB, double raisedBy) {
    Vec3 outOfB = poseB.normal().times(b.face() == Face.FRONT ? 1 : -1);
    Vec3 along = poseB.turn(new Vec3(b.along().x(), b.along().y(), 0));
    Vec3 at = poseB.apply(b.origin()).plus(outOfB.times(raisedBy));
    Vec3 outOfA = outOfB.times(-1);
    Rigid world = Rigid.frame(at, along, outOfA.cross(along), outOfA);
    Vec3 normal = new Vec3(0, 0, a.face() == Face.FRONT ? 1 : -1);
    Vec3 x = new Vec3(a.along().x(), a.along().y(), 0);
    Vec3 origin = new Vec3(a.origin().x(), a.origin().y(), 0);
    return Rigid.frame(origin, x, normal.cross(x), normal).inverse().then(world);
  }

  private static Misfit misfit(String id, Patch a, Rigid is, Rigid wanted) {
    double gap = 0;
    for (Vec2 p : a.area().outer().points()) {
      gap = Math.max(gap, is.apply(p).distance(wanted.apply(p)));
    }
    double sine = is.normal().cross(wanted.normal()).length();
    return new Misfit(id, gap, Math.atan2(sine, is.normal().dot(wanted.normal())));
  }

  /** Folds a whole piece from one placed panel, over all its scores. */
  private void foldOut(String piece, String panel, Rigid pose) {
    PanelLayout layout = layout(piece);
    Rigid[] poses = new Rigid[layout.panels().size()];
    poses[layout.index(panel)] = pose;
    boolean moved = true;
    while (moved) {
      moved = false;
      for (PanelLayout.Fold f : layout.folds()) {
        if ((poses[f.left()] == null) != (poses[f.right()] == null)) {
          turnOver(poses, f);
          moved = true;
        }
      }
    }
    placed.put(piece, poses);
  }

  /**
   * Seen on the front, the left panel of a score turns by the fold angle about the score's
   * direction relative to the right one, right-handed: a valley lifts it towards the viewer.
   */
  private static void turnOver(Rigid[] poses, PanelLayout.Fold f) {
    Vec2 p = f.score().at().from();
    Vec2 q = f.score().at().to();
    Vec3 from = new Vec3(p.x(), p.y(), 0);
    Vec3 to = new Vec3(q.x(), q.y(), 0);
    double angle = f.score().made();
    if (poses[f.left()] == null) {
      poses[f.left()] = Rigid.rotation(from, to, angle).then(poses[f.right()]);
    } else {
      poses[f.right()] = Rigid.rotation(from, to, -angle).then(poses[f.left()]);
    }
  }

  private MadeCard made() {
    List<Panel> panels = new ArrayList<>();
    List<Mechanism.Facet> facets = new ArrayList<>();
    List<Joint> joints = new ArrayList<>();
    Map<String, Integer> indexOf = new HashMap<>();
    for (PanelLayout layout : layouts.values()) {
      Piece piece = layout.piece();
      Rigid[] poses = placed(piece.id());
      int first = panels.size();
      for (int i = 0; i < poses.length; i++) {
        PanelLayout.FlatPanel flat = layout.panels().get(i);
        Panel panel = new Panel(piece.id(), flat.name(), flat.region(), poses[i]);
        indexOf.put(panel.id(), panels.size());
        panels.add(panel);
        facets.add(facet(panel, piece));
      }
      layout.folds().forEach(f -> joints.add(hinge(piece, f, first, poses)));
    }
    List<Mechanism.Bond> bonds = new ArrayList<>();
    card.joins().forEach(j -> tie(j, indexOf, joints, bonds));
    List<Integer> fixed =
        card.roots().stream().map(r -> index(indexOf, r.piece(), r.panel())).toList();
    misfits.sort(Comparator.comparingDouble(Misfit::gap).reversed());
    return settled(
        new MadeCard(card, panels, new Mechanism(facets, joints, bonds, fixed), misfits));
  }

  /** Where glue does not meet at the nominal angles, the card comes to stand as its loops close. */
  private MadeCard settled(MadeCard nominal) {
    List<Settling.Seat> seats = seats();
    if (seats.isEmpty()) {
      return nominal;
    }
    Settling.Settled s = Settling.settle(nominal.mechanism(), seats, Budget.of(SETTLING_STEPS));
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < nominal.panels().size(); i++) {
      Panel p = nominal.panels().get(i);
      Rigid motion = s.posed().motions().get(i);
      panels.add(new Panel(p.piece(), p.name(), p.region(), p.made().then(motion)));
    }
    return new MadeCard(card, panels, s.mechanism(), misfits);
  }

  /** One for each glue that misses by more than rounding. */
  private List<Settling.Seat> seats() {
    List<Settling.Seat> seats = new ArrayList<>();
    int bond = 0;
    for (Join j : card.joins()) {
      if (j instanceof Join.Glue g) {
        int here = bond++;
        if (misfits.stream().anyMatch(m -> m.glue().equals(g.id()) && m.gap() > MEETS_MM)) {
          seats.add(new Settling.Seat(here, broughtTo(g)));
        }
      }
    }
    return seats;
  }

  /** From where the second panel of a glue stands to where its patch meets the first one's. */
  private Rigid broughtTo(Join.Glue g) {
    Rigid wanted = laidOn(g.b(), g.a(), placedPose(g.a()), g.raisedBy());
    return placedPose(g.b()).inverse().then(wanted);
  }

  private Rigid[] placed(String piece) {
    Rigid[] poses = placed.get(piece);
    if (poses == null) {
      throw new IllegalStateException(piece + " was not placed");
    }
    return poses;
  }

  private static Mechanism.Facet facet(Panel panel, Piece piece) {
    Rigid pose = panel.made();
    return new Mechanism.Facet(
        panel.id(),
        panel.region().outer().points().stream().map(pose::apply).toList(),
        panel.region().holes().stream()
            .map(h -> h.points().stream().map(pose::apply).toList())
            .toList(),
        piece.thickness(panel.name()));
  }

  private static Joint hinge(Piece piece, PanelLayout.Fold f, int first, Rigid[] poses) {
    Rigid pose = poses[f.right()];
    return new Joint.Hinge(
        piece.id() + "/" + f.score().name(),
        first + f.right(),
        first + f.left(),
        pose.apply(f.score().at().from()),
        pose.apply(f.score().at().to()),
        f.score().made());
  }

  /** Adds what the join does to the mechanism; a passage constrains nothing. */
  private void tie(
      Join join, Map<String, Integer> indexOf, List<Joint> joints, List<Mechanism.Bond> bonds) {
    join.<Boolean>match(
        g -> bonds.add(bond(g, indexOf)),
        s -> joints.add(slider(s, indexOf)),
        p -> joints.add(pivot(p, indexOf)),
        passage -> false);
  }

  private static Mechanism.Bond bond(Join.Glue g, Map<String, Integer> indexOf) {
    return new Mechanism.Bond(
        index(indexOf, g.a().piece(), g.a().panel()), index(indexOf, g.b().piece(), g.b().panel()));
  }

  private Joint slider(Join.Slide s, Map<String, Integer> indexOf) {
    int guide = index(indexOf, s.guide().piece(), s.guide().panel());
    Rigid pose = placedPose(s.guide());
    Vec3 along = pose.turn(new Vec3(s.guide().along().x(), s.guide().along().y(), 0));
    int strip = index(indexOf, s.strip().piece(), s.strip().panel());
    return new Joint.Slider(s.id(), guide, strip, along, s.from(), s.to());
  }

  private Joint pivot(Join.Pin p, Map<String, Integer> indexOf) {
    int seat = index(indexOf, p.seat().piece(), p.seat().panel());
    Rigid pose = placedPose(p.seat());
    int wheel = index(indexOf, p.wheel().piece(), p.wheel().panel());
    return new Joint.Pivot(
        p.id(), seat, wheel, pose.apply(p.seat().origin()), pose.normal(), p.from(), p.to());
  }

  private Rigid placedPose(Patch patch) {
    return placed(patch.piece())[layout(patch.piece()).index(patch.panel())];
  }

  private static int index(Map<String, Integer> indexOf, String piece, String panel) {
    Integer i = indexOf.get(piece + "/" + panel);
    if (i == null) {
      throw new IllegalArgumentException("the card has no panel " + piece + "/" + panel);
    }
    return i;
  }
}
