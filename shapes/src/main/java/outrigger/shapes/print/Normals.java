package outrigger.shapes.print;

import outrigger.shapes.mesh.Mesh;

/** Normals of facets. */
public final class Normals {
  private Normals() {}

  /** Outward, as long as twice the facet's area, in square grid units. */
  public static double[] doubled(Mesh mesh, int f) {
    return doubled(mesh, mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2));
  }

  /** The same of a triangle of three vertices, counter-clockwise seen from where it points. */
  public static double[] doubled(Mesh mesh, int a, int b, int c) {
    long ux = mesh.x(b) - mesh.x(a);
    long uy = mesh.y(b) - mesh.y(a);
    long uz = mesh.z(b) - mesh.z(a);
    long vx = mesh.x(c) - mesh.x(a);
    long vy = mesh.y(c) - mesh.y(a);
    long vz = mesh.z(c) - mesh.z(a);
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  /** Length of a vector of three components. */
  public static double length(double[] n) {
    return Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
  }
}
