package hingeleaf.web;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.fold.contact.Swing;
import hingeleaf.geom.Vec3;
import hingeleaf.pack.Pack;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** How far each door opens, and what of the scene turns about which line when it does. */
final class DoorsJson {
  private final Mechanism mechanism;
  private final Pack pack;

  private DoorsJson(Pack pack) {
    this.pack = pack;
    this.mechanism = pack.made().mechanism();
  }

  static String text(Pack pack) {
    DoorsJson doors = new DoorsJson(pack);
    List<Swing> hung =
        pack.swings().stream().filter(s -> doors.hinge(doors.index(s.leaf())).isPresent()).toList();
    return JsonOut.object(
        out ->
            out.each(
                "doors",
                hung,
                s -> {
                  int leaf = doors.index(s.leaf());
                  doors.hinge(leaf).ifPresent(h -> doors.one(out, s, leaf, h));
                }));
  }

  private void one(JsonOut out, Swing s, int leaf, Joint.Hinge h) {
    String name = s.door().substring(s.door().lastIndexOf('/') + 1);
    out.put("name", name).put("words", words(s));
    out.list("panels", () -> turning(leaf, h).forEach(i -> out.number(i)));
    out.list("from", () -> point(out, h.from()));
    out.list("to", () -> point(out, h.to()));
    out.put("opens", towards(leaf, h) * s.opens());
  }

  private static void point(JsonOut out, Vec3 p) {
    out.number(p.x());
    out.number(p.y());
    out.number(p.z());
  }

  private String words(Swing s) {
    String against = s.against();
    if (against == null) {
      return "opens all the way";
    }
    return "opens "
        + Math.round(Math.toDegrees(s.opens()))
        + " degrees, until it meets "
        + pack.words(against);
  }

  private int index(String panel) {
    for (int i = 0; i < mechanism.facets().size(); i++) {
      if (mechanism.facets().get(i).id().equals(panel)) {
        return i;
      }
    }
    throw new IllegalStateException("the card has no " + panel);
  }

  /** The fold on which a leaf hangs, flat in the made card. */
  private Optional<Joint.Hinge> hinge(int leaf) {
    return mechanism.joints().stream()
        .filter(Joint.Hinge.class::isInstance)
        .map(Joint.Hinge.class::cast)
        .filter(h -> h.made() == 0 && (h.a() == leaf || h.b() == leaf))
        .findFirst();
  }

  /** All that moves with a leaf: what is glued to it or folds on it, but not across its hinge. */
  private TreeSet<Integer> turning(int leaf, Joint.Hinge hinge) {
    TreeSet<Integer> all = new TreeSet<>(List.of(leaf));
    Deque<Integer> todo = new ArrayDeque<>(all);
    while (!todo.isEmpty()) {
      int at = todo.remove();
      for (Mechanism.Bond b : mechanism.bonds()) {
        reach(at, b.a(), b.b(), all, todo);
      }
      for (Joint j : mechanism.joints()) {
        if (!j.equals(hinge)) {
          reach(at, j.a(), j.b(), all, todo);
        }
      }
    }
    return all;
  }

  private static void reach(int at, int a, int b, TreeSet<Integer> all, Deque<Integer> todo) {
    if (a == at && all.add(b)) {
      todo.add(b);
    } else if (b == at && all.add(a)) {
      todo.add(a);
    }
  }

  /** 1 where turning right-handed about the fold brings the leaf towards the viewer, else -1. */
  private int towards(int leaf, Joint.Hinge h) {
    Vec3 middle = Vec3.ZERO;
    List<Vec3> outline = mechanism.facets().get(leaf).outline();
    for (Vec3 p : outline) {
      middle = middle.plus(p.times(1.0 / outline.size()));
    }
    return h.to().minus(h.from()).cross(middle.minus(h.from())).z() >= 0 ? 1 : -1;
  }
}
