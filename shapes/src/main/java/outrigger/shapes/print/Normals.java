package outrigger.shapes.print;

import outrigger.shapes.mesh.Mesh;

/** Normals of facets. */
public final class Normals {
  private Normals() {}

  /** Outward, as long as twice the facet's area, in square grid units. */
  public static double[] doubled(Mesh mesh, int f) {
    int a = mesh.corner(f, 0);
    int b = mesh.corner(f, 1);
    int c = mesh.corner(f, 2);
    long ux = mesh.x(b) - mesh.x(a);
    long uy = mesh.y(b) - mesh.y(a);
    long uz = mesh.z(b) - mesh.z(a);
    long vx = mesh.x(c) - mesh.x(a);
    long vy = mesh.y(c) - mesh.y(a);
    long vz = mesh.z(c) - mesh.z(a);
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  public static double length(double[] n) {
    return Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
  }
}
