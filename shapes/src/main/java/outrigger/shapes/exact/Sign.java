package outrigger.shapes.exact;

/**
 * Exact signs over grid coordinates: integers of at most 25 bits with sign, differences 26.
 *
 * <p>Each method computes the exact value in 64 or 128 bits; nothing is rounded, so no tolerance appears.
 */
public final class Sign {
  /** Eight roundings, relative. */
  private static final double DOUBT = 0x1p-50;

  private Sign() {}

  /** Turn of three points in a plane: +1 counter-clockwise, -1 clockwise, 0 in line. Inputs within 2^30. */
  public static int turn(long ax, long ay, long bx, long by, long cx, long cy) {
    Level.WORDS.note();
    return Long.signum((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  }

  /** Whether two directions, or one and none, lie in one line. Components within 2^31. */
  public static boolean inLine(long ax, long ay, long az, long bx, long by, long bz) {
    return ay * bz == az * by && az * bx == ax * bz && ax * by == ay * bx;
  }

  /**
   * Side of point d against the plane of a, b, c: +1 on the side the normal (b - a) x (c - a) points to, -1 on the
   * other, 0 in the plane.
   */
  public static int side(long ax, long ay, long az, long bx, long by, long bz, long cx, long cy, long cz, long dx,
      long dy, long dz) {
    long ux = bx - ax;
    long uy = by - ay;
    long uz = bz - az;
    long vx = cx - ax;
    long vy = cy - ay;
    long vz = cz - az;
    return dot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx, dx - ax, dy - ay, dz - az);
  }

  /** Side of one vertex against the plane of three, as above; x, y, z of each vertex stand one after the other. */
  public static int side(int[] xyz, int a, int b, int c, int d) {
    return side(xyz[3 * a], xyz[3 * a + 1], xyz[3 * a + 2], xyz[3 * b], xyz[3 * b + 1], xyz[3 * b + 2], xyz[3 * c],
        xyz[3 * c + 1], xyz[3 * c + 2], xyz[3 * d], xyz[3 * d + 1], xyz[3 * d + 2]);
  }

  /**
   * Sign of n . w for components below 2^62: by doubles where they leave no doubt, else in 128 bits.
   *
   * <p>Each double product carries three roundings and at most two sums follow, each off by 2^-53 of the sum of
   * magnitudes at most; {@link #DOUBT} allows more than that.
   */
  public static int dot(long nx, long ny, long nz, long wx, long wy, long wz) {
    double x = (double) nx * wx;
    double y = (double) ny * wy;
    double z = (double) nz * wz;
    double sum = x + y + z;
    double doubt = DOUBT * (Math.abs(x) + Math.abs(y) + Math.abs(z));
    if (Math.abs(sum) > doubt || doubt == 0) {
      Level.DOUBLES.note();
      return sum > 0 ? 1 : sum < 0 ? -1 : 0;
    }
    Level.WORDS.note();
    return of(high(nx, ny, nz, wx, wy, wz), nx * wx + ny * wy + nz * wz);
  }

  /** Upper 64 of the 128 bits of n . w; the lower ones are what plain arithmetic gives. */
  static long high(long nx, long ny, long nz, long wx, long wy, long wz) {
    long x = nx * wx;
    long y = ny * wy;
    long z = nz * wz;
    return Math.multiplyHigh(nx, wx) + Math.multiplyHigh(ny, wy) + Math.multiplyHigh(nz, wz)
        + (Long.compareUnsigned(x + y, y) < 0 ? 1 : 0) + (Long.compareUnsigned(x + y + z, z) < 0 ? 1 : 0);
  }

  /** n . w in 128 bits, then rounded once to a double. */
  static double roughDot(long nx, long ny, long nz, long wx, long wy, long wz) {
    return rough(high(nx, ny, nz, wx, wy, wz), nx * wx + ny * wy + nz * wz);
  }

  /** A 128-bit number as a double, within 2^-51 of itself. */
  static double rough(long high, long low) {
    if (high == low >> 63) {
      return low;
    }
    return high * 0x1p64 + (low >>> 11) * 0x1p11;
  }

  /** Sign of a 128-bit number. */
  static int of(long high, long low) {
    return high < 0 ? -1 : (high | low) == 0 ? 0 : 1;
  }

  /** Sign of a d - b c in 128 bits, for values below 2^62. */
  public static int minor(long a, long b, long c, long d) {
    Level.WORDS.note();
    long low = a * d;
    long high = Math.multiplyHigh(a, d);
    long other = b * c;
    high -= Math.multiplyHigh(b, c) + (Long.compareUnsigned(low, other) < 0 ? 1 : 0);
    return of(high, low - other);
  }

  /**
   * Whether a point lies inside (+1), outside (-1) or on (0) the circle through three points that turn
   * counter-clockwise; the sign turns with them. Differences must stay below 2^30, so that all fits 128 bits.
   */
  public static int inCircle(long ax, long ay, long bx, long by, long cx, long cy, long dx, long dy) {
    long aX = ax - dx;
    long aY = ay - dy;
    long bX = bx - dx;
    long bY = by - dy;
    long cX = cx - dx;
    long cY = cy - dy;
    return dot(bX * cY - bY * cX, cX * aY - cY * aX, aX * bY - aY * bX, aX * aX + aY * aY, bX * bX + bY * bY,
        cX * cX + cY * cY);
  }
}
