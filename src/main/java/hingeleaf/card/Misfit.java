package hingeleaf.card;

/**
 * How badly two glue patches meet when every fold stands at its nominal angle.
 *
 * @param glue id of the join
 * @param gap largest distance between the two patches' corners in space, mm
 * @param angle between their planes, rad
 */
public record Misfit(String glue, double gap, double angle) {}
