/**
 * From parameters to pieces: one file for each base or mechanism, which owns its parameter table.
 *
 * <p>Invariant: rounding to the bench's marks happens here, to parameters, never to finished
 * pieces; a size that the maker named is never changed.
 */
@NullMarked
package hingeleaf.structure;

import org.jspecify.annotations.NullMarked;
