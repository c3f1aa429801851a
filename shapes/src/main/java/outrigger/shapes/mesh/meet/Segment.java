package outrigger.shapes.mesh.meet;

import outrigger.shapes.exact.ExactPoint;

/**
 * What a face leaves on a plane that it crosses or stands on: a piece of line.
 *
 * @param from the end that comes first in the sheet's order (first coordinate, then second)
 * @param to the other end
 * @param face the face that left it
 * @param change winding number gained by its operand in stepping across from left to right
 * @param above whether the face stands on the side the plane's normal points to
 * @param below whether it stands on the other side
 * @param rim whether it may be the edge of a face in the plane: all such edges of an operand are there, while what faces of
 *     other planes leave may be missing where it is hidden
 */
public record Segment(ExactPoint from, ExactPoint to, int face, int change, boolean above, boolean below, boolean rim) {}
