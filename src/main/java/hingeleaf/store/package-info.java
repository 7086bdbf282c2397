/**
 * Cards and their drawings in one folder on disk, with the versions they went through.
 *
 * <p>Invariant: nothing outside the folder is ever read or written, whatever names come in; a file
 * is written whole or not at all.
 */
@NullMarked
package hingeleaf.store;

import org.jspecify.annotations.NullMarked;
