package hingeleaf.paper.glb;

import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.stock.Stock.Faces;
import java.util.List;

/**
 * A panel as a thin board.
 *
 * @param piece id of its piece
 * @param panel name in the piece
 * @param region in piece coordinates, mm
 * @param thickness mm; boards thinner than 0.05 are drawn as thick as that
 * @param lift how far the middle of the board lies in front of the piece's plane, mm
 * @param faces colours of the front, the back and the cut edge
 * @param clear whether light goes through
 * @param made from piece coordinates (front facing +z) to the world, mm
 * @param raised parts of the region that a pattern raises on the front, in piece coordinates
 * @param raises by how much, mm; 0 for none
 */
public record Solid(
    String piece,
    String panel,
    Region region,
    double thickness,
    double lift,
    Faces faces,
    boolean clear,
    Rigid made,
    List<Region> raised,
    double raises) {
  public Solid {
    raised = List.copyOf(raised);
  }

  /** A plain board. */
  public Solid(
      String piece,
      String panel,
      Region region,
      double thickness,
      double lift,
      Faces faces,
      boolean clear,
      Rigid made) {
    this(piece, panel, region, thickness, lift, faces, clear, made, List.of(), 0);
  }
}
