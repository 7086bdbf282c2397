/**
 * The bench: what the maker owns and pays. Papers, glues, tools, dies and envelopes as values.
 *
 * <p>Invariant: a bench is data read elsewhere; nothing here reads files or prints. Sizes are in mm
 * and grammage in g/m2 (ISO 536); thickness is single-sheet thickness (ISO 534).
 */
@NullMarked
package hingeleaf.stock;

import org.jspecify.annotations.NullMarked;
