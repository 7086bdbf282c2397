/**
 * Flowing pages: headings, words, tables, figures and numbered work, laid out to drawings.
 *
 * <p>Invariant: a block is what is said, never where; layout gives {@link
 * hingeleaf.paper.Drawing}s, so a page can be looked at, measured and written in any format.
 */
@NullMarked
package hingeleaf.paper.book;

import org.jspecify.annotations.NullMarked;
