package outrigger.shapes.campaign;

import outrigger.shapes.mesh.Mesh;

/** Winding number of a surface round a point by solid angles: plain doubles, nothing shared with the kernel. */
final class Winding {
  private Winding() {}

  static int of(Mesh m, double[] p) {
    double sum = 0;
    for (int f = 0; f < m.facetCount(); f++) {
      double[][] c = new double[3][];
      for (int k = 0; k < 3; k++) {
        int v = m.corner(f, k);
        c[k] = new double[] {m.x(v), m.y(v), m.z(v)};
      }
      sum += angle(c[0], c[1], c[2], p);
    }
    return (int) Math.rint(sum / (4 * Math.PI));
  }

  /** Solid angle of a triangle, by the formula of van Oosterom and Strackee (1983). */
  private static double angle(double[] a, double[] b, double[] c, double[] p) {
    double[] u = {a[0] - p[0], a[1] - p[1], a[2] - p[2]};
    double[] v = {b[0] - p[0], b[1] - p[1], b[2] - p[2]};
    double[] w = {c[0] - p[0], c[1] - p[1], c[2] - p[2]};
    double lu = Math.sqrt(dot(u, u));
    double lv = Math.sqrt(dot(v, v));
    double lw = Math.sqrt(dot(w, w));
    double det = u[0] * (v[1] * w[2] - v[2] * w[1]) - u[1] * (v[0] * w[2] - v[2] * w[0])
        + u[2] * (v[0] * w[1] - v[1] * w[0]);
    return 2 * Math.atan2(det, lu * lv * lw + dot(u, v) * lw + dot(v, w) * lu + dot(w, u) * lv);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
