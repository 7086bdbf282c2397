/**
 * Drawings as PDF pages at true size, their processing steps as layers.
 *
 * <p>Invariant: 1 mm is 72/25.4 units on every page, and no page is ever scaled to fit. Same input,
 * same bytes: no dates, and the identifier of the document follows from its content.
 */
@NullMarked
package hingeleaf.paper.pdf;

import org.jspecify.annotations.NullMarked;
