package hingeleaf.sight;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Patch;
import hingeleaf.geom.Vec3;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which of the panels that share a plane lies nearer to the viewer, from the order of gluing.
 *
 * <p>A glued piece with scores lies on the face that it is glued to, over all such pieces glued
 * before it; its panels lie over each other, one more for each score from the glued one, for a side
 * folds up over the tab that holds it. A glued piece without scores lies over the panel that bears
 * it, later ones over earlier ones, whenever that panel itself finds its place.
 */
final class Layers {
  /** More than the joins and panels of any card, so that loose pieces stay over their panel. */
  private static final int STRIDE = 100_000;

  /** A normal with less than this along an axis is taken to have nothing along it. */
  private static final double LEVEL = 1e-6;

  private final Map<String, Placed> byId = new HashMap<>();
  private final Map<String, Integer> layers = new HashMap<>();
  private final Map<String, Loose> loose = new LinkedHashMap<>();

  private Layers(List<Placed> parts) {
    parts.forEach(p -> byId.put(p.id(), p));
  }

  /**
   * A piece without scores on the panel that bears it.
   *
   * @param order signed place of its glue among the joins, positive where it lies upwards
   */
  private record Loose(String on, int order) {}

  /** One layer for each part. */
  static List<Integer> of(Card card, List<Placed> parts) {
    Layers l = new Layers(parts);
    l.glue(card.joins());
    l.spread(parts);
    l.loose.keySet().forEach(id -> l.settle(id, new HashSet<>()));
    return parts.stream().map(p -> l.layers.getOrDefault(p.id(), 0)).toList();
  }

  private void glue(List<Join> joins) {
    int order = 0;
    for (Join join : joins) {
      order++;
      if (!(join instanceof Join.Glue glue)) {
        continue;
      }
      Placed base = byId.get(id(glue.b()));
      Placed top = byId.get(id(glue.a()));
      if (base == null || top == null) {
        continue;
      }
      int signed = sign(base, glue.b().face()) * order;
      if (top.piece().scores().isEmpty()) {
        loose.putIfAbsent(top.id(), new Loose(base.id(), signed));
      } else {
        layers.put(top.id(), signed * STRIDE);
      }
    }
  }

  private static String id(Patch patch) {
    return patch.piece() + "/" + patch.panel();
  }

  private static int sign(Placed base, Face face) {
    int out = upward(base.pose().normal()) ? 1 : -1;
    return face == Face.FRONT ? out : -out;
  }

  /** Whether a normal points to the side from which layers count upwards. */
  static boolean upward(Vec3 normal) {
    if (Math.abs(normal.z()) > LEVEL) {
      return normal.z() > 0;
    }
    return Math.abs(normal.y()) > LEVEL ? normal.y() > 0 : normal.x() > 0;
  }

  /** Gives the panels that hang on glued ones by scores their layers, nearest first. */
  private void spread(List<Placed> parts) {
    Map<String, Set<String>> panelsAt = new LinkedHashMap<>();
    Map<String, List<String>> foldsOf = new HashMap<>();
    for (Placed p : parts) {
      List<String> folds = folds(p);
      foldsOf.put(p.id(), folds);
      folds.forEach(f -> panelsAt.computeIfAbsent(f, k -> new LinkedHashSet<>()).add(p.id()));
    }
    Deque<String> next = new ArrayDeque<>();
    parts.stream().map(Placed::id).filter(layers::containsKey).forEach(next::add);
    while (!next.isEmpty()) {
      String from = next.remove();
      int layer = layers.getOrDefault(from, 0);
      for (String fold : foldsOf.getOrDefault(from, List.of())) {
        for (String to : panelsAt.getOrDefault(fold, Set.of())) {
          if (layers.putIfAbsent(to, layer + Integer.signum(layer)) == null) {
            next.add(to);
          }
        }
      }
    }
  }

  private static List<String> folds(Placed p) {
    return Rims.of(p).stream()
        .filter(r -> r.kind() == VisibleLine.Kind.FOLD)
        .map(r -> p.piece().id() + "/" + r.line())
        .distinct()
        .toList();
  }

  /** The layer of a panel, loose pieces after what bears them; {@code above} breaks rings. */
  private int settle(String id, Set<String> above) {
    Loose l = loose.get(id);
    Integer known = layers.get(id);
    if (known != null || l == null || !above.add(id)) {
      return known == null ? 0 : known;
    }
    int bearer = settle(l.on, above);
    int root = anchor(l.on, new HashSet<>());
    int layer =
        l.order > 0 ? Math.max(root + l.order, bearer + 1) : Math.min(root + l.order, bearer - 1);
    layers.put(id, layer);
    return layer;
  }

  /** The layer of the first panel with scores, or root, that bears a panel in the end. */
  private int anchor(String id, Set<String> seen) {
    Loose l = loose.get(id);
    if (l == null || !seen.add(id)) {
      return layers.getOrDefault(id, 0);
    }
    return anchor(l.on, seen);
  }
}
