/**
 * Answers for programs: a pack as JSON by a published schema.
 *
 * <p>Invariant: lengths are mm, masses g, angles rad; numbers are rounded to a millionth, so that
 * the same card gives the same bytes on every machine.
 */
@NullMarked
package hingeleaf.paper.json;

import org.jspecify.annotations.NullMarked;
