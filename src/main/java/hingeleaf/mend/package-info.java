/**
 * Changes of a design that are tried before they are offered: what cures a finding, what follows
 * when a part is moved, renamed or taken away, and the largest card that an envelope takes.
 *
 * <p>Invariant: no design is changed here; every answer is a list of changes, or a new text.
 */
@NullMarked
package hingeleaf.mend;

import org.jspecify.annotations.NullMarked;
