package hingeleaf.paper.glb;

import hingeleaf.geom.Rigid;
import java.util.List;

/**
 * Where the boards are at one time of an animation.
 *
 * @param seconds from the start; later moments have larger ones
 * @param poses for each board, from piece coordinates to the world, mm
 */
public record Moment(double seconds, List<Rigid> poses) {
  public Moment {
    poses = List.copyOf(poses);
  }
}
