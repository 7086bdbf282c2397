/**
 * The page: a server on this machine alone, and what it answers.
 *
 * <p>Invariant: the design file is the truth; every answer is made from it, and every change goes
 * to it as a splice of its text. Nothing is answered to a request that does not come from the page
 * itself and carry its key.
 */
@NullMarked
package hingeleaf.web;

import org.jspecify.annotations.NullMarked;
