/**
 * Rectangles to guillotine sheet plans: the values that go in and come out.
 *
 * <p>Invariant: lengths are whole nanometres, money is whole millionths; a {@link SheetPlan} that
 * leaves the planner has passed {@link PlanChecker}.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet;
