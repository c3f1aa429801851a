package outrigger.shapes.exact;

import java.math.BigInteger;

/**
 * A plane a x + b y + c z = d with whole coefficients in lowest terms, in grid units.
 *
 * <p>A plane and its reverse are the same plane: the first of a, b, c that is not zero is positive. Two planes are
 * equal exactly when they hold the same points. For corners within 25 bits a, b and c take up to 53 bits, d up to 80.
 */
public final class Plane {
  private final long a;
  private final long b;
  private final long c;
  private final long dHigh;
  private final long dLow;
  /** Whether every side test fits into a long: the usual case of planes along the axes. */
  private final boolean small;
  private BigInteger bigD;

  private Plane(long a, long b, long c, long px, long py, long pz) {
    this.a = a;
    this.b = b;
    this.c = c;
    dHigh = Sign.high(a, b, c, px, py, pz);
    dLow = a * px + b * py + c * pz;
    small = Math.abs(a) < 1L << 34 && Math.abs(b) < 1L << 34 && Math.abs(c) < 1L << 34;
  }

  /** The plane through three points not in line, or null where they are in line. */
  public static Plane through(long ax, long ay, long az, long bx, long by, long bz, long cx, long cy, long cz) {
    long ux = bx - ax;
    long uy = by - ay;
    long uz = bz - az;
    long vx = cx - ax;
    long vy = cy - ay;
    long vz = cz - az;
    long nx = uy * vz - uz * vy;
    long ny = uz * vx - ux * vz;
    long nz = ux * vy - uy * vx;
    long g = gcd(gcd(Math.abs(nx), Math.abs(ny)), Math.abs(nz));
    if (g == 0) {
      return null;
    }
    if (nx < 0 || nx == 0 && (ny < 0 || ny == 0 && nz < 0)) {
      g = -g;
    }
    return new Plane(nx / g, ny / g, nz / g, ax, ay, az);
  }

  /** Greatest common divisor of two numbers, neither negative: by shifts, which are faster than divisions. */
  static long gcd(long p, long q) {
    if (p == 0 || q == 0) {
      return p | q;
    }
    int twos = Long.numberOfTrailingZeros(p | q);
    long a = p >> Long.numberOfTrailingZeros(p);
    long b = q >> Long.numberOfTrailingZeros(q);
    while (a != b && a != 1 && b != 1) {
      long gap = a - b;
      b = Math.min(a, b);
      a = Math.abs(gap) >> Long.numberOfTrailingZeros(gap);
    }
    return Math.min(a, b) << twos;
  }

  /**
   * A number that is the same for all directions of one line: of the quotients by the longest component, which come out
   * alike from any multiple below 2^53, for a division is rounded once. So planes can be told apart without a common
   * divisor.
   */
  public static long directionKey(long nx, long ny, long nz) {
    long ax = Math.abs(nx);
    long ay = Math.abs(ny);
    long az = Math.abs(nz);
    double longest = az >= ax && az >= ay ? nz : ay >= ax ? ny : nx;
    // nothing and less than nothing are one direction
    long x = Double.doubleToRawLongBits(nx / longest + 0.0);
    long y = Double.doubleToRawLongBits(ny / longest + 0.0);
    long z = Double.doubleToRawLongBits(nz / longest + 0.0);
    return (x * 0x9E3779B97F4A7C15L ^ y) * 0xC2B2AE3D27D4EB4FL ^ z;
  }

  /** Component of the normal along axis 0, 1 or 2. */
  public long normal(int axis) {
    return axis == 0 ? a : axis == 1 ? b : c;
  }

  /** The axis along which the normal is longest. */
  public int dominantAxis() {
    long x = Math.abs(a);
    long y = Math.abs(b);
    long z = Math.abs(c);
    return z >= x && z >= y ? 2 : y >= x ? 1 : 0;
  }

  /** First axis of the plane's own coordinates: with the second, counter-clockwise seen from where the normal points. */
  public int firstAxis() {
    int w = dominantAxis();
    return normal(w) > 0 ? (w + 1) % 3 : (w + 2) % 3;
  }

  /** Second axis of the plane's own coordinates. */
  public int secondAxis() {
    int w = dominantAxis();
    return normal(w) > 0 ? (w + 2) % 3 : (w + 1) % 3;
  }

  /** Sign of the component of p's normal x q's normal along an axis. */
  public static int direction(Plane p, Plane q, int axis) {
    int i = (axis + 1) % 3;
    int j = (axis + 2) % 3;
    return Sign.minor(p.normal(i), p.normal(j), q.normal(i), q.normal(j));
  }

  /** Whether the two planes never meet (or are the same). */
  public boolean isParallel(Plane other) {
    return a == other.a && b == other.b && c == other.c;
  }

  /** Side of a grid point: +1 where the normal points to, -1 behind, 0 in the plane. */
  public int side(long x, long y, long z) {
    Level.WORDS.note();
    if (small) {
      return Long.signum(offset(x, y, z));
    }
    long low = a * x + b * y + c * z;
    long high = Sign.high(a, b, c, x, y, z) - dHigh - (Long.compareUnsigned(low, dLow) < 0 ? 1 : 0);
    return Sign.of(high, low - dLow);
  }

  /** Whether products of two components of normals, and their differences, fit into a long. */
  boolean isSlim() {
    return small && Math.abs(a) < 1L << 30 && Math.abs(b) < 1L << 30 && Math.abs(c) < 1L << 30;
  }

  /** a x + b y + c z - d; exact only for a small plane. */
  long offset(long x, long y, long z) {
    return a * x + b * y + c * z - dLow;
  }

  /** a x + b y + c z - d as a double, within 2^-51 of itself. */
  public double roughOffset(long x, long y, long z) {
    if (small) {
      return offset(x, y, z);
    }
    long low = a * x + b * y + c * z;
    long high = Sign.high(a, b, c, x, y, z) - dHigh - (Long.compareUnsigned(low, dLow) < 0 ? 1 : 0);
    return Sign.rough(high, low - dLow);
  }

  /** d; exact only for a small plane. */
  long smallD() {
    return dLow;
  }

  /** The offset exactly, whatever the plane. */
  BigInteger bigOffset(long x, long y, long z) {
    if (small) {
      return BigInteger.valueOf(offset(x, y, z));
    }
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(x))
        .add(BigInteger.valueOf(b).multiply(BigInteger.valueOf(y)))
        .add(BigInteger.valueOf(c).multiply(BigInteger.valueOf(z))).subtract(bigD());
  }

  BigInteger bigNormal(int axis) {
    return BigInteger.valueOf(normal(axis));
  }

  BigInteger bigD() {
    BigInteger known = bigD;
    if (known == null) {
      BigInteger low = BigInteger.valueOf(dLow);
      known = BigInteger.valueOf(dHigh).shiftLeft(64).add(dLow < 0 ? low.add(BigInteger.ONE.shiftLeft(64)) : low);
      bigD = known;
    }
    return known;
  }

  /** d as a double, within 2^-51 of its size. */
  public double roughD() {
    return small ? dLow : dHigh * 0x1p64 + (dLow >>> 32) * 0x1p32 + (dLow & 0xffffffffL);
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Plane p && a == p.a && b == p.b && c == p.c && dHigh == p.dHigh && dLow == p.dLow;
  }

  @Override
  public int hashCode() {
    long h = a * 0x9E3779B97F4A7C15L ^ b * 0xC2B2AE3D27D4EB4FL ^ c * 0x165667B19E3779F9L ^ dLow * 0xD6E8FEB86659FD93L;
    return (int) (h ^ h >>> 32);
  }
}
