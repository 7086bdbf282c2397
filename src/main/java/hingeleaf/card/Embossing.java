package hingeleaf.card;

import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.stock.EmbossingFolder;
import java.util.List;

/**
 * A pattern pressed into one panel of a piece, so that it stands up on the good face.
 *
 * @param folder what presses it
 * @param panel the panel that it is centred on
 * @param plates where the folder's pattern lies, in piece coordinates; it may reach past the piece
 * @param origin path in the design from which it comes
 */
public record Embossing(EmbossingFolder folder, String panel, Box plates, String origin) {
  /** Embossing draws card in by 0.5 to 1 %: common practice, no source. The larger is allowed. */
  public static final double DRAWS_IN = 0.01;

  /** The least that a trimmer takes off without slipping, mm: common practice, no source. */
  public static final double LEAST_TRIM_MM = 1;

  /**
   * How large a piece is cut before it is embossed, so that it can be trimmed to size afterwards.
   *
   * @param finished width or height as wanted, mm
   * @param mark from one mark of the trimmer to the next, mm
   * @return on a mark, mm
   */
  public static double blank(double finished, double mark) {
    double least = Math.max(finished * (1 + DRAWS_IN), finished + LEAST_TRIM_MM);
    return Math.ceil(least / mark - 1e-9) * mark;
  }

  /** Where the pattern is pressed into a part of the piece, within that part; often all of it. */
  public List<Region> pressed(Region part) {
    Ring rim = Ring.rectangle(plates.minX(), plates.minY(), plates.maxX(), plates.maxY());
    return Overlay.intersection(part, Region.of(rim));
  }

  /** What the pattern adds to the panel's thickness, mm. */
  public double raises() {
    return folder.raises();
  }
}
