package hingeleaf.card;

import hingeleaf.geom.Vec3;
import java.util.List;

/**
 * Rigid flat panels, the joints between them and what is glued, in a reference pose.
 *
 * <p>This is all that a solver sees: zero-thickness sheets through the score lines.
 *
 * @param facets the panels, in the reference pose
 * @param joints folds, sliders, pivots
 * @param bonds pairs of facets that move as one
 * @param fixed facets that stand still, one for each root; at least one
 */
public record Mechanism(
    List<Facet> facets, List<Joint> joints, List<Bond> bonds, List<Integer> fixed) {
  public Mechanism {
    facets = List.copyOf(facets);
    joints = List.copyOf(joints);
    bonds = List.copyOf(bonds);
    fixed = List.copyOf(fixed);
  }

  /**
   * A rigid flat panel in space.
   *
   * @param id unique in the mechanism
   * @param outline at least three points in one plane; anticlockwise seen on its front
   * @param holes rings in the same plane
   * @param thickness mm, for contact and piles only; 0 where unknown
   */
  public record Facet(String id, List<Vec3> outline, List<List<Vec3>> holes, double thickness) {
    public Facet {
      outline = List.copyOf(outline);
      holes = holes.stream().map(List::copyOf).toList();
    }
  }

  /** Two facets glued into one body, by index. */
  public record Bond(int a, int b) {}
}
