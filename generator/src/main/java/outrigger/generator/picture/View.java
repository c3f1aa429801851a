package outrigger.generator.picture;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * The box that a mesh fills seen without perspective from the front right and above, in millimetres: x to the right,
 * y downward.
 */
final class View {
  /** Where the eye stands: degrees from X towards Y, and above the XY plane. */
  private static final double AZIMUTH = Math.toRadians(-52);
  private static final double ELEVATION = Math.toRadians(32);
  private static final double[] RIGHT = {-StrictMath.sin(AZIMUTH), StrictMath.cos(AZIMUTH), 0};
  private static final double[] EYE = {StrictMath.cos(ELEVATION) * StrictMath.cos(AZIMUTH),
      StrictMath.cos(ELEVATION) * StrictMath.sin(AZIMUTH), StrictMath.sin(ELEVATION)};
  private static final double[] DOWN = {StrictMath.sin(ELEVATION) * StrictMath.cos(AZIMUTH),
      StrictMath.sin(ELEVATION) * StrictMath.sin(AZIMUTH), -StrictMath.cos(ELEVATION)};

  private final double left;
  private final double top;
  private final double width;
  private final double height;

  View(Mesh mesh) {
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double[] p = seen(mesh, v);
      for (int k = 0; k < 2; k++) {
        least[k] = Math.min(least[k], p[k]);
        most[k] = Math.max(most[k], p[k]);
      }
    }
    left = least[0];
    top = least[1];
    width = most[0] - left;
    height = most[1] - top;
  }

  /** A vertex as seen, in mm: x, y and depth towards the eye. */
  private static double[] seen(Mesh mesh, int vertex) {
    double[] p = {Grid.toMm(mesh.x(vertex)), Grid.toMm(mesh.y(vertex)), Grid.toMm(mesh.z(vertex))};
    return new double[] {Vectors.dot(RIGHT, p), Vectors.dot(DOWN, p), Vectors.dot(EYE, p)};
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  /** A vertex in pixels: seen, scaled, and moved so that the box's upper left corner comes to (x, y). */
  double[] pixel(Mesh mesh, int vertex, double scale, double x, double y) {
    double[] p = seen(mesh, vertex);
    return new double[] {x + (p[0] - left) * scale, y + (p[1] - top) * scale, p[2] * scale};
  }

  /** Whether a facet of this normal is turned to the eye. */
  static boolean isFacing(double[] normal) {
    return Vectors.dot(EYE, normal) > 0;
  }
}
