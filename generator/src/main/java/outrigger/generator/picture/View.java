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

  private final double[] eye;
  private final double[] down;

  private final double left;
  private final double top;
  private final double width;
  private final double height;

  View(Mesh mesh) {
    this(mesh, false);
  }

  /** @param below whether it is seen from below in place of above */
  View(Mesh mesh, boolean below) {
    double up = below ? -1 : 1;
    double flat = StrictMath.cos(ELEVATION);
    double steep = up * StrictMath.sin(ELEVATION);
    eye = new double[] {flat * StrictMath.cos(AZIMUTH), flat * StrictMath.sin(AZIMUTH), steep};
    down = new double[] {steep * StrictMath.cos(AZIMUTH), steep * StrictMath.sin(AZIMUTH), -flat};
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
  private double[] seen(Mesh mesh, int vertex) {
    return seen(Grid.toMm(mesh.x(vertex)), Grid.toMm(mesh.y(vertex)), Grid.toMm(mesh.z(vertex)));
  }

  private double[] seen(double... p) {
    return new double[] {Vectors.dot(RIGHT, p), Vectors.dot(down, p), Vectors.dot(eye, p)};
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  /** A vertex in pixels: seen, scaled, and moved so that the box's upper left corner comes to (x, y). */
  double[] pixel(Mesh mesh, int vertex, double scale, double x, double y) {
    return pixel(seen(mesh, vertex), scale, x, y);
  }

  /** The same of any place, in mm. */
  double[] pixelOf(double[] place, double scale, double x, double y) {
    return pixel(seen(place), scale, x, y);
  }

  private double[] pixel(double[] p, double scale, double x, double y) {
    return new double[] {x + (p[0] - left) * scale, y + (p[1] - top) * scale, p[2] * scale};
  }

  /** Whether a facet of this normal is turned to the eye. */
  boolean isFacing(double[] normal) {
    return Vectors.dot(eye, normal) > 0;
  }

  /** Tone of a facet; from below the lights stand below. */
  int tone(double[] normal) {
    return Tone.of(eye[2] < 0 ? new double[] {normal[0], normal[1], -normal[2]} : normal);
  }
}
