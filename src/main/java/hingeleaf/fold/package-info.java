/**
 * How a card folds: pieces folded forward to the made card, loops settled and driven exactly, flat
 * rests and piles.
 *
 * <p>The doors are {@link hingeleaf.fold.FoldForward} (pieces to the made card), {@link
 * hingeleaf.fold.Linkage} (mobility, drive, rests of any mechanism), {@link hingeleaf.fold.Follow}
 * (the same under a slider, in microseconds), {@link hingeleaf.fold.Settling} (close the loops of a
 * card whose glue does not quite meet), {@link hingeleaf.fold.FlatStates} (how a card lies flat)
 * and {@link hingeleaf.fold.Piles} (how thick it is then). Everything else is inside.
 *
 * <p>Invariant: pure solvers over {@code card}. A pose that leaves this package as reached closes
 * every loop to rounding and holds its driven joints at exactly the values asked for. No search
 * here is unseeded, and none runs beyond its {@link hingeleaf.fold.Budget}. Thickness enters piles
 * only.
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
