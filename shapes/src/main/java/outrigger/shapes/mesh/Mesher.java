package outrigger.shapes.mesh;

import outrigger.shapes.solid.Solid;

/** Evaluates a solid to a mesh on the grid. */
public final class Mesher {
  private Mesher() {}

  /**
   * Evaluates a solid whole.
   *
   * @throws outrigger.shapes.num.ShapeException if the result is empty, touches itself along a line or at a point, or
   *     cannot be rounded to the grid soundly
   */
  public static Mesh mesh(Solid solid) {
    throw new UnsupportedOperationException("pending");
  }
}
