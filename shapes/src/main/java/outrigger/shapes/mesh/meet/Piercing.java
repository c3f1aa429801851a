package outrigger.shapes.mesh.meet;

import outrigger.shapes.exact.ExactPoint;

/**
 * A point at which an edge of one operand passes clean through a face of another: inside both, touching nothing else of
 * that operand. Working data: filled in while pairs of faces are met.
 */
public final class Piercing {
  /** Where. */
  public final ExactPoint at;
  /** The edge, as the lower of its half-edges. */
  public final int edge;
  /** The face passed through. */
  public final int face;
  /** Stretch that begins or ends here on the face of {@link #edge}; null until met. */
  public Stretch own;
  /** Stretch that begins or ends here on the face of its twin; null until met. */
  public Stretch twin;

  Piercing(ExactPoint at, int edge, int face) {
    this.at = at;
    this.edge = edge;
    this.face = face;
  }

  /** The stretch that goes on where this one comes in; null if that face is met otherwise there. */
  public Stretch beyond(Stretch stretch) {
    return own == stretch ? twin : own;
  }
}
