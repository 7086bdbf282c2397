/**
 * The order in which a maker cuts: one setting of the trimmer, all that can be cut with it on all
 * sheets, then the next.
 *
 * <p>Invariant: every cut of every split is made once, and never before its part has been cut free.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet.order;
