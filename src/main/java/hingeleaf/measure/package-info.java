/**
 * Lengths as makers write and read them: exact rationals, units, marks of rulers and boards, and
 * rounding.
 *
 * <p>Invariant: what was written is kept exactly (a third of an inch stays a third) until it is
 * asked for as a {@code double} of millimetres; two lengths within {@link
 * hingeleaf.measure.Length#EXACT_MM} count as one. Every reader is quick on any text, however
 * absurd. Imports nothing but {@code finding}.
 */
@NullMarked
package hingeleaf.measure;

import org.jspecify.annotations.NullMarked;
