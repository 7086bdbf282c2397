/**
 * What a card, or a batch of cards, costs and what could be asked for it.
 *
 * <p>Flow: a {@link hingeleaf.price.Job} (what is used, how long it takes, what things cost) gives
 * {@link hingeleaf.price.Costs}, which a {@link hingeleaf.price.PriceFormula} turns into a {@link
 * hingeleaf.price.Quote}.
 *
 * <p>Invariant: money is exact until it is printed (rational numbers, never binary fractions), no
 * price is kept here, and every formula is named with where it is published, because guides mean
 * different things by one word.
 */
@NullMarked
package hingeleaf.price;

import org.jspecify.annotations.NullMarked;
