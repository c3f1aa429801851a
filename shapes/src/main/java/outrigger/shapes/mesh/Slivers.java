package outrigger.shapes.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Leaves out closed pieces of surface that are thinner than the grid: crumbs and pockets that rounding made or turned
 * inside out.
 */
final class Slivers {
  private final int[] xyz;
  private final int[] corners;
  /** Of each piece, by its least vertex, six times the volume and twice the area. */
  private final Map<Integer, double[]> sizes = new HashMap<>();

  private Slivers(Mesh mesh) {
    xyz = mesh.xyz();
    corners = mesh.corners();
  }

  /** Corners of the facets that stay, of a mesh in which no more than two facets share an edge. */
  static int[] without(Mesh mesh) {
    Slivers slivers = new Slivers(mesh);
    int[] piece = slivers.pieces(mesh.vertexCount());
    for (int i = 0; i < slivers.corners.length; i += 3) {
      slivers.add(slivers.sizes.computeIfAbsent(piece[slivers.corners[i]], p -> new double[2]),
          piece[slivers.corners[i]], i);
    }
    int[] kept = new int[slivers.corners.length];
    int n = 0;
    for (int i = 0; i < kept.length; i += 3) {
      double[] size = slivers.sizes.get(piece[slivers.corners[i]]);
      // thick, on average, as the volume over half the area
      if (Math.abs(size[0]) / 6 >= size[1] / 4) {
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

  /** Adds a facet's share, seen from one vertex of its piece. */
  private void add(double[] size, int from, int i) {
    double[] a = away(from, corners[i]);
    double[] b = away(from, corners[i + 1]);
    double[] c = away(from, corners[i + 2]);
    double[] n = new double[3];
    for (int k = 0; k < 3; k++) {
      int u = (k + 1) % 3;
      int w = (k + 2) % 3;
      n[k] = (b[u] - a[u]) * (c[w] - a[w]) - (b[w] - a[w]) * (c[u] - a[u]);
      size[0] += a[k] * n[k];
    }
    size[1] += Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
  }

  private double[] away(int from, int v) {
    return new double[] {xyz[3 * v] - (double) xyz[3 * from], xyz[3 * v + 1] - (double) xyz[3 * from + 1],
        xyz[3 * v + 2] - (double) xyz[3 * from + 2]};
  }
}
