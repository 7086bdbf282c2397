/**
 * Moves a mechanism of rigid panels exactly: drives its folds to given angles, finds how many
 * freedoms it has, and in which states it can lie.
 *
 * <p>The doors are {@link hingeleaf.fold.Linkage} (mobility, drive, rests), {@link
 * hingeleaf.fold.Follow} (the same under a slider, in microseconds) and {@link
 * hingeleaf.fold.Settling} (close the loops of a card whose glue does not quite meet).
 *
 * <p>Invariant: a pose that leaves this package as reached closes every loop to rounding and holds
 * its driven joints at exactly the values asked for. No search here is unseeded, and none runs
 * beyond its {@link hingeleaf.fold.Budget}.
 *
 * <p>The order of work: {@code Bodies} (what moves as one) - {@code CycleBasis} (shortest loops) -
 * {@code Loop} (closure of one loop, planar, spherical or general) - {@code Part} (loops that share
 * joints) - {@code Solver} (Newton on one part, in block-triangular order) - {@code March} (along a
 * path, over and into flat states) - {@code Branches} (out of flat states) - {@code PartDrive}, and
 * {@code RestSearch}.
 */
@NullMarked
package hingeleaf.fold;

import org.jspecify.annotations.NullMarked;
