/**
 * What the tool has to say about a card: problems, how grave they are, where they come from and
 * what would cure them. Plain values, open to every package; imports nothing.
 */
@NullMarked
package hingeleaf.finding;

import org.jspecify.annotations.NullMarked;
