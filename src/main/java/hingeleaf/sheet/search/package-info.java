/**
 * Ruin and recreate on guillotine trees, after Gardeyn and Wauters, EJOR 301(2) (2022) 432-444.
 *
 * <p>Invariant: every state is cuttable; only its completeness varies. Chance comes from a seed.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.sheet.search;
