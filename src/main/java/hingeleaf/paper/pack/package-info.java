/**
 * Everything that is printed or handed on from a pack: the plan as a small book, templates, pieces,
 * picture and pack.json.
 *
 * <p>Invariant: nothing is worked out here; every number and sentence comes from the pack.
 */
@NullMarked
package hingeleaf.paper.pack;

import org.jspecify.annotations.NullMarked;
