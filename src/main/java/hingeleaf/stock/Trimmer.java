package hingeleaf.stock;

/**
 * A cutter with a guide that cuts straight from edge to edge.
 *
 * @param longest cut it can make, mm; more than 0
 * @param step between the marks on its rule, mm; more than 0
 */
public record Trimmer(double longest, double step) {
  public Trimmer {
    Positive.check("trimmer, longest cut", longest);
    Positive.check("trimmer, step of marks", step);
  }
}
