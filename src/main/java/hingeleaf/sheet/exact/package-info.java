/**
 * Complete search at a maker's size: every guillotine pattern worth having, then every way to cover
 * the demand with them.
 *
 * <p>Invariant: a refusal to answer is always told apart from "there is none".
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet.exact;
