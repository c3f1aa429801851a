package outrigger.shapes.print.layer;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/** What facets that face downward cover of the bed, seen from below; mm. */
public final class Shadow {
  private Shadow() {}

  /** x0, y0, x1, y1 of each edge of a facet's shadow, which lies to the right of all three. */
  static double[] ends(Mesh mesh, int facet) {
    double[] ends = new double[12];
    for (int k = 0; k < 3; k++) {
      int a = mesh.corner(facet, k);
      int b = mesh.corner(facet, (k + 1) % 3);
      ends[4 * k] = Grid.toMm(mesh.x(a));
      ends[4 * k + 1] = Grid.toMm(mesh.y(a));
      ends[4 * k + 2] = Grid.toMm(mesh.x(b));
      ends[4 * k + 3] = Grid.toMm(mesh.y(b));
    }
    return ends;
  }

  /** Whether a place lies in a shadow or on its edge. */
  static boolean holds(double[] ends, double x, double y) {
    for (int o = 0; o < ends.length; o += 4) {
      if ((ends[o + 2] - ends[o]) * (y - ends[o + 1]) > (ends[o + 3] - ends[o + 1]) * (x - ends[o])) {
        return false;
      }
    }
    return true;
  }

  /** Whether a place lies in a facet's shadow or on its edge. */
  public static boolean holds(Mesh mesh, int facet, double x, double y) {
    return holds(ends(mesh, facet), x, y);
  }

  /** How far a place lies beside a shadow, mm; 0 in it. */
  static double beside(double[] ends, double x, double y) {
    return holds(ends, x, y) ? 0 : Math.sqrt(Math.min(OutlineGrid.square(ends, 0, x, y),
        Math.min(OutlineGrid.square(ends, 1, x, y), OutlineGrid.square(ends, 2, x, y))));
  }
}
