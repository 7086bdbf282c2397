package hingeleaf.post;

/**
 * A limit that a piece of mail does not keep.
 *
 * @param value what the piece has: mm, g or a plain number
 * @param outside by how much: positive above the most, negative below the least
 */
public record Failure(Limit limit, double value, double outside) {
  static Failure of(Limit limit, Mail mail) {
    return new Failure(limit, mail.figure(limit.figure()), limit.outside(mail));
  }

  /** The bound that is not kept. */
  public double bound() {
    return outside > 0 ? limit.most() : limit.least();
  }
}
