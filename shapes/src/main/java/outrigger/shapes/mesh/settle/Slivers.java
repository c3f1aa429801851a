package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import outrigger.shapes.num.DisjointSets;

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

  /**
   * Corners of the facets that stay.
   *
   * @param corners of facets no more than two of which share an edge
   */
  static int[] without(int[] xyz, int[] corners) {
    DisjointSets pieces = new DisjointSets(xyz.length / 3);
    for (int i = 0; i < corners.length; i += 3) {
      pieces.join(corners[i], corners[i + 1]);
      pieces.join(corners[i], corners[i + 2]);
    }
    Slivers slivers = new Slivers(xyz, corners);
    for (int i = 0; i < corners.length; i += 3) {
      slivers.add(pieces.find(corners[i]), i);
    }
    int[] kept = new int[corners.length];
    int n = 0;
    for (int i = 0; i < kept.length; i += 3) {
      int p = pieces.find(corners[i]);
      // on average as thick as the volume over half the area: a grid step or more
      if (Math.abs(slivers.volume[p]) / 6 >= slivers.area[p] / 4) {
        System.arraycopy(corners, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
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
