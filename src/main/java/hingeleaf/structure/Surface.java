package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.card.Patch;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Stock;
import java.util.List;

/**
 * A named panel that further parts may be fixed to.
 *
 * @param name what the design calls it, such as {@code back} or a frame's name
 * @param piece id of the piece
 * @param panel name of the panel in the piece
 * @param box the panel, apertures not taken out, in piece coordinates
 * @param openings its apertures, in piece coordinates
 * @param frontStrips where glue tabs land on its front
 * @param stock what it is cut from
 * @param order how far forward it stands; 0 is the back
 */
public record Surface(
    String name,
    String piece,
    String panel,
    Box box,
    List<Ring> openings,
    List<Box> frontStrips,
    Stock stock,
    int order) {
  public Surface {
    openings = List.copyOf(openings);
    frontStrips = List.copyOf(frontStrips);
  }

  public Region material() {
    return new Region(Ring.rectangle(box.minX(), box.minY(), box.maxX(), box.maxY()), openings);
  }

  /** A point given from the panel's centre, in piece coordinates. */
  public Vec2 point(Vec2 fromCentre) {
    return box.centre().plus(fromCentre);
  }

  /** A patch on this panel with its frame at a point given from the centre. */
  public Patch patch(Face face, Region area, Vec2 fromCentre, Vec2 along) {
    return new Patch(piece, panel, face, area, point(fromCentre), along);
  }

  /** This surface with one more strip taken by a glue tab. */
  public Surface withStrip(Box strip) {
    List<Box> more = new java.util.ArrayList<>(frontStrips);
    more.add(strip);
    return new Surface(name, piece, panel, box, openings, more, stock, order);
  }
}
