package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.print.FacetField;

/** A round spot on a facet, no less than a circle, cut off where the facet ends; mm. */
final class Disc {
  private static final int SIDES = 8;
  private static final double FULL = 2 * Math.PI;

  private Disc() {}

  /**
   * Corners of the spot, fewer than three if nothing of it lies on the facet.
   *
   * @param n the facet's unit normal
   * @param corners the facet's corners, counter-clockwise seen against the normal
   */
  static List<double[]> on(FacetField.Place place, double[] n, double[]... corners) {
    double[] u = Math.abs(n[0]) < 0.6 ? Vectors.unit(0, n[2], -n[1]) : Vectors.unit(-n[2], 0, n[0]);
    double[] v = cross(n, u);
    List<double[]> spot = new ArrayList<>();
    double radius = place.radius() / StrictMath.cos(FULL / 2 / SIDES);
    for (int i = 0; i < SIDES; i++) {
      double a = radius * StrictMath.cos(FULL * i / SIDES);
      double b = radius * StrictMath.sin(FULL * i / SIDES);
      spot.add(new double[] {place.x() + a * u[0] + b * v[0], place.y() + a * u[1] + b * v[1],
          place.z() + a * u[2] + b * v[2]});
    }
    for (int k = 0; k < corners.length; k++) {
      double[] from = corners[k];
      double[] to = corners[(k + 1) % corners.length];
      double[] inward = cross(n, new double[] {to[0] - from[0], to[1] - from[1], to[2] - from[2]});
      spot = cut(spot, inward, Vectors.dot(inward, from));
    }
    return spot;
  }

  private static List<double[]> cut(List<double[]> spot, double[] inward, double level) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < spot.size(); i++) {
      double[] a = spot.get(i);
      double[] b = spot.get((i + 1) % spot.size());
      double da = Vectors.dot(inward, a) - level;
      double db = Vectors.dot(inward, b) - level;
      if (da >= 0) {
        kept.add(a);
      }
      if (da >= 0 != db >= 0) {
        double t = da / (da - db);
        kept.add(new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2])});
      }
    }
    return kept;
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
  }
}
