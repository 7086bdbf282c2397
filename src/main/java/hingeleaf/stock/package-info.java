/**
 * The bench: what the maker owns and pays. Papers, glues, tools, dies and envelopes as values, and
 * the standard sizes of sheets and envelopes.
 *
 * <p>Invariant: a bench is data read elsewhere; nothing here reads files or prints. Sizes are in mm
 * and grammage in g/m2 (ISO 536); thickness is single-sheet thickness (ISO 534). A price of 0 means
 * "not told"; prices are kept as written, so that {@code BigDecimal.valueOf} gives back the written
 * decimals.
 */
@NullMarked
package hingeleaf.stock;

import org.jspecify.annotations.NullMarked;
