/**
 * The planner: bounds, search and proof put together, and the plan written out.
 *
 * <p>Invariant: what it returns has passed {@link hingeleaf.sheet.PlanChecker}.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet.solve;
