package hingeleaf.paper;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.structure.Lettering;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Words as inked shapes, from the outlines of the house face. */
public final class Letters implements Lettering {
  private final Fonts fonts;
  private final double capHeight;

  /** Lettering in the semibold cut of a face. */
  public Letters(Fonts fonts) {
    this.fonts = fonts;
    this.capHeight = fonts.outline("H", Weight.SEMIBOLD).getBounds2D().getHeight();
  }

  @Override
  public List<Region> letters(String text, double height) {
    double size = height / capHeight;
    double half = fonts.width(text, Weight.SEMIBOLD, size) / 2;
    List<Ring> rings = new ArrayList<>();
    for (Ring r : rings(fonts.outline(text, Weight.SEMIBOLD), Tolerance.CHORD_MM / size)) {
      rings.add(r.map(p -> new Vec2(size * p.x() - half, size * p.y() - height / 2)));
    }
    return regions(rings);
  }

  @Override
  public boolean lacks(String text) {
    return fonts.lacks(text);
  }

  private static List<Ring> rings(GeneralPath path, double chord) {
    List<Ring> rings = new ArrayList<>();
    List<Vec2> points = new ArrayList<>();
    double[] c = new double[6];
    for (PathIterator it = path.getPathIterator(null, chord); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind != PathIterator.SEG_LINETO) {
        close(points, rings);
      }
      if (kind != PathIterator.SEG_CLOSE) {
        points.add(new Vec2(c[0], c[1]));
      }
    }
    close(points, rings);
    return rings;
  }

  private static void close(List<Vec2> points, List<Ring> rings) {
    if (points.size() > 3 && points.get(0).distance(points.get(points.size() - 1)) < 1e-9) {
      points.remove(points.size() - 1);
    }
    if (points.size() >= 3) {
      rings.add(new Ring(points));
    }
    points.clear();
  }

  /** Counters of letters are the rings that lie inside another; letters do not nest deeper. */
  private static List<Region> regions(List<Ring> rings) {
    List<Region> regions = new ArrayList<>();
    for (Ring outer : rings) {
      if (rings.stream().noneMatch(o -> o != outer && holds(o, outer))) {
        regions.add(
            new Region(outer, rings.stream().filter(h -> h != outer && holds(outer, h)).toList()));
      }
    }
    return regions;
  }

  private static boolean holds(Ring outer, Ring inner) {
    return outer.contains(inner.points().get(0));
  }
}
