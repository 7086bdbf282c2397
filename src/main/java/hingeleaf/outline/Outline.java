package hingeleaf.outline;

import hingeleaf.finding.Problem;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An outline that was drawn in a file, at the size at which it is made.
 *
 * @param regions what it covers, in mm, y up, the middle of the box at the origin; at least one
 */
public record Outline(List<Region> regions) {
  /** Larger files are refused; a reader of files need not take in more than one byte beyond. */
  public static final int LIMIT_BYTES = 2_000_000;

  public Outline {
    regions = List.copyOf(regions);
  }

  /** What came of reading a file. */
  public sealed interface Reading {
    /**
     * It could be read.
     *
     * @param notes what was left out, as notes with their places
     */
    record Read(Outline outline, List<Problem> notes) implements Reading {
      public Read {
        notes = List.copyOf(notes);
      }
    }

    /** It could not; the problem blocks and has its place. */
    record Refused(Problem problem) implements Reading {}
  }

  /**
   * Reads an SVG file.
   *
   * @param name of the file, for places
   * @param width in mm that the outline's box shall have, more than 0; empty for the size drawn
   */
  public static Reading read(String name, byte[] bytes, OptionalDouble width) {
    if (width.isPresent() && !(width.getAsDouble() > 0)) {
      throw new IllegalArgumentException("an outline cannot be " + width + " wide");
    }
    return new SvgReader(name).read(bytes, width);
  }

  /** The box around all regions, its middle at the origin. */
  public Box box() {
    return regions.stream().map(Region::box).reduce(Box::union).orElseThrow();
  }
}
