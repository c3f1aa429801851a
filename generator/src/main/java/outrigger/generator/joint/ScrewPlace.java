package outrigger.generator.joint;

/**
 * Where one screw of a joint lies: the middle of the plane its length is measured from, and the way its tip points; mm,
 * in the axes of the part in its build pose.
 *
 * @param dx with dy and dz a direction of length 1
 */
public record ScrewPlace(double x, double y, double z, double dx, double dy, double dz) {
  private static final double NOISE = 1e-9;

  public ScrewPlace {
    if (!(Math.abs(dx * dx + dy * dy + dz * dz - 1) < NOISE)) {
      throw new IllegalArgumentException("direction " + dx + ", " + dy + ", " + dz);
    }
  }

  /** A point further along the screw by so much. */
  public ScrewPlace along(double mm) {
    return new ScrewPlace(x + mm * dx, y + mm * dy, z + mm * dz, dx, dy, dz);
  }

  /** The same place, the tip the other way. */
  public ScrewPlace reversed() {
    return new ScrewPlace(x, y, z, 0 - dx, 0 - dy, 0 - dz); // no negative zeros
  }
}
