/**
 * Lower bounds on the cost: no plan is cheaper.
 *
 * <p>Invariant: every bound is computed in whole numbers (or checked in them), so rounding never
 * lifts one above the true optimum.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet.bound;
