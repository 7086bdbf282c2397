/**
 * The design document: text that a maker wrote, read into a tree in which every value knows its
 * place; tables of parameters (forms) from which the reader, the schema and the first text of a new
 * file all come; and edits of the text that leave every other character alone.
 *
 * <p>Invariant: a document is never written anew from values. What cannot be read is told as
 * located problems, all of them, and never as an exception. No structure is known here: their forms
 * come in as arguments.
 */
@NullMarked
package hingeleaf.design;

import org.jspecify.annotations.NullMarked;
