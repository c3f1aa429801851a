package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;

/**
 * Leaves out closed pieces of surface that are thinner than the grid: crumbs and pockets that rounding made or turned
 * inside out.
 */
final class Slivers {
  private final int[] xyz;
  private final int[] corners;
  /** Of each piece, by its least vertex, six times the volume. */
  private final double[] volume;
  /** Of each piece, by its least vertex, twice the area. */
  private final double[] area;

  private Slivers(int[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    volume = new double[xyz.length / 3];
    area = new double[xyz.length / 3];
  }

  /** Corners of the facets of a mesh that stay. */
  static int[] without(Mesh mesh) {
    return without(mesh.xyz(), mesh.corners());
  }

  /** The same, where no more than two facets share an edge. */
  static int[] without(int[] xyz, int[] corners) {
    Slivers slivers = new Slivers(xyz, corners);
    int[] piece = slivers.pieces(xyz.length / 3);
    for (int i = 0; i < slivers.corners.length; i += 3) {
      slivers.add(piece[slivers.corners[i]], i);
    }
    int[] kept = new int[slivers.corners.length];
    int n = 0;
    for (int i = 0; i < kept.length; i += 3) {
      int p = piece[slivers.corners[i]];
      // on average as thick as the volume over half the area: a grid step or more
      if (Math.abs(slivers.volume[p]) / 6 >= slivers.area[p] / 4) {
        System.arraycopy(slivers.corners, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  /** Of each vertex the least vertex that edges join it to. */
  private int[] pieces(int vertices) {
    int[] head = new int[vertices];
    Arrays.setAll(head, v -> v);
    for (int i = 0; i < corners.length; i += 3) {
      join(head, corners[i], corners[i + 1]);
      join(head, corners[i], corners[i + 2]);
    }
    for (int v = 0; v < vertices; v++) {
      head[v] = find(head, v);
    }
    return head;
  }

  private static void join(int[] head, int v, int w) {
    int a = find(head, v);
    int b = find(head, w);
    head[Math.max(a, b)] = Math.min(a, b);
  }

  private static int find(int[] head, int v) {
    int h = v;
    while (head[h] != h) {
      head[h] = head[head[h]];
      h = head[h];
    }
    return h;
  }

  /** Adds a facet's share to its piece, seen from the piece's least vertex. */
  private void add(int piece, int i) {
    double squares = 0;
    for (int k = 0; k < 3; k++) {
      int u = (k + 1) % 3;
      int w = (k + 2) % 3;
      double n = away(i, i + 1, u) * away(i, i + 2, w) - away(i, i + 1, w) * away(i, i + 2, u);
      volume[piece] += ((double) xyz[3 * corners[i] + k] - xyz[3 * piece + k]) * n;
      squares += n * n;
    }
    area[piece] += Math.sqrt(squares);
  }

  private double away(int from, int to, int axis) {
    return (double) xyz[3 * corners[to] + axis] - xyz[3 * corners[from] + axis];
  }
}
