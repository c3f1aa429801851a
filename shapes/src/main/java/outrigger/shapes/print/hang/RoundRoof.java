package outrigger.shapes.print.hang;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.layer.Patch;
import outrigger.shapes.print.layer.Undersides;
import outrigger.shapes.print.slice.FlatCircle;

/**
 * The upper part of a round hole that lies on its side; mm.
 *
 * @param diameter of the hole
 * @param x middle of the roof, on the hole's axis
 * @param y middle of the roof, on the hole's axis
 * @param z height of the axis
 * @param isWhole whether it leans as far as the overhang limit at its sides, as a hole's does and a flat arch's does not
 */
record RoundRoof(double diameter, double x, double y, double z, boolean isWhole) {
  /** Width of a hole's roof that leans beyond 45 degrees, in radii, less a facet on each side. */
  private static final double WHOLE = 1.2;
  /** Mean square of what normals lean along the axis: two degrees. */
  private static final double ALONG = 0.001;
  /** Distance of the sides of a polygon of twelve from its middle, in radii of its corners: fewer sides are no round. */
  private static final double FLATTEST = 0.965;
  /** From so many times as much on, rounding decides nothing. */
  private static final double ENOUGH = 1.001;

  /**
   * The round hole whose roof undersides are, if they are one: their normals lie square to one level axis, their
   * corners on a circle about it (least squares), and the axis below them.
   */
  static Optional<RoundRoof> of(Hanging hanging, Undersides undersides, Mesh mesh) {
    List<Patch> patches = hanging.patches();
    double[] across = across(hanging, undersides);
    if (across.length == 0) {
      return Optional.empty();
    }
    int[] facets = patches.stream().mapToInt(Patch::facet).distinct().sorted().toArray();
    double[] corners = IntStream.of(facets).flatMap(f -> IntStream.range(0, 3).map(k -> mesh.corner(f, k))).distinct()
        .mapToObj(v -> new double[] {Grid.toMm(mesh.x(v)) * across[0] + Grid.toMm(mesh.y(v)) * across[1],
            Grid.toMm(mesh.z(v))}).flatMapToDouble(Arrays::stream).toArray();
    Optional<FlatCircle> found = FlatCircle.through(corners).filter(circle -> isRoof(corners, circle)
        && Arrays.stream(flats(facets, undersides, mesh, across, circle)).min().orElse(0) >= FLATTEST * circle.radius());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    FlatCircle circle = found.get();
    double[] middle = hanging.middle();
    double off = circle.x() - middle[0] * across[0] - middle[1] * across[1];
    double flat = Arrays.stream(flats(facets, undersides, mesh, across, circle)).average().orElse(0);
    return Optional.of(new RoundRoof(2 * flat, middle[0] + off * across[0],
        middle[1] + off * across[1], circle.y(), width(corners) > WHOLE * circle.radius()));
  }

  /** The level direction all normals lean in, either way; empty if they lean in several or in none. */
  private static double[] across(Hanging hanging, Undersides undersides) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double all = hanging.area();
    for (Patch patch : hanging.patches()) {
      // what leans along the axis only grows
      if (xx + yy - Math.sqrt((xx - yy) * (xx - yy) + 4 * xy * xy) > 2 * ENOUGH * ALONG * all) {
        return new double[0];
      }
      double nx = undersides.normal(patch.facet(), 0);
      double ny = undersides.normal(patch.facet(), 1);
      double nz = undersides.normal(patch.facet(), 2);
      double weight = patch.area() / (nx * nx + ny * ny + nz * nz);
      xx += weight * nx * nx;
      xy += weight * nx * ny;
      yy += weight * ny * ny;
    }
    double spread = Math.hypot(xx - yy, 2 * xy);
    double least = (xx + yy - spread) / 2;
    if (!(least <= ALONG * all && spread > 0.01 * all)) {
      return new double[0];
    }
    double angle = StrictMath.atan2(2 * xy, xx - yy) / 2;
    return new double[] {StrictMath.cos(angle), StrictMath.sin(angle)};
  }

  /** Whether the corners lie on the circle's upper half, over more than its radius. */
  private static boolean isRoof(double[] p, FlatCircle circle) {
    for (int i = 0; i < p.length; i += 2) {
      if (p[i + 1] < circle.y()) {
        return false;
      }
    }
    return width(p) > circle.radius() && circle.fits(p);
  }

  private static double width(double[] p) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < p.length; i += 2) {
      low = Math.min(low, p[i]);
      high = Math.max(high, p[i]);
    }
    return high - low;
  }

  /** Distance of each flat from the axis; their mean is what passes the hole. */
  private static double[] flats(int[] facets, Undersides undersides, Mesh mesh, double[] across, FlatCircle circle) {
    return IntStream.of(facets).mapToDouble(f -> {
      int v = mesh.corner(f, 0);
      double nu = undersides.normal(f, 0) * across[0] + undersides.normal(f, 1) * across[1];
      double nz = undersides.normal(f, 2);
      double u = Grid.toMm(mesh.x(v)) * across[0] + Grid.toMm(mesh.y(v)) * across[1] - circle.x();
      return Math.abs(u * nu + (Grid.toMm(mesh.z(v)) - circle.y()) * nz) / Math.hypot(nu, nz);
    }).toArray();
  }
}
