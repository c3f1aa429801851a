package outrigger.generator.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * The cross-section of a mesh at a height, measured along its outline by Green's theorem; mm.
 *
 * @param z height
 * @param area mm^2, above 0
 * @param x of its centroid
 * @param y of its centroid
 * @param xx integral of x squared about the centroid, mm^4
 * @param yy the same of y squared
 * @param xy the same of x times y
 * @param outline corners
 */
public record Section(double z, double area, double x, double y, double xx, double yy, double xy, List<Corner> outline) {
  /** Half a grid step: no corner of a mesh lies at such a height. */
  private static final double BETWEEN = Grid.STEP / 2;

  /** A corner of the outline. */
  record Corner(double x, double y) {}

  public Section {
    outline = List.copyOf(outline);
  }

  /** The section at a height, moved by half a grid step so that it meets no corner; empty where nothing is there. */
  public static Optional<Section> of(Mesh mesh, double height) {
    double z = Grid.toMm(Grid.fromMm(height)) + BETWEEN;
    Sums sums = new Sums();
    double[] cut = new double[4];
    for (int f = 0; f < mesh.facetCount(); f++) {
      if (cut(mesh, f, z, cut)) {
        sums.add(cut[0], cut[1], cut[2], cut[3]);
      }
    }
    return sums.section(z);
  }

  /** Where a facet meets a height, the solid to the left of the way from the first point to the second. */
  private static boolean cut(Mesh mesh, int facet, double z, double[] cut) {
    boolean met = false;
    for (int k = 0; k < 3; k++) {
      int a = mesh.corner(facet, k);
      int b = mesh.corner(facet, (k + 1) % 3);
      double za = Grid.toMm(mesh.z(a));
      double zb = Grid.toMm(mesh.z(b));
      if (za < z != zb < z) {
        double share = (z - za) / (zb - za);
        // Facets run counter-clockwise seen from outside: the solid lies to the left of the way that ends where an edge
        // comes up.
        int at = za < z ? 2 : 0;
        cut[at] = Grid.toMm(mesh.x(a)) + share * Grid.toMm(mesh.x(b) - mesh.x(a));
        cut[at + 1] = Grid.toMm(mesh.y(a)) + share * Grid.toMm(mesh.y(b) - mesh.y(a));
        met = true;
      }
    }
    return met;
  }

  /** Integrals over what an outline encloses. */
  private static final class Sums {
    private double area;
    private double x;
    private double y;
    private double xx;
    private double yy;
    private double xy;
    private final List<Corner> outline = new ArrayList<>();

    void add(double px, double py, double qx, double qy) {
      double cross = px * qy - qx * py;
      area += cross / 2;
      x += cross * (px + qx) / 6;
      y += cross * (py + qy) / 6;
      xx += cross * (px * px + px * qx + qx * qx) / 12;
      yy += cross * (py * py + py * qy + qy * qy) / 12;
      xy += cross * (px * qy + 2 * px * py + 2 * qx * qy + qx * py) / 24;
      outline.add(new Corner(px, py));
    }

    Optional<Section> section(double z) {
      if (!(area > 0)) {
        return Optional.empty();
      }
      double cx = x / area;
      double cy = y / area;
      return Optional.of(new Section(z, area, cx, cy, xx - area * cx * cx, yy - area * cy * cy, xy - area * cx * cy,
          outline));
    }
  }

  /**
   * Greatest tension under a pull along Z and bending about the centroid, N and N mm: a beam whose sections stay flat.
   *
   * @param pull up, N; below 0 pushes down
   * @param alongX integral of stress times x that balances the load
   * @param alongY the same of y
   * @return MPa; 0 or less where nothing is pulled
   */
  public double tension(double pull, double alongX, double alongY) {
    double det = xx * yy - xy * xy;
    double slopeX = (alongX * yy - alongY * xy) / det;
    double slopeY = (alongY * xx - alongX * xy) / det;
    return pull / area + outline.stream().mapToDouble(c -> slopeX * (c.x - x) + slopeY * (c.y - y)).max().orElse(0);
  }
}
