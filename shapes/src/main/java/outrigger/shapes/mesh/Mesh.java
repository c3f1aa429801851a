package outrigger.shapes.mesh;

import outrigger.shapes.num.Workers;

/**
 * A welded triangle mesh on the grid, facets counter-clockwise seen from outside. Nothing is promised of soundness:
 * that is for the proof to say.
 *
 * <p>Vertices stand in order of first use by the facets; no vertex is unused and no two are equal.
 */
public final class Mesh {
  private final int[] xyz;
  private final int[] corners;

  private Mesh(int[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
  }

  /**
   * A mesh from vertices and facets; equal vertices are welded, unused ones dropped.
   *
   * @param xyz x, y, z of each vertex in grid units
   * @param corners three vertex numbers a facet
   */
  public static Mesh of(int[] xyz, int[] corners) {
    return of(xyz, corners, Workers.of(1));
  }

  /** The same by some threads. */
  public static Mesh of(int[] xyz, int[] corners, Workers workers) {
    return Welder.weld(xyz, corners, workers);
  }

  /** The same of vertices no two of which are equal: they are numbered anew in the order of their first use. */
  public static Mesh ofDistinct(int[] xyz, int[] corners) {
    return Welder.inOrder(xyz, corners);
  }

  static Mesh welded(int[] xyz, int[] corners) {
    return new Mesh(xyz, corners);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return xyz.length / 3;
  }

  /** Number of facets. */
  public int facetCount() {
    return corners.length / 3;
  }

  /** x of a vertex, grid units. */
  public int x(int vertex) {
    return xyz[3 * vertex];
  }

  /** y of a vertex, grid units. */
  public int y(int vertex) {
    return xyz[3 * vertex + 1];
  }

  /** z of a vertex, grid units. */
  public int z(int vertex) {
    return xyz[3 * vertex + 2];
  }

  /** Vertex number at a facet's corner 0, 1 or 2. */
  public int corner(int facet, int k) {
    return corners[3 * facet + k];
  }

  /** x, y, z of each vertex, grid units, a copy. */
  public int[] xyz() {
    return xyz.clone();
  }

  /** Three vertex numbers a facet, a copy. */
  public int[] corners() {
    return corners.clone();
  }
}
