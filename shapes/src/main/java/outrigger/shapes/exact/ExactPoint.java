package outrigger.shapes.exact;

import java.math.BigInteger;

/**
 * A point known exactly: on the grid, or a fraction X/W, Y/W, Z/W (W positive, not in lowest terms) where planes meet.
 *
 * <p>Equal points are equal objects by {@link #equals}. Comparisons try doubles with a proven bound first and whole
 * numbers where that leaves them in doubt.
 */
public final class ExactPoint {
  /**
   * Bound on the error of the double coordinates of a fraction: two conversions and one division, each within 2^-53 of
   * a value below 2^26, together below 2^-25.
   */
  private static final double ROUGH = 0x1p-25;

  private final long x;
  private final long y;
  private final long z;
  private final BigInteger bigX;
  private final BigInteger bigY;
  private final BigInteger bigZ;
  /** Null for a grid point. */
  private final BigInteger bigW;
  private final double roughX;
  private final double roughY;
  private final double roughZ;
  /** Numbers its maker gave to planes it is known to lie in; -1 for none. */
  private int planeA = -1;
  private int planeB = -1;
  private int planeC = -1;

  private ExactPoint(long x, long y, long z) {
    this.x = x;
    this.y = y;
    this.z = z;
    bigX = null;
    bigY = null;
    bigZ = null;
    bigW = null;
    roughX = x;
    roughY = y;
    roughZ = z;
  }

  private ExactPoint(BigInteger bigX, BigInteger bigY, BigInteger bigZ, BigInteger bigW) {
    this.bigX = bigX;
    this.bigY = bigY;
    this.bigZ = bigZ;
    this.bigW = bigW;
    double w = bigW.doubleValue();
    roughX = bigX.doubleValue() / w;
    roughY = bigY.doubleValue() / w;
    roughZ = bigZ.doubleValue() / w;
    x = round(roughX, bigX, bigW);
    y = round(roughY, bigY, bigW);
    z = round(roughZ, bigZ, bigW);
  }

  /** A grid point. */
  public static ExactPoint of(long x, long y, long z) {
    return new ExactPoint(x, y, z);
  }

  private static ExactPoint fraction(BigInteger x, BigInteger y, BigInteger z, BigInteger w) {
    if (w.signum() < 0) {
      return fraction(x.negate(), y.negate(), z.negate(), w.negate());
    }
    ExactPoint p = new ExactPoint(x, y, z, w);
    return p.seemsOnGrid() && isMultiple(x, w) && isMultiple(y, w) && isMultiple(z, w)
        ? new ExactPoint(p.x, p.y, p.z) : p;
  }

  private boolean seemsOnGrid() {
    return Math.abs(roughX - x) < 2 * ROUGH && Math.abs(roughY - y) < 2 * ROUGH && Math.abs(roughZ - z) < 2 * ROUGH;
  }

  private static boolean isMultiple(BigInteger n, BigInteger w) {
    return n.remainder(w).signum() == 0;
  }

  /** Where the line through two grid points, on different sides of a plane, meets it. */
  public static ExactPoint crossing(long px, long py, long pz, long qx, long qy, long qz, Plane plane) {
    if (plane.isSmall()) {
      ExactPoint near = smallCrossing(px, py, pz, qx, qy, qz, plane);
      if (near != null) {
        return near;
      }
    }
    BigInteger sp = plane.bigOffset(px, py, pz);
    BigInteger w = sp.subtract(plane.bigOffset(qx, qy, qz));
    return fraction(along(px, qx, sp, w), along(py, qy, sp, w), along(pz, qz, sp, w), w);
  }

  /** The same in longs where that gives a grid point; otherwise null. */
  private static ExactPoint smallCrossing(long px, long py, long pz, long qx, long qy, long qz, Plane plane) {
    long sp = plane.offset(px, py, pz);
    long den = sp - plane.offset(qx, qy, qz);
    long g = Plane.gcd(Math.abs(sp), Math.abs(den));
    sp /= g;
    den /= g;
    return (qx - px) % den == 0 && (qy - py) % den == 0 && (qz - pz) % den == 0
        ? of(px + (qx - px) / den * sp, py + (qy - py) / den * sp, pz + (qz - pz) / den * sp) : null;
  }

  private static BigInteger along(long p, long q, BigInteger s, BigInteger w) {
    return BigInteger.valueOf(p).multiply(w).add(BigInteger.valueOf(q - p).multiply(s));
  }

  /** Where three planes meet, whose normals are independent. */
  public static ExactPoint meeting(Plane p, Plane q, Plane r) {
    BigInteger[] qr = cross(q, r);
    BigInteger[] rp = cross(r, p);
    BigInteger[] pq = cross(p, q);
    BigInteger w = p.bigNormal(0).multiply(qr[0]).add(p.bigNormal(1).multiply(qr[1]))
        .add(p.bigNormal(2).multiply(qr[2]));
    BigInteger[] at = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      at[k] = p.bigD().multiply(qr[k]).add(q.bigD().multiply(rp[k])).add(r.bigD().multiply(pq[k]));
    }
    return fraction(at[0], at[1], at[2], w);
  }

  private static BigInteger[] cross(Plane p, Plane q) {
    BigInteger[] n = new BigInteger[3];
    boolean slim = p.isSlim() && q.isSlim();
    for (int k = 0; k < 3; k++) {
      int i = (k + 1) % 3;
      int j = (k + 2) % 3;
      n[k] = slim ? BigInteger.valueOf(p.normal(i) * q.normal(j) - p.normal(j) * q.normal(i))
          : p.bigNormal(i).multiply(q.bigNormal(j)).subtract(p.bigNormal(j).multiply(q.bigNormal(i)));
    }
    return n;
  }

  /** A point inside the triangle of three points: their mean by whole weights. */
  public static ExactPoint mean(ExactPoint p, long wp, ExactPoint q, long wq, ExactPoint r, long wr) {
    BigInteger a = BigInteger.valueOf(wp).multiply(q.w()).multiply(r.w());
    BigInteger b = BigInteger.valueOf(wq).multiply(r.w()).multiply(p.w());
    BigInteger c = BigInteger.valueOf(wr).multiply(p.w()).multiply(q.w());
    BigInteger[] at = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      at[k] = a.multiply(p.big(k)).add(b.multiply(q.big(k))).add(c.multiply(r.big(k)));
    }
    BigInteger w = BigInteger.valueOf(wp + wq + wr).multiply(p.w()).multiply(q.w()).multiply(r.w());
    return fraction(at[0], at[1], at[2], w);
  }

  /**
   * Notes planes that this new point lies in by the way it was made, so that zeros need not be computed. They are hints,
   * not part of what it is.
   */
  public ExactPoint in(int a, int b, int c) {
    planeA = a;
    planeB = b;
    planeC = c;
    return this;
  }

  /** Number of a plane it is known to lie in, k from 0 to 2, or -1. */
  public int plane(int k) {
    return k == 0 ? planeA : k == 1 ? planeB : planeC;
  }

  /** Whether it lies on the grid. */
  public boolean isOnGrid() {
    return bigW == null;
  }

  /** Coordinate along axis 0, 1 or 2, rounded to the nearest grid unit (exact for a grid point). */
  public long grid(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  /** Coordinate along axis 0, 1 or 2 as a double, grid units. */
  public double rough(int axis) {
    return axis == 0 ? roughX : axis == 1 ? roughY : roughZ;
  }

  private BigInteger big(int axis) {
    if (bigW == null) {
      return BigInteger.valueOf(grid(axis));
    }
    return axis == 0 ? bigX : axis == 1 ? bigY : bigZ;
  }

  private BigInteger w() {
    return bigW == null ? BigInteger.ONE : bigW;
  }

  /** Order of two points along an axis. */
  public static int compare(ExactPoint p, ExactPoint q, int axis) {
    if (p.bigW == null && q.bigW == null) {
      return Long.compare(p.grid(axis), q.grid(axis));
    }
    double gap = p.rough(axis) - q.rough(axis);
    if (Math.abs(gap) > 4 * ROUGH) {
      return gap > 0 ? 1 : -1;
    }
    return p.big(axis).multiply(q.w()).compareTo(q.big(axis).multiply(p.w()));
  }

  /** Side of this point against a plane: +1, -1, or 0 in it. */
  public int side(Plane plane) {
    if (bigW == null) {
      return plane.side(x, y, z);
    }
    double s = 0;
    double size = 0;
    for (int k = 0; k < 3; k++) {
      double n = plane.normal(k);
      s += n * rough(k);
      size += Math.abs(n) * (Math.abs(rough(k)) + 1);
    }
    double d = plane.roughD();
    s -= d;
    // each term: coordinate error ROUGH, a few roundings of 2^-53; d is within 2^-51 of its size
    if (Math.abs(s) > (size + Math.abs(d)) * 0x1p-48 + size * ROUGH) {
      return s > 0 ? 1 : -1;
    }
    return plane.bigNormal(0).multiply(bigX).add(plane.bigNormal(1).multiply(bigY))
        .add(plane.bigNormal(2).multiply(bigZ)).subtract(plane.bigD().multiply(bigW)).signum();
  }

  /**
   * Turn of three points projected along an axis.
   *
   * @param u axis that serves as first coordinate
   * @param v axis that serves as second coordinate
   * @return +1 counter-clockwise, -1 clockwise, 0 in line
   */
  public static int turn(ExactPoint p, ExactPoint q, ExactPoint r, int u, int v) {
    if (p.bigW == null && q.bigW == null && r.bigW == null) {
      return Sign.turn(p.grid(u), p.grid(v), q.grid(u), q.grid(v), r.grid(u), r.grid(v));
    }
    int clear = clearTurn(p, q, r, u, v);
    return clear != 0 ? clear : exactTurn(p, q, r, u, v);
  }

  /** The turn of three points where doubles make it clear, as {@link #turn}; 0 where they leave it in doubt. */
  public static int clearTurn(ExactPoint p, ExactPoint q, ExactPoint r, int u, int v) {
    double qu = q.rough(u) - p.rough(u);
    double qv = q.rough(v) - p.rough(v);
    double ru = r.rough(u) - p.rough(u);
    double rv = r.rough(v) - p.rough(v);
    double det = qu * rv - qv * ru;
    // differences are within 3 ROUGH; products and their difference within 2^-51 of their size
    double size = Math.abs(qu) + Math.abs(qv) + Math.abs(ru) + Math.abs(rv);
    double bound = 3 * ROUGH * (size + 6 * ROUGH) + (Math.abs(qu * rv) + Math.abs(qv * ru)) * 0x1p-50;
    return Math.abs(det) > bound ? det > 0 ? 1 : -1 : 0;
  }

  private static int exactTurn(ExactPoint p, ExactPoint q, ExactPoint r, int u, int v) {
    BigInteger qr = q.big(u).multiply(r.big(v)).subtract(q.big(v).multiply(r.big(u)));
    BigInteger rp = r.big(u).multiply(p.big(v)).subtract(r.big(v).multiply(p.big(u)));
    BigInteger pq = p.big(u).multiply(q.big(v)).subtract(p.big(v).multiply(q.big(u)));
    return p.w().multiply(qr).add(q.w().multiply(rp)).add(r.w().multiply(pq)).signum();
  }

  private static long round(double rough, BigInteger n, BigInteger w) {
    double down = Math.floor(rough);
    double part = rough - down;
    if (Math.abs(part - 0.5) > 2 * ROUGH) {
      return (long) down + (part > 0.5 ? 1 : 0);
    }
    BigInteger[] parts = n.shiftLeft(1).add(w).divideAndRemainder(w.shiftLeft(1));
    return parts[1].signum() < 0 ? parts[0].longValueExact() - 1 : parts[0].longValueExact();
  }

  @Override
  public boolean equals(Object o) {
    if (this == o) {
      return true;
    }
    if (!(o instanceof ExactPoint p) || x != p.x || y != p.y || z != p.z) {
      return false;
    }
    return bigW == null || p.bigW == null ? bigW == p.bigW
        : compare(this, p, 0) == 0 && compare(this, p, 1) == 0 && compare(this, p, 2) == 0;
  }

  @Override
  public int hashCode() {
    long h = x * 0x9E3779B97F4A7C15L ^ y * 0xC2B2AE3D27D4EB4FL ^ z * 0x165667B19E3779F9L;
    h ^= h >>> 29;
    h *= 0xD6E8FEB86659FD93L;
    return (int) (h >>> 32);
  }

  @Override
  public String toString() {
    return "(" + roughX + " " + roughY + " " + roughZ + ")" + (bigW == null ? "" : "*");
  }
}
