/**
 * Pieces as DXF R12 (AC1009), which nearly everything that cuts can read.
 *
 * <p>Invariant: plain ASCII, only LINE and POLYLINE, layers by ISO 19593-1 step in strict R12
 * names. The format carries no unit, so a comment says millimetres.
 */
@NullMarked
package hingeleaf.paper.dxf;

import org.jspecify.annotations.NullMarked;
