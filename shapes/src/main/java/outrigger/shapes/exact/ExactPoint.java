package outrigger.shapes.exact;

import java.math.BigInteger;
import java.util.function.Supplier;

/**
 * A point known exactly: on the grid, or a fraction X/W, Y/W, Z/W (W positive, not in lowest terms) where planes meet.
 *
 * <p>Equal points are equal objects by {@link #equals}. Comparisons try doubles with a proven bound first and whole
 * numbers where that leaves them in doubt. Several threads may ask one point.
 */
public final class ExactPoint {
  /**
   * Bound on the error of the double coordinates of a fraction, which stay below 2^24: where planes meet they come
   * within 2^-25, as said there, and a mean of such within twice that.
   */
  private static final double ROUGH = 0x1p-24;

  private final long x;
  private final long y;
  private final long z;
  private final double roughX;
  private final double roughY;
  private final double roughZ;
  private final boolean onGrid;
  /** Works X, Y, Z, W out; null for a grid point. Most points are never asked for them. */
  private final Supplier<BigInteger[]> recipe;
  /** Null until worked out. Threads that ask at once may each do that. */
  private volatile BigInteger[] fraction;
  /** Numbers its maker gave to planes it is known to lie in; -1 for none. */
  private int planeA = -1;
  private int planeB = -1;
  private int planeC = -1;

  private ExactPoint(long x, long y, long z) {
    this.x = x;
    this.y = y;
    this.z = z;
    onGrid = true;
    recipe = null;
    roughX = x;
    roughY = y;
    roughZ = z;
  }

  /** A fraction; the doubles are within {@link #ROUGH} of it. */
  private ExactPoint(double roughX, double roughY, double roughZ, Supplier<BigInteger[]> recipe) {
    this.roughX = roughX;
    this.roughY = roughY;
    this.roughZ = roughZ;
    this.recipe = recipe;
    onGrid = false;
    x = round(roughX, 0);
    y = round(roughY, 1);
    z = round(roughZ, 2);
  }

  /** A grid point. */
  public static ExactPoint of(long x, long y, long z) {
    return new ExactPoint(x, y, z);
  }

  private static ExactPoint fraction(BigInteger x, BigInteger y, BigInteger z, BigInteger w) {
    if (w.signum() < 0) {
      return fraction(x.negate(), y.negate(), z.negate(), w.negate());
    }
    // two conversions and a division, each within 2^-53 of a value below 2^24: together below 2^-25
    double d = w.doubleValue();
    double rx = x.doubleValue() / d;
    double ry = y.doubleValue() / d;
    double rz = z.doubleValue() / d;
    return seemsOnGrid(rx, ry, rz) && isMultiple(x, w) && isMultiple(y, w) && isMultiple(z, w)
        ? of(Math.round(rx), Math.round(ry), Math.round(rz))
        : new ExactPoint(rx, ry, rz, () -> new BigInteger[] {x, y, z, w});
  }

  private static boolean seemsOnGrid(double x, double y, double z) {
    return Math.abs(x - Math.rint(x)) < 2 * ROUGH && Math.abs(y - Math.rint(y)) < 2 * ROUGH
        && Math.abs(z - Math.rint(z)) < 2 * ROUGH;
  }

  private static boolean isMultiple(BigInteger n, BigInteger w) {
    return n.remainder(w).signum() == 0;
  }

  /** Where the line through two grid points, on different sides of a plane, meets it. */
  public static ExactPoint crossing(long px, long py, long pz, long qx, long qy, long qz, Plane plane) {
    // each offset is within 2^-51 of itself, and so is their difference, for they differ in sign; the nearer end's share of
    // a length below 2^25, at most a half, then comes within 2.5 * 2^-51 of itself and the sum within 2^-25
    double sp = plane.roughOffset(px, py, pz);
    double sq = plane.roughOffset(qx, qy, qz);
    boolean near = Math.abs(sp) <= Math.abs(sq);
    double share = near ? sp / (sp - sq) : sq / (sq - sp);
    double x = near ? px + (qx - px) * share : qx + (px - qx) * share;
    double y = near ? py + (qy - py) * share : qy + (py - qy) * share;
    double z = near ? pz + (qz - pz) * share : qz + (pz - qz) * share;
    if (seemsOnGrid(x, y, z)) {
      long gx = Math.round(x);
      long gy = Math.round(y);
      long gz = Math.round(z);
      if (plane.side(gx, gy, gz) == 0 && Sign.inLine(gx - px, gy - py, gz - pz, qx - px, qy - py, qz - pz)) {
        return of(gx, gy, gz);
      }
    }
    return new ExactPoint(x, y, z, () -> exactCrossing(px, py, pz, qx, qy, qz, plane));
  }

  private static BigInteger[] exactCrossing(long px, long py, long pz, long qx, long qy, long qz, Plane plane) {
    BigInteger sp = plane.bigOffset(px, py, pz);
    BigInteger w = sp.subtract(plane.bigOffset(qx, qy, qz));
    return positive(along(px, qx, sp, w), along(py, qy, sp, w), along(pz, qz, sp, w), w);
  }

  private static BigInteger[] positive(BigInteger x, BigInteger y, BigInteger z, BigInteger w) {
    return w.signum() > 0 ? new BigInteger[] {x, y, z, w}
        : new BigInteger[] {x.negate(), y.negate(), z.negate(), w.negate()};
  }

  private static BigInteger along(long p, long q, BigInteger s, BigInteger w) {
    return BigInteger.valueOf(p).multiply(w).add(BigInteger.valueOf(q - p).multiply(s));
  }

  /** Where three planes meet, whose normals are independent. */
  public static ExactPoint meeting(Plane p, Plane q, Plane r) {
    if (p.isSlim() && q.isSlim() && r.isSlim()) {
      return slimMeeting(p, q, r);
    }
    BigInteger[] at = exactMeeting(p, q, r);
    return fraction(at[0], at[1], at[2], at[3]);
  }

  /**
   * By Cramer's rule in 128 bits: minors stay below 2^61, offsets below 2^56; each sum is exact
   * before it is rounded, within 2^-51 of itself, and so quotients below 2^24 come within 2^-25.
   */
  private static ExactPoint slimMeeting(Plane p, Plane q, Plane r) {
    double[] at = new double[3];
    double w = 0;
    for (int k = 0; k < 3; k++) {
      long qr = minor(q, r, k);
      long rp = minor(r, p, k);
      long pq = minor(p, q, k);
      at[k] = Sign.roughDot(p.smallD(), q.smallD(), r.smallD(), qr, rp, pq);
      if (k == 0) {
        w = Sign.roughDot(p.normal(0), q.normal(0), r.normal(0), qr, rp, pq);
      }
    }
    double x = at[0] / w;
    double y = at[1] / w;
    double z = at[2] / w;
    if (seemsOnGrid(x, y, z)) {
      long gx = Math.round(x);
      long gy = Math.round(y);
      long gz = Math.round(z);
      if (p.side(gx, gy, gz) == 0 && q.side(gx, gy, gz) == 0 && r.side(gx, gy, gz) == 0) {
        return of(gx, gy, gz);
      }
    }
    return new ExactPoint(x, y, z, () -> exactMeeting(p, q, r));
  }

  private static long minor(Plane p, Plane q, int k) {
    int i = (k + 1) % 3;
    int j = (k + 2) % 3;
    return p.normal(i) * q.normal(j) - p.normal(j) * q.normal(i);
  }

  private static BigInteger[] exactMeeting(Plane p, Plane q, Plane r) {
    BigInteger[] qr = cross(q, r);
    BigInteger[] rp = cross(r, p);
    BigInteger[] pq = cross(p, q);
    BigInteger w = p.bigNormal(0).multiply(qr[0]).add(p.bigNormal(1).multiply(qr[1]))
        .add(p.bigNormal(2).multiply(qr[2]));
    BigInteger[] at = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      at[k] = p.bigD().multiply(qr[k]).add(q.bigD().multiply(rp[k])).add(r.bigD().multiply(pq[k]));
    }
    return positive(at[0], at[1], at[2], w);
  }

  private static BigInteger[] cross(Plane p, Plane q) {
    BigInteger[] n = new BigInteger[3];
    boolean slim = p.isSlim() && q.isSlim();
    for (int k = 0; k < 3; k++) {
      int i = (k + 1) % 3;
      int j = (k + 2) % 3;
      n[k] = slim ? BigInteger.valueOf(minor(p, q, k))
          : p.bigNormal(i).multiply(q.bigNormal(j)).subtract(p.bigNormal(j).multiply(q.bigNormal(i)));
    }
    return n;
  }

  /**
   * The mean of three points, none of them a mean itself, by whole weights with a positive sum: inside their triangle if all
   * are positive. Of points that are not on the grid none may be negative.
   */
  public static ExactPoint mean(ExactPoint p, long wp, ExactPoint q, long wq, ExactPoint r, long wr) {
    // within 2^-25 as the points are, and five roundings within 2^-53 of values below 2^24
    double all = wp + wq + wr;
    double x = (wp * p.roughX + wq * q.roughX + wr * r.roughX) / all;
    double y = (wp * p.roughY + wq * q.roughY + wr * r.roughY) / all;
    double z = (wp * p.roughZ + wq * q.roughZ + wr * r.roughZ) / all;
    if (seemsOnGrid(x, y, z)) {
      BigInteger[] at = exactMean(p, wp, q, wq, r, wr);
      return fraction(at[0], at[1], at[2], at[3]);
    }
    return new ExactPoint(x, y, z, () -> exactMean(p, wp, q, wq, r, wr));
  }

  private static BigInteger[] exactMean(ExactPoint p, long wp, ExactPoint q, long wq, ExactPoint r, long wr) {
    BigInteger a = BigInteger.valueOf(wp).multiply(q.w()).multiply(r.w());
    BigInteger b = BigInteger.valueOf(wq).multiply(r.w()).multiply(p.w());
    BigInteger c = BigInteger.valueOf(wr).multiply(p.w()).multiply(q.w());
    BigInteger[] at = new BigInteger[4];
    for (int k = 0; k < 3; k++) {
      at[k] = a.multiply(p.big(k)).add(b.multiply(q.big(k))).add(c.multiply(r.big(k)));
    }
    at[3] = BigInteger.valueOf(wp + wq + wr).multiply(p.w()).multiply(q.w()).multiply(r.w());
    return at;
  }

  /**
   * Notes planes that this new point lies in by the way it was made, so that zeros need not be computed. They are hints,
   * not part of what it is. Of a point off the grid, three different ones must meet in it alone.
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

  /**
   * Whether three different planes are known in which both points lie: of points where planes meet, they are the same then.
   */
  private boolean hasPlanesOf(ExactPoint p) {
    return planeA >= 0 && planeB >= 0 && planeC >= 0 && planeA != planeB && planeB != planeC && planeC != planeA
        && p.isIn(planeA) && p.isIn(planeB) && p.isIn(planeC);
  }

  private boolean isIn(int plane) {
    return planeA == plane || planeB == plane || planeC == plane;
  }

  /** Whether three points are known to lie in a plane besides one given. */
  public static boolean shareOtherPlane(ExactPoint p, ExactPoint q, ExactPoint r, int given) {
    for (int k = 0; k < 3; k++) {
      int plane = p.plane(k);
      if (plane >= 0 && plane != given && q.isIn(plane) && r.isIn(plane)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it lies on the grid. */
  public boolean isOnGrid() {
    return onGrid;
  }

  /** Coordinate along axis 0, 1 or 2, rounded to the nearest grid unit (exact for a grid point). */
  public long grid(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  /** Coordinate along axis 0, 1 or 2 as a double, grid units. */
  public double rough(int axis) {
    return axis == 0 ? roughX : axis == 1 ? roughY : roughZ;
  }

  /** The same in steps of 2^-bits of a grid unit, rounded down: equal for equal points, however they were made. */
  public BigInteger fixed(int axis, int bits) {
    return big(axis).shiftLeft(bits).divide(w());
  }

  private BigInteger big(int axis) {
    return onGrid ? BigInteger.valueOf(grid(axis)) : fraction()[axis];
  }

  private BigInteger w() {
    return onGrid ? BigInteger.ONE : fraction()[3];
  }

  private BigInteger[] fraction() {
    BigInteger[] known = fraction;
    if (known == null) {
      known = recipe.get();
      fraction = known;
    }
    return known;
  }

  /** Order of two points along an axis. */
  public static int compare(ExactPoint p, ExactPoint q, int axis) {
    if (p == q) {
      return 0;
    }
    if (p.onGrid && q.onGrid) {
      Level.WORDS.note();
      return Long.compare(p.grid(axis), q.grid(axis));
    }
    double gap = p.rough(axis) - q.rough(axis);
    if (Math.abs(gap) > 4 * ROUGH) {
      Level.DOUBLES.note();
      return gap > 0 ? 1 : -1;
    }
    Level.BIG.note();
    return p.big(axis).multiply(q.w()).compareTo(q.big(axis).multiply(p.w()));
  }

  /** Side of this point against a plane: +1, -1, or 0 in it. */
  public int side(Plane plane) {
    if (onGrid) {
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
      Level.DOUBLES.note();
      return s > 0 ? 1 : -1;
    }
    Level.BIG.note();
    BigInteger[] f = fraction();
    return plane.bigNormal(0).multiply(f[0]).add(plane.bigNormal(1).multiply(f[1]))
        .add(plane.bigNormal(2).multiply(f[2])).subtract(plane.bigD().multiply(f[3])).signum();
  }

  /**
   * Turn of three points projected along an axis.
   *
   * @param u axis that serves as first coordinate
   * @param v axis that serves as second coordinate
   * @return +1 counter-clockwise, -1 clockwise, 0 in line
   */
  public static int turn(ExactPoint p, ExactPoint q, ExactPoint r, int u, int v) {
    if (p.onGrid && q.onGrid && r.onGrid) {
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
    if (Math.abs(det) <= bound) {
      return 0;
    }
    Level.DOUBLES.note();
    return det > 0 ? 1 : -1;
  }

  private static int exactTurn(ExactPoint p, ExactPoint q, ExactPoint r, int u, int v) {
    Level.BIG.note();
    BigInteger qr = q.big(u).multiply(r.big(v)).subtract(q.big(v).multiply(r.big(u)));
    BigInteger rp = r.big(u).multiply(p.big(v)).subtract(r.big(v).multiply(p.big(u)));
    BigInteger pq = p.big(u).multiply(q.big(v)).subtract(p.big(v).multiply(q.big(u)));
    return p.w().multiply(qr).add(q.w().multiply(rp)).add(r.w().multiply(pq)).signum();
  }

  private long round(double rough, int axis) {
    double down = Math.floor(rough);
    double part = rough - down;
    if (Math.abs(part - 0.5) > 2 * ROUGH) {
      Level.DOUBLES.note();
      return (long) down + (part > 0.5 ? 1 : 0);
    }
    Level.BIG.note();
    BigInteger w = w();
    BigInteger[] parts = big(axis).shiftLeft(1).add(w).divideAndRemainder(w.shiftLeft(1));
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
    return onGrid || p.onGrid ? onGrid == p.onGrid
        : hasPlanesOf(p) || compare(this, p, 0) == 0 && compare(this, p, 1) == 0 && compare(this, p, 2) == 0;
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
    return "(" + roughX + " " + roughY + " " + roughZ + ")" + (onGrid ? "" : "*");
  }
}
