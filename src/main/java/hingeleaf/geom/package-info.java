/**
 * Plain values of plane and space geometry: points, rings, regions, rigid motions, and the
 * tolerances that everything above compares with.
 *
 * <p>Every {@code double} here and in all packages above is a length in millimetres or an angle in
 * radians, unless a name says otherwise. Nothing here knows paper, files or units.
 */
@NullMarked
package hingeleaf.geom;

import org.jspecify.annotations.NullMarked;
