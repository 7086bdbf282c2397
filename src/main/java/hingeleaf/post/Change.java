package hingeleaf.post;

/**
 * What would have to change on a piece of mail to keep one limit. A sealed family, because a
 * proportion can be mended on either side and stiffness has no size.
 */
public sealed interface Change {
  /** This change in words, such as "1.3 mm thinner". */
  String told(PostWords words);

  /**
   * Less or more of one figure.
   *
   * @param by mm or g; negative for less
   */
  record By(Figure figure, double by) implements Change {
    @Override
    public String told(PostWords words) {
      return words.by(figure, by);
    }
  }

  /**
   * Another proportion: either the length or the height of the envelope changes.
   *
   * @param length to this, mm, with the height as it is
   * @param height to this, mm, with the length as it is
   * @param slimmer whether the envelope gets longer or less high; else the other way
   */
  record Proportion(double length, double height, boolean slimmer) implements Change {
    @Override
    public String told(PostWords words) {
      return words.proportion(length, height, slimmer);
    }
  }

  /** It would have to bend. */
  record Soft() implements Change {
    @Override
    public String told(PostWords words) {
      return "the same, but soft enough to bend,";
    }
  }

  /** The smallest change that keeps the failed limit. */
  static Change curing(Failure failure, Mail mail) {
    double bound = failure.bound();
    return switch (failure.limit().figure()) {
      case LENGTH, HEIGHT, THICKNESS, WEIGHT, SUM, LENGTH_AND_GIRTH, UNEVEN ->
          new By(failure.limit().figure(), -failure.outside());
      case RATIO ->
          new Proportion(bound * mail.height(), mail.length() / bound, failure.outside() < 0);
      case STIFF -> new Soft();
    };
  }
}
