package outrigger.shapes.check;

import java.util.Locale;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.exact.Total;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;

/** A mesh's numbers in flat arrays, with the few questions all steps of the proof ask. */
final class Surface {
  /**
   * Largest coordinate, either sign, at which six volumes of tetrahedra from the origin fit a long: 73.8 mm. Each is a
   * determinant of three corners, at most the product of their lengths (Hadamard), and (sqrt(3) 1,210,000)^3 < 2^63.
   */
  private static final long COMPACT = 1_210_000;
  /**
   * Square of the bounds' diagonal below which sides of points against facets are told in a long: 128 mm. They too are
   * determinants, of three differences no longer than the diagonal, and (2^21)^3 = 2^63.
   */
  private static final double NARROW = 0x1p42;

  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private final int[] xyz;
  private final int[] corners;
  private final long[] normals;
  private final byte[] facings;
  private final boolean compact;
  private final boolean narrow;

  private final Workers workers;

  Surface(Mesh mesh) {
    this(mesh, Workers.of(1));
  }

  /** To be examined by some threads. */
  Surface(Mesh mesh, Workers workers) {
    this.workers = workers;
    xyz = mesh.xyz();
    corners = mesh.corners();
    normals = new long[corners.length];
    facings = new byte[facets()];
    long widest = 0;
    double squares = 0;
    for (int k = 0; k < 3; k++) {
      long min = Integer.MAX_VALUE;
      long max = Integer.MIN_VALUE;
      for (int i = k; i < xyz.length; i += 3) {
        min = Math.min(min, xyz[i]);
        max = Math.max(max, xyz[i]);
      }
      widest = Math.max(widest, Math.max(-min, max));
      squares += (double) (max - min) * (max - min);
    }
    compact = widest <= COMPACT;
    narrow = squares < NARROW;
    workers.split(facets(), AT_ONCE, (from, to) -> {
      for (int f = 3 * from; f < 3 * to; f += 3) {
        putNormal(f, 3 * corners[f], 3 * corners[f + 1], 3 * corners[f + 2]);
      }
    });
  }

  private void putNormal(int at, int a, int b, int c) {
    long ux = xyz[b] - xyz[a];
    long uy = xyz[b + 1] - xyz[a + 1];
    long uz = xyz[b + 2] - xyz[a + 2];
    long vx = xyz[c] - xyz[a];
    long vy = xyz[c + 1] - xyz[a + 1];
    long vz = xyz[c + 2] - xyz[a + 2];
    normals[at] = uy * vz - uz * vy;
    normals[at + 1] = uz * vx - ux * vz;
    normals[at + 2] = ux * vy - uy * vx;
    facings[at / 3] = (byte) (signs(normals[at]) | signs(normals[at + 1]) << 2 | signs(normals[at + 2]) << 4);
  }

  private static int signs(long n) {
    return (int) (-n >>> 63) | (int) (n >>> 63) << 1;
  }

  /** The threads that examine it. */
  Workers workers() {
    return workers;
  }

  int facets() {
    return corners.length / 3;
  }

  int vertices() {
    return xyz.length / 3;
  }

  int x(int v) {
    return xyz[3 * v];
  }

  int y(int v) {
    return xyz[3 * v + 1];
  }

  int z(int v) {
    return xyz[3 * v + 2];
  }

  int corner(int facet, int k) {
    return corners[3 * facet + k];
  }

  /** All coordinates, three a vertex; not to be changed. */
  int[] xyz() {
    return xyz;
  }

  /** All vertex numbers, three a facet; not to be changed. */
  int[] corners() {
    return corners;
  }

  boolean isInRange(int v) {
    return Math.abs((long) x(v)) <= Grid.LIMIT && Math.abs((long) y(v)) <= Grid.LIMIT
        && Math.abs((long) z(v)) <= Grid.LIMIT;
  }

  /** One component of (b - a) x (c - a), below 2^52; its length is twice the facet's area. */
  long normal(int facet, int axis) {
    return normals[3 * facet + axis];
  }

  boolean hasArea(int facet) {
    return facings[facet] != 0;
  }

  /** The axis directions a facet faces, as a set of bits: +x, -x, +y, -y, +z, -z from the lowest on. */
  int facing(int facet) {
    return facings[facet];
  }

  /** Whether the boxes of two facets do not even touch. */
  boolean boxesKeepApart(int f, int g) {
    for (int k = 0; k < 3; k++) {
      int a = xyz[3 * corners[3 * f] + k];
      int b = xyz[3 * corners[3 * f + 1] + k];
      int c = xyz[3 * corners[3 * f + 2] + k];
      int d = xyz[3 * corners[3 * g] + k];
      int e = xyz[3 * corners[3 * g + 1] + k];
      int o = xyz[3 * corners[3 * g + 2] + k];
      if (Math.min(a, Math.min(b, c)) > Math.max(d, Math.max(e, o))
          || Math.max(a, Math.max(b, c)) < Math.min(d, Math.min(e, o))) {
        return true;
      }
    }
    return false;
  }

  /** Whether a facet's box reaches one that is given by its least and greatest x, y, z from a place on. */
  boolean reaches(int f, int[] boxes, int at) {
    for (int k = 0; k < 3; k++) {
      int a = xyz[3 * corners[3 * f] + k];
      int b = xyz[3 * corners[3 * f + 1] + k];
      int c = xyz[3 * corners[3 * f + 2] + k];
      if (Math.min(a, Math.min(b, c)) > boxes[at + 3 + k] || Math.max(a, Math.max(b, c)) < boxes[at + k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether {@link #sixVolume} may be asked. */
  boolean isCompact() {
    return compact;
  }

  /** Six times the volume of the tetrahedron from the origin to a facet. Terms may wrap, the sum does not. */
  long sixVolume(int facet) {
    int a = 3 * corners[3 * facet];
    return normals[3 * facet] * xyz[a] + normals[3 * facet + 1] * xyz[a + 1] + normals[3 * facet + 2] * xyz[a + 2];
  }

  /** Adds six times the volume of the tetrahedron from the origin to a facet, however large. */
  void addSixVolume(int facet, Total to) {
    if (compact) {
      to.add(sixVolume(facet));
      return;
    }
    int a = 3 * corners[3 * facet];
    for (int k = 0; k < 3; k++) {
      to.add(normals[3 * facet + k], xyz[a + k]);
    }
  }

  /** Side of a vertex against a facet's plane: 1 where the normal points, -1 on the other side, 0 in the plane. */
  int side(int facet, int v) {
    int p = 3 * v;
    int a = 3 * corners[3 * facet];
    long x = xyz[p] - xyz[a];
    long y = xyz[p + 1] - xyz[a + 1];
    long z = xyz[p + 2] - xyz[a + 2];
    long nx = normals[3 * facet];
    long ny = normals[3 * facet + 1];
    long nz = normals[3 * facet + 2];
    return narrow ? Long.signum(nx * x + ny * y + nz * z) : Sign.dot(nx, ny, nz, x, y, z);
  }

  /** A vertex in words, mm to the micrometre. */
  String words(int v) {
    return String.format(Locale.ROOT, "(%.3f, %.3f, %.3f)", Grid.toMm(x(v)), Grid.toMm(y(v)),
        Grid.toMm(z(v)));
  }

  /** A facet's corners in words. */
  String facetWords(int facet) {
    return words(corner(facet, 0)) + " " + words(corner(facet, 1)) + " " + words(corner(facet, 2));
  }
}
