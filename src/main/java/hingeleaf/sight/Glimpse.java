package hingeleaf.sight;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Whether a shape shows behind others, told by a spot that nothing hides: a round one that fits
 * beside all that lies before the shape. A few places are tried, and nothing is built.
 */
final class Glimpse {
  private final Polygon shape;
  private final List<Polygon> hiders;
  private final double radius;

  private Glimpse(Polygon shape, List<Polygon> hiders, double radius) {
    this.shape = shape;
    this.hiders = hiders;
    this.radius = radius;
  }

  /**
   * True only if what the others leave of a shape is of so much area; where that is in doubt,
   * false.
   *
   * @param area mm2, more than 0
   */
  static boolean sure(Polygon shape, List<Polygon> hiders, double area) {
    Glimpse glimpse = new Glimpse(shape, hiders, Math.sqrt(area / Math.PI));
    return glimpse.places().stream().anyMatch(glimpse::free);
  }

  /** The middle of the shape, and halfway and three quarters of the way to each of its corners. */
  private List<Coordinate> places() {
    Coordinate middle = shape.getInteriorPoint().getCoordinate();
    List<Coordinate> places = new ArrayList<>(List.of(middle));
    for (double share : new double[] {0.75, 0.5}) {
      for (Coordinate c : shape.getExteriorRing().getCoordinates()) {
        double x = middle.x + share * (c.x - middle.x);
        places.add(new Coordinate(x, middle.y + share * (c.y - middle.y)));
      }
    }
    return places;
  }

  private boolean free(Coordinate at) {
    if (!Apart.holds(shape, at) || near(shape, at)) {
      return false;
    }
    Envelope spot = new Envelope(at);
    spot.expandBy(radius);
    for (Polygon hider : hiders) {
      if (hider.getEnvelopeInternal().intersects(spot)
          && (near(hider, at) || Apart.holds(hider, at))) {
        return false;
      }
    }
    return true;
  }

  /** Whether an edge comes nearer than the spot's edge. */
  private boolean near(Polygon p, Coordinate at) {
    for (int k = -1; k < p.getNumInteriorRing(); k++) {
      Coordinate[] ring = (k < 0 ? p.getExteriorRing() : p.getInteriorRingN(k)).getCoordinates();
      if (Distance.pointToSegmentString(at, ring) <= radius) {
        return true;
      }
    }
    return false;
  }
}
