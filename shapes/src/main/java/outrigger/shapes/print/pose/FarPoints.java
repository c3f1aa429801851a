package outrigger.shapes.print.pose;

import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.facet.CubeMap;

/**
 * The vertices a hull is laid round: all of a small mesh; of a large one, in each of some directions seen from the
 * centre of its volume, the farthest, so that time stays linear. The hull of a large mesh is then near the true one.
 */
final class FarPoints {
  /** Up to how many vertices all are taken: own choice. */
  private static final int ALL = 1500;
  /** 864 directions, about 8 degrees apart: own choice. */
  private static final CubeMap DIRECTIONS = new CubeMap(12);

  private FarPoints() {}

  static int[] of(Specimen s) {
    Mesh mesh = s.mesh();
    if (mesh.vertexCount() <= ALL) {
      int[] all = new int[mesh.vertexCount()];
      Arrays.setAll(all, v -> v);
      return all;
    }
    int[] farthest = new int[DIRECTIONS.cells()];
    double[] distance = new double[DIRECTIONS.cells()];
    Arrays.fill(farthest, -1);
    double x0 = s.measures().centroidX() * Grid.PER_MM;
    double y0 = s.measures().centroidY() * Grid.PER_MM;
    double z0 = s.measures().centroidZ() * Grid.PER_MM;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double x = mesh.x(v) - x0;
      double y = mesh.y(v) - y0;
      double z = mesh.z(v) - z0;
      double far = x * x + y * y + z * z;
      int cell = DIRECTIONS.cell(x, y, z);
      if (far > distance[cell]) {
        distance[cell] = far;
        farthest[cell] = v;
      }
    }
    return Arrays.stream(farthest).filter(v -> v >= 0).toArray();
  }
}
