package outrigger.generator.picture;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * A mesh seen without perspective from the front right and above, in millimetres: x to the right, y downward, depth
 * towards the eye, moved so that its least x and y are 0.
 */
final class View {
  private static final double AZIMUTH = Math.toRadians(-52);
  private static final double ELEVATION = Math.toRadians(32);
  private static final double[] RIGHT = {-StrictMath.sin(AZIMUTH), StrictMath.cos(AZIMUTH), 0};
  private static final double[] EYE = {StrictMath.cos(ELEVATION) * StrictMath.cos(AZIMUTH),
      StrictMath.cos(ELEVATION) * StrictMath.sin(AZIMUTH), StrictMath.sin(ELEVATION)};
  private static final double[] DOWN = {StrictMath.sin(ELEVATION) * StrictMath.cos(AZIMUTH),
      StrictMath.sin(ELEVATION) * StrictMath.sin(AZIMUTH), -StrictMath.cos(ELEVATION)};

  private final double[][] seen;
  private final double width;
  private final double height;

  View(Mesh mesh) {
    seen = new double[mesh.vertexCount()][];
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int v = 0; v < seen.length; v++) {
      double[] p = {Grid.toMm(mesh.x(v)), Grid.toMm(mesh.y(v)), Grid.toMm(mesh.z(v))};
      seen[v] = new double[] {dot(RIGHT, p), dot(DOWN, p), dot(EYE, p)};
      for (int k = 0; k < 2; k++) {
        least[k] = Math.min(least[k], seen[v][k]);
        most[k] = Math.max(most[k], seen[v][k]);
      }
    }
    for (double[] p : seen) {
      p[0] -= least[0];
      p[1] -= least[1];
    }
    width = most[0] - least[0];
    height = most[1] - least[1];
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  /** A vertex in pixels: scaled and moved. */
  double[] pixel(int vertex, double scale, double x, double y) {
    double[] p = seen[vertex];
    return new double[] {x + p[0] * scale, y + p[1] * scale, p[2] * scale};
  }

  /** How much a facet of unit normal n looks towards the eye, 1 for full face. */
  static double facing(double[] n) {
    return dot(EYE, n);
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
