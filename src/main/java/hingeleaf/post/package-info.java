/**
 * The post: what a card becomes in an envelope, which class of post takes it, why not the cheaper
 * one, and what would have to change for that.
 *
 * <p>Flow: {@link hingeleaf.post.Parcel} (the card folded flat, or boxed) and an envelope give a
 * {@link hingeleaf.post.Mail} (what the counter measures); a {@link hingeleaf.post.Scheme} (limits
 * read from data) gives a {@link hingeleaf.post.Decision}.
 *
 * <p>Invariant: every limit stands in a data file beside its document, the day it was seen and how
 * sure it is; no limit is written in code and no price is kept anywhere. Lengths in mm, masses in
 * g. The only thing read here are the data files of the program itself, which are constant.
 */
@NullMarked
package hingeleaf.post;

import org.jspecify.annotations.NullMarked;
