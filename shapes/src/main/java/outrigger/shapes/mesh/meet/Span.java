package outrigger.shapes.mesh.meet;

import outrigger.shapes.exact.ExactPoint;

/**
 * A stretch of the line in which a face meets a plane.
 *
 * @param from its lower end along the line
 * @param to its upper end
 * @param fromEdge the half-edge of the face that passes through the plane at the lower end; -1 if none does
 * @param toEdge the one at the upper end
 * @param above whether the face lies on the side of the stretch that the plane's normal points to
 * @param below whether it lies on the other side
 * @param own whether the stretch is an edge of the face across which its own operand goes on in that plane
 */
record Span(ExactPoint from, ExactPoint to, int fromEdge, int toEdge, boolean above, boolean below, boolean own) {

  /** Whether the face lies on both sides, so that the stretch runs through its inside. */
  boolean isThrough() {
    return above && below;
  }
}
