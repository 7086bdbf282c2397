/**
 * From a text that a person or a program wrote to a mechanism or a job, with a located sentence for
 * whatever is wrong in it.
 *
 * <p>Invariant: what leaves here is complete and finite, in mm and rad, and its names are resolved;
 * nothing is guessed silently.
 */
@NullMarked
package hingeleaf.intake;

import org.jspecify.annotations.NullMarked;
