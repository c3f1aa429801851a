package outrigger.shapes.print;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * The upper part of a round hole that lies on its side; mm.
 *
 * @param diameter of the hole
 * @param x middle of the roof, on the hole's axis
 * @param y middle of the roof, on the hole's axis
 * @param z height of the axis
 */
record RoundRoof(double diameter, double x, double y, double z) {
  /** How far corners may lie off the circle: a share of the radius and a chord error, mm. */
  private static final double SHARE = 0.01;
  private static final double CHORD = 0.02;
  /** Mean square of what normals lean along the axis: two degrees. */
  private static final double ALONG = 0.001;

  /**
   * The round hole whose roof undersides are, if they are one: their normals lie square to one level axis, their
   * corners on a circle about it (least squares), and the axis below them.
   */
  static Optional<RoundRoof> of(Hanging hanging, Undersides undersides, Mesh mesh) {
    List<Patch> patches = hanging.patches();
    int[] facets = patches.stream().mapToInt(Patch::facet).distinct().sorted().toArray();
    double[] across = across(patches, undersides);
    if (across.length == 0) {
      return Optional.empty();
    }
    double[] corners = IntStream.of(facets).flatMap(f -> IntStream.range(0, 3).map(k -> mesh.corner(f, k))).distinct()
        .mapToObj(v -> new double[] {Grid.toMm(mesh.x(v)) * across[0] + Grid.toMm(mesh.y(v)) * across[1],
            Grid.toMm(mesh.z(v))}).flatMapToDouble(Arrays::stream).toArray();
    double[] circle = circle(corners);
    if (circle.length == 0 || !fits(corners, circle)) {
      return Optional.empty();
    }
    double[] middle = hanging.middle();
    double off = circle[0] - middle[0] * across[0] - middle[1] * across[1];
    return Optional.of(new RoundRoof(2 * flat(facets, undersides, mesh, across, circle), middle[0] + off * across[0],
        middle[1] + off * across[1], circle[1]));
  }

  /** The level direction all normals lean in, either way; empty if they lean in several or in none. */
  private static double[] across(List<Patch> patches, Undersides undersides) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double all = 0;
    for (Patch patch : patches) {
      double nx = undersides.normal(patch.facet(), 0);
      double ny = undersides.normal(patch.facet(), 1);
      double nz = undersides.normal(patch.facet(), 2);
      double weight = patch.area() / (nx * nx + ny * ny + nz * nz);
      xx += weight * nx * nx;
      xy += weight * nx * ny;
      yy += weight * ny * ny;
      all += patch.area();
    }
    double spread = Math.hypot(xx - yy, 2 * xy);
    double least = (xx + yy - spread) / 2;
    if (!(least <= ALONG * all && spread > 0.01 * all)) {
      return new double[0];
    }
    double angle = StrictMath.atan2(2 * xy, xx - yy) / 2;
    return new double[] {StrictMath.cos(angle), StrictMath.sin(angle)};
  }

  /** Middle and radius of the circle through points by least squares (Kasa's linear form); empty if there is none. */
  private static double[] circle(double[] p) {
    int n = p.length / 2;
    double mu = IntStream.range(0, n).mapToDouble(i -> p[2 * i]).sum() / n;
    double mw = IntStream.range(0, n).mapToDouble(i -> p[2 * i + 1]).sum() / n;
    double uu = 0;
    double uw = 0;
    double ww = 0;
    double u3 = 0;
    double w3 = 0;
    for (int i = 0; i < p.length; i += 2) {
      double u = p[i] - mu;
      double w = p[i + 1] - mw;
      uu += u * u;
      uw += u * w;
      ww += w * w;
      u3 += u * (u * u + w * w) / 2;
      w3 += w * (u * u + w * w) / 2;
    }
    double det = uu * ww - uw * uw;
    if (!(det > 1e-9 * uu * uu)) {
      return new double[0];
    }
    double cu = (u3 * ww - w3 * uw) / det;
    double cw = (w3 * uu - u3 * uw) / det;
    return new double[] {mu + cu, mw + cw, Math.sqrt(cu * cu + cw * cw + (uu + ww) / n)};
  }

  private static boolean fits(double[] p, double[] circle) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < p.length; i += 2) {
      double r = Math.hypot(p[i] - circle[0], p[i + 1] - circle[1]);
      if (Math.abs(r - circle[2]) > SHARE * circle[2] + CHORD || p[i + 1] < circle[1]) {
        return false;
      }
      low = Math.min(low, p[i]);
      high = Math.max(high, p[i]);
    }
    return high - low > circle[2];
  }

  /** Distance of the flats from the axis: what passes the hole. */
  private static double flat(int[] facets, Undersides undersides, Mesh mesh, double[] across, double[] circle) {
    double sum = 0;
    for (int f : facets) {
      int v = mesh.corner(f, 0);
      double nu = undersides.normal(f, 0) * across[0] + undersides.normal(f, 1) * across[1];
      double nz = undersides.normal(f, 2);
      double u = Grid.toMm(mesh.x(v)) * across[0] + Grid.toMm(mesh.y(v)) * across[1] - circle[0];
      sum += Math.abs(u * nu + (Grid.toMm(mesh.z(v)) - circle[1]) * nz) / Math.hypot(nu, nz);
    }
    return sum / facets.length;
  }
}
