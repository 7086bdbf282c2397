package hingeleaf.design;

import hingeleaf.geom.Ring;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Length;
import java.util.List;

/** The shape of an opening or an ornament as a design gives it. */
public sealed interface Shape {
  /** Where the middle of its box lies, to the right of the panel's middle. */
  Length right();

  /** Where the middle of its box lies, above the panel's middle. */
  Length up();

  /** The offset from the panel's middle in mm, y up. */
  default Vec2 at() {
    return new Vec2(right().mm(), up().mm());
  }

  /** The sorts of standard shape. */
  enum Sort {
    CIRCLE,
    SQUARE,
    RECTANGLE,
    ELLIPSE,
    ARCH,
    ROUNDED;

    /** The key by which files choose it. */
    public String key() {
      return this == RECTANGLE ? "rect" : name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * A shape given by its sizes.
   *
   * @param width of its box
   * @param height of its box
   * @param radius of its corners; 0 for all but {@link Sort#ROUNDED}
   */
  record Standard(Sort sort, Length width, Length height, Length radius, Length right, Length up)
      implements Shape {
    /** Its outline about the origin, in mm; chords as {@link Shapes} says. */
    public Ring ring() {
      double w = width.mm();
      double h = height.mm();
      return switch (sort) {
        case CIRCLE -> Shapes.circle(w);
        case SQUARE -> Shapes.square(w);
        case RECTANGLE -> Shapes.rectangle(w, h);
        case ELLIPSE -> Shapes.ellipse(w, h);
        case ARCH -> Shapes.arch(w, h);
        case ROUNDED -> Shapes.rounded(w, h, radius.mm());
      };
    }

    /** The same sort in another size; a circle or square takes the width alone. */
    public Standard sized(Length newWidth, Length newHeight, Length newRadius) {
      return new Standard(sort, newWidth, newHeight, newRadius, right, up);
    }
  }

  /**
   * A shape drawn in a file.
   *
   * @param file name beside the design
   * @param width of its box when made
   */
  record Drawn(String file, Length width, Length right, Length up) implements Shape {}

  /** The shape that a {@link ShapeForm#KIND} value describes. */
  static Shape of(Values.Choice choice) {
    Values v = choice.values();
    List<Length> at = v.lengths("at");
    if (choice.variant().equals("svg")) {
      return new Drawn(v.text("svg"), v.length("width"), at.get(0), at.get(1));
    }
    Sort sort = sortOf(choice.variant());
    if (sort == Sort.CIRCLE || sort == Sort.SQUARE) {
      Length size = v.length(choice.variant());
      return new Standard(sort, size, size, Length.ZERO, at.get(0), at.get(1));
    }
    List<Length> sizes = v.lengths(choice.variant());
    Length radius = sort == Sort.ROUNDED ? sizes.get(2) : Length.ZERO;
    return new Standard(sort, sizes.get(0), sizes.get(1), radius, at.get(0), at.get(1));
  }

  private static Sort sortOf(String key) {
    for (Sort s : Sort.values()) {
      if (s.key().equals(key)) {
        return s;
      }
    }
    throw new IllegalArgumentException(key + " is no shape");
  }
}
