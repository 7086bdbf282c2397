package hingeleaf.fold.contact;

/**
 * The free corner of a door leaf that has a thickness and turns about a line in its front face
 * (elementary trigonometry).
 *
 * @param width from the leaf's hung edge to its free one, mm
 * @param thickness mm
 * @param offset from the line that it turns about to its hung edge, mm
 */
public record Corner(double width, double thickness, double offset) {
  private double far() {
    return width + offset;
  }

  /** What the rear corner of the free edge sweeps: sqrt((e + w)^2 + t^2), mm. */
  public double radius() {
    return Math.hypot(far(), thickness);
  }

  /** How much wider than the leaf its place must be for it to come out, mm. */
  public double clearance() {
    return radius() - far();
  }

  /** How far it is open when it needs that most, rad. */
  public double worst() {
    return Math.atan2(thickness, far());
  }

  /** How much of its place is clear at an opening of phi rad, mm. */
  public double clear(double phi) {
    return far() * (1 - Math.cos(phi));
  }

  /** Where the rear corner is at an opening of phi rad: along the shut leaf, and out of it, mm. */
  public double[] rear(double phi) {
    return new double[] {
      far() * Math.cos(phi) + thickness * Math.sin(phi),
      far() * Math.sin(phi) - thickness * Math.cos(phi)
    };
  }
}
