package outrigger.shapes.print.facet;

import outrigger.shapes.mesh.Mesh;

/**
 * How far the ways in which a ball may rest on a facet, its edges and corners reach beyond the facet's normal.
 *
 * <p>On an edge or a corner that reaches into what is measured a ball may rest any way between the normals about it. Such a
 * way is a sum of these normals, each times a number not below 0, and the numbers add up to no more than the
 * {@link #reach}: 1 where all is flat, 1.42 at an edge of 90 degrees, 1.74 at the corner of a box.
 */
public final class Cones {
  /** Reaches beyond it are told as it: at needles, tips and where normals stand against each other. */
  public static final double MOST = 8;
  /** A corner has so few facets, or its reach is taken for the most. */
  private static final int FACETS = 64;
  /** Edges whose faces differ less, cosine, count as reaching out either way. */
  private static final double FLAT = 0.9999;
  /** From the highest power down. */
  private static final double[] ARC_COSINE = {-0.0012624911, 0.0066700901, -0.0170881256, 0.0308918810, -0.0501743046,
    0.0889789874, -0.2145988016, 1.5707963050};

  private final Mesh mesh;
  private final Facets facets;
  private final Seams seams;
  private final Edges edges;
  /** Of the corners asked for, by vertex; 0 for the others. Two threads may work out the same one. */
  private final float[] known;

  /**
   * Those of a mesh, worked out where they are asked for.
   *
   * @param inward whether balls lie in the solid, not the air
   */
  public Cones(Mesh mesh, Facets facets, Seams seams, boolean inward) {
    this.mesh = mesh;
    this.facets = facets;
    this.seams = seams;
    edges = new Edges(mesh, facets, inward);
    known = new float[mesh.vertexCount()];
  }

  /** The greatest of a facet's three corners, with all edges there. */
  public double reach(int facet) {
    double most = 1;
    for (int k = 0; k < 3; k++) {
      int v = mesh.corner(facet, k);
      if (known[v] == 0) {
        known[v] = (float) reachOfCorner(3 * facet + k);
      }
      most = Math.max(most, known[v]);
    }
    return most;
  }

  /** About the vertex a half-edge begins at: by the mean of the normals there, weighed by the angles of their facets. */
  private double reachOfCorner(int first) {
    if (!isJutting(first)) {
      return 1;
    }
    double x = 0;
    double y = 0;
    double z = 0;
    int half = first;
    int count = 0;
    do {
      int facet = half / 3;
      double angle = angle(half);
      x += angle * facets.normal(facet, 0);
      y += angle * facets.normal(facet, 1);
      z += angle * facets.normal(facet, 2);
      half = next(half);
      count++;
    } while (half != first && count < FACETS);
    double length = Math.sqrt(x * x + y * y + z * z);
    double least = length;
    for (int i = 0; i < count; i++) {
      int facet = half / 3;
      least = Math.min(least, x * facets.normal(facet, 0) + y * facets.normal(facet, 1) + z * facets.normal(facet, 2));
      half = next(half);
    }
    return half != first || !(least * MOST > length) ? MOST : length / least;
  }

  /** Whether any edge about the vertex that a half-edge begins at reaches into what is measured. */
  private boolean isJutting(int first) {
    int half = first;
    for (int count = 0; count < FACETS; count++) {
      if (edges.isJutting(half, seams.across(half), FLAT)) {
        return true;
      }
      half = next(half);
      if (half == first) {
        return false;
      }
    }
    return false;
  }

  /** The next half-edge about the vertex that one begins at. */
  private int next(int half) {
    int across = seams.across(half);
    return across / 3 * 3 + (across + 1) % 3;
  }

  /** The facet's angle at the vertex a half-edge begins at, radians. */
  private double angle(int half) {
    int a = Seams.from(mesh, half);
    int b = Seams.to(mesh, half);
    int c = mesh.corner(half / 3, (half % 3 + 2) % 3);
    double ux = (double) mesh.x(b) - mesh.x(a);
    double uy = (double) mesh.y(b) - mesh.y(a);
    double uz = (double) mesh.z(b) - mesh.z(a);
    double vx = (double) mesh.x(c) - mesh.x(a);
    double vy = (double) mesh.y(c) - mesh.y(a);
    double vz = (double) mesh.z(c) - mesh.z(a);
    double product = ux * vx + uy * vy + uz * vz;
    return arcCosine(product / Math.sqrt((ux * ux + uy * uy + uz * uz) * (vx * vx + vy * vy + vz * vz)));
  }

  /**
   * An angle by its cosine, to within 1e-7 radians, for corners are asked for by the hundred thousand (M. Abramowitz, I. A.
   * Stegun, Handbook of Mathematical Functions, 1964, 4.4.46).
   */
  static double arcCosine(double cosine) {
    double x = Math.min(1, Math.abs(cosine));
    double sum = 0;
    for (double part : ARC_COSINE) {
      sum = sum * x + part;
    }
    double angle = Math.sqrt(1 - x) * sum;
    return cosine < 0 ? Math.PI - angle : angle;
  }
}
