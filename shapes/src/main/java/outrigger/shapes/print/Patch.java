package outrigger.shapes.print;

import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * What of a facet lies between two heights, seen from below; mm.
 *
 * @param facet its number
 * @param area area as seen from below, mm^2
 * @param x middle of that area
 * @param y middle of that area
 * @param z height of the middle
 * @param low its lowest height
 */
record Patch(int facet, double area, double x, double y, double z, double low) {

  /** The part of a facet between two heights, of area 0 if there is none. */
  static Patch between(Mesh mesh, int facet, double low, double high) {
    double[][] points = new double[3][];
    for (int k = 0; k < 3; k++) {
      int v = mesh.corner(facet, k);
      points[k] = new double[] {Grid.toMm(mesh.x(v)), Grid.toMm(mesh.y(v)), Grid.toMm(mesh.z(v))};
    }
    return of(facet, clipped(clipped(points, low, 1), high, -1));
  }

  private static double[][] clipped(double[][] p, double level, int side) {
    double[][] kept = new double[p.length + 1][];
    int n = 0;
    for (int i = 0; i < p.length; i++) {
      double[] a = p[i];
      double[] b = p[(i + 1) % p.length];
      double da = side * (a[2] - level);
      double db = side * (b[2] - level);
      if (da >= 0) {
        kept[n++] = a;
      }
      if (da > 0 != db > 0 && da != 0 && db != 0) {
        double t = da / (da - db);
        kept[n++] = new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), level};
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static Patch of(int facet, double[][] p) {
    double sum = 0;
    double x = 0;
    double y = 0;
    double z = 0;
    double low = Double.POSITIVE_INFINITY;
    for (int i = 0; i < p.length; i++) {
      low = Math.min(low, p[i][2]);
      if (i > 1) {
        double area = Math.abs((p[i - 1][0] - p[0][0]) * (p[i][1] - p[0][1])
            - (p[i - 1][1] - p[0][1]) * (p[i][0] - p[0][0])) / 2;
        sum += area;
        x += area * (p[0][0] + p[i - 1][0] + p[i][0]) / 3;
        y += area * (p[0][1] + p[i - 1][1] + p[i][1]) / 3;
        z += area * (p[0][2] + p[i - 1][2] + p[i][2]) / 3;
      }
    }
    return sum > 0 ? new Patch(facet, sum, x / sum, y / sum, z / sum, low) : new Patch(facet, 0, 0, 0, 0, 0);
  }
}
