package outrigger.shapes.mesh.meet;

import outrigger.shapes.exact.ExactPoint;

/**
 * A piece of the line in which a plane cuts a face, from one place of a {@link Section} to the next.
 *
 * @param from its lower end along the line
 * @param to its upper end
 * @param fromEdge the half-edge of the face that passes through the plane at the lower end; -1 if none does
 * @param toEdge the one at the upper end
 * @param above whether the face lies on the side that the plane's normal points to
 * @param below whether it lies on the other side
 * @param own whether it is an edge of the face across which its own operand goes on in that plane
 */
record Span(ExactPoint from, ExactPoint to, int fromEdge, int toEdge, boolean above, boolean below, boolean own) {
  /** Whether the face lies on both sides, so that the piece runs through its inside. */
  boolean isThrough() {
    return above && below;
  }
}
