package outrigger.shapes.exact;

/**
 * Exact test of how two facets meet.
 *
 * <p>Facets are given by vertex numbers into a shared array of x, y, z in grid units. Two facets of a sound mesh may
 * have a corner or an edge in common and nothing else; whatever goes beyond that, a mere touch included, is improper.
 * Corners are common when their coordinates are equal, whatever their numbers.
 *
 * <p>All decisions are exact in 64 and 128 bits for coordinates within +-2^28; nothing is allocated. Both facets must
 * have an area: a facet without one has no plane to decide by, and the answer then means nothing.
 */
public final class FacetContact {
  private FacetContact() {}

  /**
   * Whether two facets meet other than in one common corner or one common edge.
   *
   * @param xyz x, y, z of each vertex, grid units
   * @return true if they cross, overlap, fold onto each other, are the same facet, or touch anywhere else
   */
  public static boolean improper(int[] xyz, int a0, int a1, int a2, int b0, int b1, int b2) {
    int m0 = match(xyz, a0, b0, b1, b2);
    int m1 = match(xyz, a1, b0, b1, b2);
    int m2 = match(xyz, a2, b0, b1, b2);
    int shared = (m0 >= 0 ? 1 : 0) + (m1 >= 0 ? 1 : 0) + (m2 >= 0 ? 1 : 0);
    if (shared == 0) {
      return meet(xyz, a0, a1, a2, b0, b1, b2);
    }
    if (shared == 1) {
      int m = m0 >= 0 ? m0 : m1 >= 0 ? m1 : m2;
      int common = m0 >= 0 ? a0 : m1 >= 0 ? a1 : a2;
      return fansMeet(xyz, common, next(common, a0, a1, a2), last(common, a0, a1, a2),
          m == 0 ? b1 : m == 1 ? b2 : b0, m == 0 ? b2 : m == 1 ? b0 : b1);
    }
    if (shared == 2) {
      int apex = m0 < 0 ? a0 : m1 < 0 ? a1 : a2;
      int m = 3 - Math.max(m0, 0) - Math.max(m1, 0) - Math.max(m2, 0);
      return folded(xyz, next(apex, a0, a1, a2), last(apex, a0, a1, a2), apex, m == 0 ? b0 : m == 1 ? b1 : b2);
    }
    return true;
  }

  /**
   * The same for two facets of a mesh.
   *
   * @param corners three vertex numbers a facet
   */
  public static boolean improper(int[] xyz, int[] corners, int f, int g) {
    return improper(xyz, corners[3 * f], corners[3 * f + 1], corners[3 * f + 2], corners[3 * g], corners[3 * g + 1],
        corners[3 * g + 2]);
  }

  private static int next(int v, int a0, int a1, int a2) {
    return v == a0 ? a1 : v == a1 ? a2 : a0;
  }

  private static int last(int v, int a0, int a1, int a2) {
    return v == a0 ? a2 : v == a1 ? a0 : a1;
  }

  private static int match(int[] p, int a, int b0, int b1, int b2) {
    return same(p, a, b0) ? 0 : same(p, a, b1) ? 1 : same(p, a, b2) ? 2 : -1;
  }

  private static boolean same(int[] p, int a, int b) {
    return a == b || p[3 * a] == p[3 * b] && p[3 * a + 1] == p[3 * b + 1] && p[3 * a + 2] == p[3 * b + 2];
  }

  /** Two facets over one edge from q to r: improper only if the apex of one lies in plane and on the other's side. */
  private static boolean folded(int[] p, int q, int r, int apex, int other) {
    if (side(p, q, r, apex, other) != 0) {
      return false;
    }
    int drop = dominantAxis(p, q, r, apex);
    return turn(p, drop, q, r, apex) == turn(p, drop, q, r, other);
  }

  /**
   * Two facets that share the corner v. Along any ray from v each facet reaches from v to its far edge or not at all,
   * so if they meet beyond v the nearer far edge meets the other facet.
   */
  private static boolean fansMeet(int[] p, int v, int a, int b, int c, int d) {
    int sc = side(p, v, a, b, c);
    int sd = side(p, v, a, b, d);
    if (sc * sd > 0) {
      return false;
    }
    if (sc == 0 && sd == 0) {
      int drop = dominantAxis(p, v, a, b);
      return flatMeet(p, drop, c, d, v, a, b) || flatMeet(p, drop, a, b, v, c, d);
    }
    int sa = side(p, v, c, d, a);
    int sb = side(p, v, c, d, b);
    return sa * sb <= 0 && (pierces(p, c, d, v, a, b) || pierces(p, a, b, v, c, d));
  }

  /** Two facets with no common corner meet exactly if an edge of one meets the other. */
  private static boolean meet(int[] p, int a0, int a1, int a2, int b0, int b1, int b2) {
    long nx = normal(p, a0, a1, a2, 1, 2);
    long ny = normal(p, a0, a1, a2, 2, 0);
    long nz = normal(p, a0, a1, a2, 0, 1);
    int s0 = side(p, nx, ny, nz, a0, b0);
    int s1 = side(p, nx, ny, nz, a0, b1);
    int s2 = side(p, nx, ny, nz, a0, b2);
    if (apart(s0, s1, s2)) {
      return false;
    }
    nx = normal(p, b0, b1, b2, 1, 2);
    ny = normal(p, b0, b1, b2, 2, 0);
    nz = normal(p, b0, b1, b2, 0, 1);
    int t0 = side(p, nx, ny, nz, b0, a0);
    int t1 = side(p, nx, ny, nz, b0, a1);
    int t2 = side(p, nx, ny, nz, b0, a2);
    if (apart(t0, t1, t2)) {
      return false;
    }
    if (s0 == 0 && s1 == 0 && s2 == 0) {
      int drop = dominantAxis(p, a0, a1, a2);
      return flatMeet(p, drop, b0, b1, a0, a1, a2) || flatMeet(p, drop, b1, b2, a0, a1, a2)
          || flatMeet(p, drop, b2, b0, a0, a1, a2) || inFlat(p, drop, a0, b0, b1, b2);
    }
    return edgeMeets(p, s0, s1, b0, b1, a0, a1, a2) || edgeMeets(p, s1, s2, b1, b2, a0, a1, a2)
        || edgeMeets(p, s2, s0, b2, b0, a0, a1, a2) || edgeMeets(p, t0, t1, a0, a1, b0, b1, b2)
        || edgeMeets(p, t1, t2, a1, a2, b0, b1, b2) || edgeMeets(p, t2, t0, a2, a0, b0, b1, b2);
  }

  /** One component of (b - a) x (c - a), from the two axes after it. */
  private static long normal(int[] p, int a, int b, int c, int u, int v) {
    return ((long) p[3 * b + u] - p[3 * a + u]) * ((long) p[3 * c + v] - p[3 * a + v])
        - ((long) p[3 * b + v] - p[3 * a + v]) * ((long) p[3 * c + u] - p[3 * a + u]);
  }

  private static int side(int[] p, long nx, long ny, long nz, int a, int d) {
    return Sign.dot(nx, ny, nz, (long) p[3 * d] - p[3 * a], (long) p[3 * d + 1] - p[3 * a + 1],
        (long) p[3 * d + 2] - p[3 * a + 2]);
  }

  private static boolean apart(int s, int t, int u) {
    return s > 0 && t > 0 && u > 0 || s < 0 && t < 0 && u < 0;
  }

  /** Whether the segment q r, whose ends lie on sides sq and sr of facet a b c, meets that facet. */
  private static boolean edgeMeets(int[] p, int sq, int sr, int q, int r, int a, int b, int c) {
    if (sq * sr > 0) {
      return false;
    }
    return sq == 0 && sr == 0 ? flatMeet(p, dominantAxis(p, a, b, c), q, r, a, b, c) : pierces(p, q, r, a, b, c);
  }

  /** Whether the line q r, which is not parallel to the facet's plane, passes through the closed facet a b c. */
  private static boolean pierces(int[] p, int q, int r, int a, int b, int c) {
    int s = side(p, q, r, a, b);
    int t = side(p, q, r, b, c);
    if (s * t < 0) {
      return false;
    }
    int u = side(p, q, r, c, a);
    return s * u >= 0 && t * u >= 0;
  }

  /** Whether the segment q r meets the closed facet a b c of the same plane. */
  private static boolean flatMeet(int[] p, int drop, int q, int r, int a, int b, int c) {
    return inFlat(p, drop, q, a, b, c) || segmentsMeet(p, drop, q, r, a, b) || segmentsMeet(p, drop, q, r, b, c)
        || segmentsMeet(p, drop, q, r, c, a);
  }

  private static boolean inFlat(int[] p, int drop, int q, int a, int b, int c) {
    int s = turn(p, drop, a, b, q);
    int t = turn(p, drop, b, c, q);
    int u = turn(p, drop, c, a, q);
    return s >= 0 && t >= 0 && u >= 0 || s <= 0 && t <= 0 && u <= 0;
  }

  private static boolean segmentsMeet(int[] p, int drop, int q, int r, int a, int b) {
    int sa = turn(p, drop, q, r, a);
    int sb = turn(p, drop, q, r, b);
    int sq = turn(p, drop, a, b, q);
    int sr = turn(p, drop, a, b, r);
    if (sa * sb < 0 && sq * sr < 0) {
      return true;
    }
    return sa == 0 && within(p, a, q, r) || sb == 0 && within(p, b, q, r) || sq == 0 && within(p, q, a, b)
        || sr == 0 && within(p, r, a, b);
  }

  /** Whether v, known to be in line with a and b, lies between them or on one of them. */
  private static boolean within(int[] p, int v, int a, int b) {
    for (int k = 0; k < 3; k++) {
      int x = p[3 * v + k];
      if (x < Math.min(p[3 * a + k], p[3 * b + k]) || x > Math.max(p[3 * a + k], p[3 * b + k])) {
        return false;
      }
    }
    return true;
  }

  private static int side(int[] p, int a, int b, int c, int d) {
    return Sign.side(p, a, b, c, d);
  }

  private static int turn(int[] p, int drop, int a, int b, int c) {
    int u = drop == 0 ? 1 : 0;
    int v = drop == 2 ? 1 : 2;
    return Sign.turn(p[3 * a + u], p[3 * a + v], p[3 * b + u], p[3 * b + v], p[3 * c + u], p[3 * c + v]);
  }

  /** The axis the plane of a, b, c may be seen along without folding it into a line. */
  private static int dominantAxis(int[] p, int a, int b, int c) {
    long ux = (long) p[3 * b] - p[3 * a];
    long uy = (long) p[3 * b + 1] - p[3 * a + 1];
    long uz = (long) p[3 * b + 2] - p[3 * a + 2];
    long vx = (long) p[3 * c] - p[3 * a];
    long vy = (long) p[3 * c + 1] - p[3 * a + 1];
    long vz = (long) p[3 * c + 2] - p[3 * a + 2];
    long nx = Math.abs(uy * vz - uz * vy);
    long ny = Math.abs(uz * vx - ux * vz);
    long nz = Math.abs(ux * vy - uy * vx);
    return nx >= ny && nx >= nz ? 0 : ny >= nz ? 1 : 2;
  }
}
