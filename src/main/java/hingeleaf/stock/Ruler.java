package hingeleaf.stock;

/**
 * The rule used with knife or stylus, wherever trimmer and scoring board do not serve.
 *
 * @param longest length it can measure, mm; more than 0
 * @param step between its marks, mm; more than 0
 */
public record Ruler(double longest, double step) {
  public Ruler {
    Positive.check("ruler, length", longest);
    Positive.check("ruler, step of marks", step);
  }
}
