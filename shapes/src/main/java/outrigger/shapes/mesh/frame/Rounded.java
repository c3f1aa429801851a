package outrigger.shapes.mesh.frame;

/**
 * Facets on the grid, not yet welded.
 *
 * <p>Working data: the arrays are shared, not copied.
 */
public final class Rounded {
  private final int[] xyz;
  private final int[] corners;
  private final boolean[] moved;

  /**
   * Facets from their parts.
   *
   * @param xyz x, y, z of each vertex in grid units
   * @param corners three vertex numbers a facet
   * @param moved of each vertex whether it was rounded
   */
  public Rounded(int[] xyz, int[] corners, boolean[] moved) {
    this.xyz = xyz;
    this.corners = corners;
    this.moved = moved;
  }

  /** x, y, z of each vertex, grid units. */
  public int[] xyz() {
    return xyz;
  }

  /** Three vertex numbers a facet. */
  public int[] corners() {
    return corners;
  }

  /** Of each vertex whether it was rounded. */
  public boolean[] moved() {
    return moved;
  }
}
