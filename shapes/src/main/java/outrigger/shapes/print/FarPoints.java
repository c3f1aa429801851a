package outrigger.shapes.print;

import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * The vertices a hull is laid round: all of a small mesh; of a large one, in each of {@value #CELLS} directions seen from the
 * centre of its volume, the farthest, so that time stays linear. The hull of a large mesh is then near the true one.
 */
final class FarPoints {
  private static final int ALL = 1500;
  private static final int SIDE = 12;
  private static final int CELLS = 6 * SIDE * SIDE;

  private FarPoints() {}

  static int[] of(Specimen s) {
    Mesh mesh = s.mesh();
    if (mesh.vertexCount() <= ALL) {
      int[] all = new int[mesh.vertexCount()];
      Arrays.setAll(all, v -> v);
      return all;
    }
    int[] farthest = new int[CELLS];
    double[] distance = new double[CELLS];
    Arrays.fill(farthest, -1);
    double x0 = s.measures().centroidX() * Grid.PER_MM;
    double y0 = s.measures().centroidY() * Grid.PER_MM;
    double z0 = s.measures().centroidZ() * Grid.PER_MM;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double x = mesh.x(v) - x0;
      double y = mesh.y(v) - y0;
      double z = mesh.z(v) - z0;
      double far = x * x + y * y + z * z;
      int cell = cell(x, y, z);
      if (far > distance[cell]) {
        distance[cell] = far;
        farthest[cell] = v;
      }
    }
    return Arrays.stream(farthest).filter(v -> v >= 0).toArray();
  }

  /** The cell of a cube's surface that a direction goes through. */
  private static int cell(double x, double y, double z) {
    double ax = Math.abs(x);
    double ay = Math.abs(y);
    double az = Math.abs(z);
    if (ax >= ay && ax >= az) {
      return cell(x > 0 ? 0 : 1, y, z, ax);
    }
    return ay >= az ? cell(y > 0 ? 2 : 3, x, z, ay) : cell(z > 0 ? 4 : 5, x, y, az);
  }

  private static int cell(int side, double a, double b, double most) {
    int i = (int) Math.min(SIDE - 1.0, (a / most + 1) / 2 * SIDE);
    int j = (int) Math.min(SIDE - 1.0, (b / most + 1) / 2 * SIDE);
    return (side * SIDE + i) * SIDE + j;
  }
}
