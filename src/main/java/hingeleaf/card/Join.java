package hingeleaf.card;

import java.util.function.Function;

/** How parts of a card hold together. A closed family: every use switches over all of them. */
public sealed interface Join {
  /** Unique in the card. */
  String id();

  /** Path in the design from which it comes. */
  String origin();

  /** Calls the function for the kind that this is; a new kind stops every use from compiling. */
  default <T> T match(
      Function<Glue, T> glue,
      Function<Slide, T> slide,
      Function<Pin, T> pin,
      Function<Passage, T> passage) {
    if (this instanceof Glue g) {
      return glue.apply(g);
    } else if (this instanceof Slide s) {
      return slide.apply(s);
    } else if (this instanceof Pin p) {
      return pin.apply(p);
    }
    return passage.apply((Passage) this);
  }

  /**
   * Two patches glued face to face: origins and directions of their frames coincide and the outward
   * normals of the two faces oppose each other.
   *
   * @param a the patch of the piece that is laid on
   * @param b the patch that it is laid on
   * @param raisedBy mm of foam between the faces, 0 where glue alone holds
   * @param glue name of the glue or tape on the bench
   */
  record Glue(String id, Patch a, Patch b, double raisedBy, String glue, String origin)
      implements Join {}

  /**
   * A strip that slides in a guide along the direction of the strip's frame.
   *
   * @param from least travel, mm
   * @param to greatest travel, mm
   */
  record Slide(String id, Patch strip, Patch guide, double from, double to, String origin)
      implements Join {}

  /**
   * A wheel that turns about the origin of its frame.
   *
   * @param from least turn, rad
   * @param to greatest turn, rad
   */
  record Pin(String id, Patch wheel, Patch seat, double from, double to, String origin)
      implements Join {}

  /** A tab that may pass through a slit; it constrains nothing. */
  record Passage(String id, Patch tab, Patch slit, String origin) implements Join {}
}
