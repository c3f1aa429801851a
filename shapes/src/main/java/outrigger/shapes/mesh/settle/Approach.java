package outrigger.shapes.mesh.settle;

/**
 * The nearest points of a vertex and a facet, or of two edges, and which share each corner has in how far they are apart.
 *
 * <p>Two facets cannot come to meet unless a vertex comes to a facet first, or an edge to an edge inside both. Corners come
 * in their own order, whatever facet or edge tells them: as much to the last bit.
 */
final class Approach {
  /** A vertex nearer than this to a facet, grid units, is measured exactly: doubles tell how far it is to some 2^-28. */
  private static final double NEAR = 0x1p-16;
  /** Facets lower than this, and vertices so near them: where the one is over the other, doubles may not tell. */
  private static final double THIN = 0x1p-10;
  /** Edges nearer than this, grid units: where they are nearest, doubles tell the less the more they are parallel. */
  private static final double CLOSE = 0x1p-10;
  /** Squared sine of the angle below which doubles do not tell where edges are nearest at all. */
  private static final double PARALLEL = 1e-12;

  /** How many numbers tell of a pair, but for its corners. */
  static final int NUMBERS = 8;

  /** The four corners. */
  final int[] corner = new int[4];
  /** Of each corner how far the gap widens as it goes one step along {@link #way}. */
  final double[] share = new double[4];
  /** From the second point to the first. */
  final double[] way = new double[3];
  /** How far the points are apart, grid steps. */
  double distance;

  private final Places places;
  private final ExactApproach exact;

  /** For vertices at some places, which may change between questions. */
  Approach(Places places) {
    this.places = places;
    exact = new ExactApproach(places, this);
  }

  /** Measures from a vertex to a facet. */
  void toFacet(int vertex, int a, int b, int c) {
    set(vertex, a, b, c);
    share[0] = 1;
    double[] ab = vector(a, b);
    double[] ac = vector(a, c);
    double[] av = vector(a, vertex);
    double[] n = cross(ab, ac);
    double square = dot(n, n);
    double toB = dot(cross(av, ac), n) / square;
    double toC = dot(cross(ab, av), n) / square;
    boolean thin = square < THIN * THIN * Math.max(dot(ab, ab), dot(ac, ac));
    if (toB >= 0 && toC >= 0 && toB + toC <= 1 && !thin) {
      shares(toB + toC - 1, -toB, -toC);
      double height = dot(av, n) / square;
      set(way, height * n[0], height * n[1], height * n[2]);
      distance = length(way);
    } else {
      distance = Double.POSITIVE_INFINITY;
      toEdge(vertex, a, b, 1, 2);
      toEdge(vertex, b, c, 2, 3);
      toEdge(vertex, a, c, 1, 3);
    }
    if (distance < (thin ? 2 * THIN : NEAR)) {
      exact.toFacet();
    }
  }

  /** Measures to an edge of the facet, if it is nearer than what was found before. */
  private void toEdge(int vertex, int a, int b, int first, int second) {
    double[] ab = vector(a, b);
    double[] av = vector(a, vertex);
    double along = Math.max(0, Math.min(1, dot(ab, av) / dot(ab, ab)));
    double[] to = {av[0] - along * ab[0], av[1] - along * ab[1], av[2] - along * ab[2]};
    if (length(to) < distance) {
      distance = length(to);
      set(way, to[0], to[1], to[2]);
      shares(0, 0, 0);
      share[first] = along - 1;
      share[second] = -along;
    }
  }

  /** Measures between the insides of two edges; false where an end of one is nearer. */
  boolean betweenEdges(int a, int b, int c, int d) {
    set(a, b, c, d);
    double[] u = vector(a, b);
    double[] v = vector(c, d);
    double[] r = vector(c, a);
    double uu = dot(u, u);
    double uv = dot(u, v);
    double vv = dot(v, v);
    double ur = dot(u, r);
    double vr = dot(v, r);
    double det = uu * vv - uv * uv;
    double s = (uv * vr - vv * ur) / det;
    double t = (uu * vr - uv * ur) / det;
    share[0] = 1 - s;
    shares(s, t - 1, -t);
    set(way, r[0] + s * u[0] - t * v[0], r[1] + s * u[1] - t * v[1], r[2] + s * u[2] - t * v[2]);
    distance = length(way);
    if (det <= PARALLEL * uu * vv) {
      return exact.betweenEdges();
    }
    boolean between = s > 0 && s < 1 && t > 0 && t < 1;
    return between && distance >= CLOSE || (between || isEndWithin(CLOSE, a, b, c, d)) && exact.betweenEdges();
  }

  /** Whether two edges are nearer each other than so much, wherever. */
  boolean areEdgesWithin(double reach, int a, int b, int c, int d) {
    return isEndWithin(reach, a, b, c, d) || betweenEdges(a, b, c, d) && distance < reach;
  }

  private boolean isEndWithin(double reach, int a, int b, int c, int d) {
    distance = reach;
    toEdge(a, c, d, 0, 0);
    toEdge(b, c, d, 0, 0);
    toEdge(c, a, b, 0, 0);
    toEdge(d, a, b, 0, 0);
    return distance < reach;
  }

  /** Writes what was measured from a place on; returns the place after it. */
  int write(double[] numbers, int at) {
    System.arraycopy(share, 0, numbers, at, 4);
    System.arraycopy(way, 0, numbers, at + 4, 3);
    numbers[at + 7] = distance;
    return at + NUMBERS;
  }

  /** Takes what was written for what was measured; returns the place after it. */
  int read(double[] numbers, int at) {
    System.arraycopy(numbers, at, share, 0, 4);
    System.arraycopy(numbers, at + 4, way, 0, 3);
    distance = numbers[at + 7];
    return at + NUMBERS;
  }

  void set(int a, int b, int c, int d) {
    corner[0] = a;
    corner[1] = b;
    corner[2] = c;
    corner[3] = d;
  }

  void shares(double second, double third, double fourth) {
    share[1] = second;
    share[2] = third;
    share[3] = fourth;
  }

  private double[] vector(int from, int to) {
    return new double[] {places.at(to, 0) - places.at(from, 0), places.at(to, 1) - places.at(from, 1),
        places.at(to, 2) - places.at(from, 2)};
  }

  static void set(double[] vector, double x, double y, double z) {
    vector[0] = x;
    vector[1] = y;
    vector[2] = z;
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  static double length(double[] v) {
    return Math.sqrt(dot(v, v));
  }
}
