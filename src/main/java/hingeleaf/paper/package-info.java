/**
 * What the maker holds: drawings in mm and the writers that turn them into files.
 *
 * <p>Invariant: nothing is worked out here that is not drawn here. Sizes, folds, sight and plans
 * come in as values; a {@link hingeleaf.paper.Drawing} is marks on a page, y up, in mm, and every
 * writer paints the same marks. Same input, same bytes: no clock, no file, no font of the machine.
 */
@NullMarked
package hingeleaf.paper;

import org.jspecify.annotations.NullMarked;
