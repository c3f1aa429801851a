package outrigger.shapes.print.slice;

import java.util.Arrays;

/** The area of one closed loop of points x, y, the first not repeated, and the same loop with fewer points. */
public final class Outline {
  private Outline() {}

  /** Enclosed area, positive if counter-clockwise. Summed about the first point, so that far loops lose no digits. */
  public static double area(double[] p) {
    double sum = 0;
    for (int i = 2; i + 3 < p.length; i += 2) {
      sum += (p[i] - p[0]) * (p[i + 3] - p[1]) - (p[i + 2] - p[0]) * (p[i + 1] - p[1]);
    }
    return sum / 2;
  }

  /**
   * Leaves corners out so that every one left out stays within a distance of what is left.
   *
   * <p>From each corner kept, the line runs as far as the wedge that sees every corner passed within the distance
   * allows: one pass over the loop. It starts at the corner farthest from the first point, which is a true corner.
   */
  static double[] simplified(double[] p, double within) {
    int n = p.length / 2;
    if (n <= 4) {
      return p;
    }
    int first = farthest(p);
    double[] kept = new double[p.length];
    int m = 0;
    int at = 0;
    while (at < n) {
      int v = 2 * ((first + at) % n);
      kept[m++] = p[v];
      kept[m++] = p[v + 1];
      at += reach(p, first + at, n - at, within);
    }
    return m < 6 ? p : Arrays.copyOf(kept, m);
  }

  private static int farthest(double[] p) {
    int best = 0;
    double most = -1;
    for (int i = 0; i < p.length; i += 2) {
      double d = (p[i] - p[0]) * (p[i] - p[0]) + (p[i + 1] - p[1]) * (p[i + 1] - p[1]);
      if (d > most) {
        most = d;
        best = i / 2;
      }
    }
    return best;
  }

  /** How many corners on from a corner a straight line may go, at most {@code left}. */
  public static int reach(double[] p, int from, int left, double within) {
    int n = p.length / 2;
    double x = p[2 * (from % n)];
    double y = p[2 * (from % n) + 1];
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double ux = 0;
    double uy = 0;
    double far = 0;
    int steps = 0;
    for (int k = 1; k <= left; k++) {
      double dx = p[2 * ((from + k) % n)] - x;
      double dy = p[2 * ((from + k) % n) + 1] - y;
      double d = Math.sqrt(dx * dx + dy * dy);
      if (k == 1) {
        ux = dx;
        uy = dy;
      }
      double along = ux * dx + uy * dy;
      double slope = (ux * dy - uy * dx) / along;
      // Turned back or out of the wedge: the corner before this one is a true one.
      if (!(along > 0) || d < far || slope < low || slope > high) {
        break;
      }
      far = d;
      steps = k;
      double half = within / d;
      low = Math.max(low, slope - half);
      high = Math.min(high, slope + half);
    }
    return Math.max(1, steps);
  }
}
