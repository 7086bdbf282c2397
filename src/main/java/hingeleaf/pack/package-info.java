/**
 * The funnel: from a design, a bench and what is wanted to everything that comes out, each stage
 * worked out when first asked for and then kept.
 *
 * <p>Invariant: every door goes through {@link hingeleaf.pack.Pack}; nothing above it works
 * anything out on its own, and asking for findings draws no pages.
 */
@NullMarked
package hingeleaf.pack;

import org.jspecify.annotations.NullMarked;
