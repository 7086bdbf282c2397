package hingeleaf.sight;

import hingeleaf.card.Ink;
import hingeleaf.geom.Region;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of a part a view shows.
 *
 * @param part id of a panel, or name of an ink
 * @param piece id of the piece
 * @param kind PAPER, WINDOW or INK
 * @param area what is seen of it, in mm2 on the piece (not foreshortened)
 * @param share of its whole area, 0 to 1; one face of a panel is its whole
 */
public record Seen(String part, String piece, VisiblePolygon.Kind kind, double area, double share) {

  /**
   * Every panel and every ink of a scene, hidden ones with 0, in the scene's order; an ink that
   * runs over several panels is one entry.
   *
   * @param view of the same scene
   */
  public static List<Seen> of(Scene scene, View view) {
    Map<String, Double> areas = new LinkedHashMap<>();
    for (VisiblePolygon p : view.polygons()) {
      areas.merge(key(p.kind(), p.piece(), p.part()), p.onPiece().area(), Double::sum);
    }
    List<Seen> out = new ArrayList<>();
    Map<String, Seen> inks = new LinkedHashMap<>();
    for (Placed p : scene.parts()) {
      boolean clear = p.piece().stock().clear();
      var kind = clear ? VisiblePolygon.Kind.WINDOW : VisiblePolygon.Kind.PAPER;
      out.add(entry(p.id(), p.piece().id(), kind, areas, p.panel().region().area()));
      for (Ink ink : p.piece().inks()) {
        double whole = ink.regions().stream().mapToDouble(Region::area).sum();
        Seen seen = entry(ink.name(), p.piece().id(), VisiblePolygon.Kind.INK, areas, whole);
        inks.put(p.piece().id() + "/" + ink.name(), seen);
      }
    }
    out.addAll(inks.values());
    return out;
  }

  private static Seen entry(
      String part,
      String piece,
      VisiblePolygon.Kind kind,
      Map<String, Double> areas,
      double whole) {
    double area = areas.getOrDefault(key(kind, piece, part), 0.0);
    return new Seen(part, piece, kind, area, whole > 0 ? Math.min(1, area / whole) : 0);
  }

  private static String key(VisiblePolygon.Kind kind, String piece, String part) {
    return kind + "/" + piece + "/" + part;
  }
}
