package outrigger.shapes.print.slice;

import java.util.Optional;

/**
 * The circle through flat points by least squares.
 *
 * @param x middle
 * @param y middle
 * @param radius its radius
 */
public record FlatCircle(double x, double y, double radius) {
  /** How far points of a round thing may lie off its circle: a share of the radius and two chord errors, mm. */
  private static final double SHARE = 0.01;
  private static final double CHORD = 0.02;
  /** Points whose spread across a line is less than this part of that along it, both squared, lie on it. */
  private static final double LINE = 1e-9;

  /** Kasa's linear form; empty if all points lie on one line. */
  public static Optional<FlatCircle> through(double[] p) {
    int n = p.length / 2;
    double mx = 0;
    double my = 0;
    for (int i = 0; i < p.length; i += 2) {
      mx += p[i] / n;
      my += p[i + 1] / n;
    }
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double x3 = 0;
    double y3 = 0;
    for (int i = 0; i < p.length; i += 2) {
      double x = p[i] - mx;
      double y = p[i + 1] - my;
      xx += x * x;
      xy += x * y;
      yy += y * y;
      x3 += x * (x * x + y * y) / 2;
      y3 += y * (x * x + y * y) / 2;
    }
    double det = xx * yy - xy * xy;
    if (!(det > LINE * xx * xx)) {
      return Optional.empty();
    }
    double cx = (x3 * yy - y3 * xy) / det;
    double cy = (y3 * xx - x3 * xy) / det;
    return Optional.of(new FlatCircle(mx + cx, my + cy, Math.sqrt(cx * cx + cy * cy + (xx + yy) / n)));
  }

  /** Whether all points lie on it but for the chords of a polygon. */
  public boolean fits(double[] p) {
    for (int i = 0; i < p.length; i += 2) {
      if (Math.abs(Math.hypot(p[i] - x, p[i + 1] - y) - radius) > SHARE * radius + CHORD) {
        return false;
      }
    }
    return true;
  }
}
