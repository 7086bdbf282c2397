/**
 * What gets in each other's way while a card is laid flat: ornaments under the layer in front of
 * them, sides against what stands beside their fold, edges of apertures against what stands inside.
 *
 * <p>Panels are sheets without thickness through the score lines; what is glued on a face stands on
 * it as a prism, foam and card together. The door is {@link hingeleaf.fold.contact.Contact}.
 *
 * <p>Invariant: no contact is missed between two poses. A pair of parts is advanced by no more than
 * its distance divided by a bound of its speed (conservative advancement, after Mirtich 1996, from
 * memory), never by fixed steps; where the bound does not let it end within its budget that is
 * told. Two sheets that come nearly parallel and nearer than their paper are no contact but layers,
 * whose order is the business of {@link hingeleaf.fold.Piles}.
 */
@NullMarked
package hingeleaf.fold.contact;

import org.jspecify.annotations.NullMarked;
