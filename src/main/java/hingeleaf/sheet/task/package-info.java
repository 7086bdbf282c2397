/**
 * A sheet job made ready for searching: like pieces counted together, sizes as small whole numbers.
 *
 * <p>Invariant: a {@link hingeleaf.sheet.task.Layout} is a guillotine tree whose parts fill their
 * parent exactly.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet.task;
