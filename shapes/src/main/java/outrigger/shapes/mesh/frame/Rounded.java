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
  private final Shift before;

  /** From where vertices were put to where they were before. */
  public interface Shift {
    /** The same of one along axis 0, 1 or 2, grid units. */
    double of(int vertex, int axis);
  }

  /**
   * Facets from their parts.
   *
   * @param xyz x, y, z of each vertex in grid units
   * @param corners three vertex numbers a facet
   * @param moved of each vertex whether it was rounded
   * @param before asked only for vertices that were
   */
  public Rounded(int[] xyz, int[] corners, boolean[] moved, Shift before) {
    this.xyz = xyz;
    this.corners = corners;
    this.moved = moved;
    this.before = before;
  }

  /** The same where nobody knows any more where vertices were before. */
  public Rounded(int[] xyz, int[] corners, boolean[] moved) {
    this(xyz, corners, moved, (v, axis) -> 0);
  }

  /** x, y, z of each vertex, grid units. */
  public int[] xyz() {
    return xyz;
  }

  /** From where a vertex was put to where it was before it was rounded, along axis 0, 1 or 2, grid units. */
  public double before(int vertex, int axis) {
    return moved[vertex] ? before.of(vertex, axis) : 0;
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
