package hingeleaf.paper.book;

import hingeleaf.paper.Look;
import hingeleaf.paper.Mark.Weight;

/** Words said in one voice. */
public record Span(String text, Voice voice) {
  /** How words are said. */
  public enum Voice {
    PLAIN(Weight.REGULAR, Look.BODY, Look.INK),
    STRONG(Weight.SEMIBOLD, Look.BODY, Look.INK),
    LEANING(Weight.ITALIC, Look.BODY, Look.INK),
    QUIET(Weight.REGULAR, Look.SMALL, Look.QUIET);

    private final Weight weight;
    private final double size;
    private final String colour;

    Voice(Weight weight, double size, String colour) {
      this.weight = weight;
      this.size = size;
      this.colour = colour;
    }

    Weight weight() {
      return weight;
    }

    double size() {
      return size;
    }

    String colour() {
      return colour;
    }
  }

  public static Span plain(String text) {
    return new Span(text, Voice.PLAIN);
  }

  public static Span strong(String text) {
    return new Span(text, Voice.STRONG);
  }
}
