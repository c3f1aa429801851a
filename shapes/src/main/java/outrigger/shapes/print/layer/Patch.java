package outrigger.shapes.print.layer;

import java.util.List;
import java.util.Optional;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Normals;

/**
 * What of a facet lies between two heights, seen from below; mm.
 *
 * @param facet its number
 * @param area area as seen from below, mm^2
 * @param x middle of that area
 * @param y middle of that area
 * @param z height of the middle
 * @param low its lowest height
 */
public record Patch(int facet, double area, double x, double y, double z, double low) {
  /** A triangle between two levels has no more corners. */
  private static final int MOST = 5;
  /** Parts of a facet's area that are all of it and nothing: layers' outlines lie up to half a layer's slope off its own. */
  private static final double WHOLE = 0.9;
  private static final double NOTHING = 1e-3;

  /** The part of a facet between two heights, of area 0 if there is none. */
  static Patch between(Mesh mesh, int facet, double low, double high) {
    double[] p = new double[3 * MOST];
    return of(facet, p, cut(mesh, facet, low, high, p));
  }

  /**
   * The same of a facet that faces downward, within a piece of a layer: all of it where next to nothing lies beside.
   *
   * @param piece its outlines
   */
  static Optional<Patch> within(List<double[]> piece, Mesh mesh, int facet, double low, double high) {
    double[] p = new double[3 * MOST];
    int corners = cut(mesh, facet, low, high, p);
    double[] loop = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      // clockwise from below
      loop[2 * i] = p[3 * (corners - 1 - i)];
      loop[2 * i + 1] = p[3 * (corners - 1 - i) + 1];
    }
    Patch whole = of(facet, p, corners);
    ConvexClip part = ConvexClip.of(piece, loop);
    if (part.area() >= WHOLE * whole.area) {
      return Optional.of(whole);
    }
    return part.area() <= NOTHING * whole.area ? Optional.empty() : Optional.of(whole.cutTo(part, mesh));
  }

  /** What of it lies in a part of its area; its lowest height is kept. */
  private Patch cutTo(ConvexClip part, Mesh mesh) {
    double[] normal = Normals.doubled(mesh, facet);
    double rise = normal[0] * (part.x() - x) + normal[1] * (part.y() - y);
    return new Patch(facet, part.area(), part.x(), part.y(), z - rise / normal[2], low);
  }

  /** Sets p to the corners of a facet's part between two heights; returns how many there are. */
  private static int cut(Mesh mesh, int facet, double low, double high, double[] p) {
    for (int k = 0; k < 3; k++) {
      int v = mesh.corner(facet, k);
      p[3 * k] = Grid.toMm(mesh.x(v));
      p[3 * k + 1] = Grid.toMm(mesh.y(v));
      p[3 * k + 2] = Grid.toMm(mesh.z(v));
    }
    double[] q = new double[3 * MOST];
    int corners = clip(p, 3, low, 1, q);
    return clip(q, corners, high, -1, p);
  }

  /** Sets q to the part of a polygon on one side of a level; returns how many corners it has. */
  private static int clip(double[] p, int corners, double level, int side, double[] q) {
    int n = 0;
    for (int i = 0; i < corners; i++) {
      int a = 3 * i;
      int b = i + 1 == corners ? 0 : a + 3;
      double da = side * (p[a + 2] - level);
      double db = side * (p[b + 2] - level);
      if (da >= 0) {
        q[n++] = p[a];
        q[n++] = p[a + 1];
        q[n++] = p[a + 2];
      }
      if (da > 0 != db > 0 && da != 0 && db != 0) {
        double t = da / (da - db);
        q[n++] = p[a] + t * (p[b] - p[a]);
        q[n++] = p[a + 1] + t * (p[b + 1] - p[a + 1]);
        q[n++] = level;
      }
    }
    return n / 3;
  }

  private static Patch of(int facet, double[] p, int corners) {
    double sum = 0;
    double x = 0;
    double y = 0;
    double z = 0;
    double low = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3 * corners; i += 3) {
      low = Math.min(low, p[i + 2]);
      if (i > 3) {
        double area = Math.abs((p[i - 3] - p[0]) * (p[i + 1] - p[1]) - (p[i - 2] - p[1]) * (p[i] - p[0])) / 2;
        sum += area;
        x += area * (p[0] + p[i - 3] + p[i]) / 3;
        y += area * (p[1] + p[i - 2] + p[i + 1]) / 3;
        z += area * (p[2] + p[i - 1] + p[i + 2]) / 3;
      }
    }
    return sum > 0 ? new Patch(facet, sum, x / sum, y / sum, z / sum, low) : new Patch(facet, 0, 0, 0, 0, 0);
  }
}
