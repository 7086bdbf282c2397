/**
 * The door from the shell: reads files, calls the core, writes files, says what happened.
 *
 * <p>Invariant: results go to stdout, talk to stderr; exit codes are those of {@link
 * hingeleaf.cli.Exit}; an output folder is written whole or not at all.
 */
@NullMarked
package hingeleaf.cli;

import org.jspecify.annotations.NullMarked;
