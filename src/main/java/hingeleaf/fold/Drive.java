package hingeleaf.fold;

import hingeleaf.card.Posed;

/**
 * What came of driving a mechanism.
 *
 * @param reached whether every driven joint has exactly its value and every loop closes
 * @param why a sentence on what stopped it, with the nearest value that can be had; empty if
 *     reached
 * @param posed the pose; where it was not reached the nearest one found, which closes too
 */
public record Drive(boolean reached, String why, Posed posed) {}
