package outrigger.generator.clash;

/**
 * Distance between two facets, each given by x, y, z of its three corners, mm.
 *
 * <p>Where two facets do not meet, the shortest way between them ends on two edges, or on a corner and a face (Ericson,
 * Real-Time Collision Detection, 2005, section 5.1). Where they cross, an edge of one pierces the other.
 */
final class FacetGap {
  private double least;
  private final double[] onFirst = new double[3];
  private final double[] onSecond = new double[3];

  /** The distance of two facets, mm. */
  double between(double[] s, double[] t) {
    least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < 9 && least > 0; c += 3) {
      cornerToFace(s, c, t, true);
      cornerToFace(t, c, s, false);
      for (int e = 0; e < 9; e += 3) {
        edgeToEdge(s, c, (c + 3) % 9, t, e, (e + 3) % 9);
      }
      pierce(s, c, (c + 3) % 9, t);
      pierce(t, c, (c + 3) % 9, s);
    }
    return least;
  }

  /** The middle between the two nearest points last found. */
  Spot middle() {
    return new Spot((onFirst[0] + onSecond[0]) / 2, (onFirst[1] + onSecond[1]) / 2, (onFirst[2] + onSecond[2]) / 2);
  }

  private void offer(double px, double py, double pz, double qx, double qy, double qz) {
    double d = Math.sqrt((px - qx) * (px - qx) + (py - qy) * (py - qy) + (pz - qz) * (pz - qz));
    if (d < least) {
      least = d;
      set(onFirst, px, py, pz);
      set(onSecond, qx, qy, qz);
    }
  }

  private static void set(double[] to, double x, double y, double z) {
    to[0] = x;
    to[1] = y;
    to[2] = z;
  }

  /** The foot of a corner on a face, where it falls within the face; edges take care of the rest. */
  private void cornerToFace(double[] s, int c, double[] t, boolean forward) {
    double[] n = normal(t);
    double nn = n[0] * n[0] + n[1] * n[1] + n[2] * n[2];
    if (nn == 0) {
      return;
    }
    double k = (n[0] * (s[c] - t[0]) + n[1] * (s[c + 1] - t[1]) + n[2] * (s[c + 2] - t[2])) / nn;
    double x = s[c] - k * n[0];
    double y = s[c + 1] - k * n[1];
    double z = s[c + 2] - k * n[2];
    if (isWithin(t, n, x, y, z)) {
      offer(s[c], s[c + 1], s[c + 2], x, y, z);
    }
  }

  private static double[] normal(double[] t) {
    double ux = t[3] - t[0];
    double uy = t[4] - t[1];
    double uz = t[5] - t[2];
    double vx = t[6] - t[0];
    double vy = t[7] - t[1];
    double vz = t[8] - t[2];
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  /** Whether a point of a facet's plane lies on the inner side of its three edges. */
  private static boolean isWithin(double[] t, double[] n, double x, double y, double z) {
    for (int a = 0; a < 9; a += 3) {
      int b = (a + 3) % 9;
      double ex = t[b] - t[a];
      double ey = t[b + 1] - t[a + 1];
      double ez = t[b + 2] - t[a + 2];
      double px = x - t[a];
      double py = y - t[a + 1];
      double pz = z - t[a + 2];
      double side = n[0] * (ey * pz - ez * py) + n[1] * (ez * px - ex * pz) + n[2] * (ex * py - ey * px);
      if (side < 0) {
        return false;
      }
    }
    return true;
  }

  /** An edge that goes through a face leaves no distance. */
  private void pierce(double[] s, int p, int q, double[] t) {
    double[] n = normal(t);
    double a = n[0] * (s[p] - t[0]) + n[1] * (s[p + 1] - t[1]) + n[2] * (s[p + 2] - t[2]);
    double b = n[0] * (s[q] - t[0]) + n[1] * (s[q + 1] - t[1]) + n[2] * (s[q + 2] - t[2]);
    if (a * b < 0) {
      double k = a / (a - b);
      double x = s[p] + k * (s[q] - s[p]);
      double y = s[p + 1] + k * (s[q + 1] - s[p + 1]);
      double z = s[p + 2] + k * (s[q + 2] - s[p + 2]);
      if (isWithin(t, n, x, y, z)) {
        offer(x, y, z, x, y, z);
      }
    }
  }

  /** The nearest points of two edges p + i u and r + j v, i and j from 0 to 1. */
  private void edgeToEdge(double[] s, int p, int q, double[] t, int r, int w) {
    double ux = s[q] - s[p];
    double uy = s[q + 1] - s[p + 1];
    double uz = s[q + 2] - s[p + 2];
    double vx = t[w] - t[r];
    double vy = t[w + 1] - t[r + 1];
    double vz = t[w + 2] - t[r + 2];
    double dx = s[p] - t[r];
    double dy = s[p + 1] - t[r + 1];
    double dz = s[p + 2] - t[r + 2];
    double uu = ux * ux + uy * uy + uz * uz;
    double vv = vx * vx + vy * vy + vz * vz;
    double uv = ux * vx + uy * vy + uz * vz;
    double ud = ux * dx + uy * dy + uz * dz;
    double vd = vx * dx + vy * dy + vz * dz;
    double det = uu * vv - uv * uv;
    double i = det > 0 ? clamp((uv * vd - ud * vv) / det) : 0;
    double j = clamp((uv * i + vd) / vv);
    i = clamp((uv * j - ud) / uu);
    offer(s[p] + i * ux, s[p + 1] + i * uy, s[p + 2] + i * uz, t[r] + j * vx, t[r + 1] + j * vy, t[r + 2] + j * vz);
  }

  private static double clamp(double k) {
    return Math.max(0, Math.min(1, k));
  }
}
