package outrigger.shapes.mesh.leaf;

import java.util.List;

/**
 * A closed polyhedron with flat, many-cornered faces: what a leaf of an expression looks like to the kernel.
 *
 * <p>Working data: the arrays are shared, not copied.
 */
public final class Polyhedron {
  private final int[] xyz;
  private final List<int[][]> faces;

  /**
   * A polyhedron from its parts.
   *
   * @param xyz x, y, z of each vertex in grid units; equal ones only where rings of a profile touch
   * @param faces each face as loops of vertex numbers, seen from outside: the outer loop counter-clockwise first, then
   *     holes clockwise; all vertices of a face lie exactly in one plane
   */
  public Polyhedron(int[] xyz, List<int[][]> faces) {
    this.xyz = xyz;
    this.faces = faces;
  }

  /** x, y, z of each vertex, grid units. */
  public int[] xyz() {
    return xyz;
  }

  /** Loops of vertex numbers of each face. */
  public List<int[][]> faces() {
    return faces;
  }
}
