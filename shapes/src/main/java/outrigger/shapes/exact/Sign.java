package outrigger.shapes.exact;

/**
 * Exact signs over grid coordinates: integers of at most 25 bits with sign, differences 26.
 *
 * <p>Each method computes the exact value in 64 or 128 bits; nothing is rounded, so no tolerance appears.
 */
public final class Sign {
  private Sign() {}

  /** Turn of three points in a plane: +1 counter-clockwise, -1 clockwise, 0 in line. Inputs within 2^30. */
  public static int turn(long ax, long ay, long bx, long by, long cx, long cy) {
    return Long.signum((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
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

  /** Sign of n . w for |n| below 2^60 and |w| below 2^60, in 128 bits. */
  public static int dot(long nx, long ny, long nz, long wx, long wy, long wz) {
    long lo = nx * wx;
    long hi = Math.multiplyHigh(nx, wx);
    long l = ny * wy;
    long sum = lo + l;
    hi += Math.multiplyHigh(ny, wy) + (Long.compareUnsigned(sum, l) < 0 ? 1 : 0);
    l = nz * wz;
    lo = sum + l;
    hi += Math.multiplyHigh(nz, wz) + (Long.compareUnsigned(lo, l) < 0 ? 1 : 0);
    return hi < 0 ? -1 : (hi | lo) == 0 ? 0 : 1;
  }
}
