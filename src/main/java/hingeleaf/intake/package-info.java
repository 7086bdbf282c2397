/**
 * Text to jobs: what people and other programs hand in.
 *
 * <p>Invariant: a size is read as an exact decimal, never through a double; a fault says where.
 */
@org.jspecify.annotations.NullMarked
package hingeleaf.intake;
