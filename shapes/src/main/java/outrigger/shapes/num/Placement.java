package outrigger.shapes.num;

/**
 * A rigid placement, turned or mirrored and then moved: p' = R p + t. Lengths in mm, R row by row.
 *
 * <p>Right-handed axes; a positive turn is counter-clockwise seen from the positive end of its axis. Turns by whole
 * quarter turns are exact; any other turn is rounded to the grid once, when the solid it places is meshed.
 */
public record Placement(double xx, double xy, double xz, double yx, double yy, double yz, double zx, double zy,
    double zz, double tx, double ty, double tz) {

  /**
   * Checks that all are numbers.
   *
   * @throws ShapeException if one is not, or is infinite
   */
  public Placement {
    double sum = xx + xy + xz + yx + yy + yz + zx + zy + zz + tx + ty + tz;
    if (!Double.isFinite(sum)) {
      throw new ShapeException("a placement that turns or moves by something that is not a finite number: turn ("
          + xx + " " + xy + " " + xz + ", " + yx + " " + yy + " " + yz + ", " + zx + " " + zy + " " + zz + "), move ("
          + tx + ", " + ty + ", " + tz + ") mm", "Give finite angles and lengths.");
    }
  }

  /**
   * How far a component may be off for a turn to count as one by quarters, as one of turns that cancel out is: three such
   * move a corner anywhere on the grid, within 2^24 steps, by less than 2^-14 of a step.
   */
  private static final double OFF = 0x1p-40;

  /** Leaves everything where it is. */
  public static final Placement IDENTITY = new Placement(1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0);

  /**
   * Whether it is {@link #IDENTITY}, number by number. The {@code equals} of a record is made up at run time, which takes
   * longer than meshing a small part.
   */
  public boolean isIdentity() {
    return same(xx, 1) && same(xy, 0) && same(xz, 0) && same(yx, 0) && same(yy, 1) && same(yz, 0)
        && same(zx, 0) && same(zy, 0) && same(zz, 1) && same(tx, 0) && same(ty, 0) && same(tz, 0);
  }

  private static boolean same(double a, double b) {
    return Double.compare(a, b) == 0;
  }

  /** Moves by the given millimetres. */
  public static Placement move(double x, double y, double z) {
    return new Placement(1, 0, 0, 0, 1, 0, 0, 0, 1, x, y, z);
  }

  /** Turns about an axis through the origin by degrees. */
  public static Placement turn(Axis axis, double degrees) {
    double c = cosine(degrees);
    double s = cosine(degrees - 90);
    return switch (axis) {
      case X -> new Placement(1, 0, 0, 0, c, -s, 0, s, c, 0, 0, 0);
      case Y -> new Placement(c, 0, s, 0, 1, 0, -s, 0, c, 0, 0, 0);
      case Z -> new Placement(c, -s, 0, s, c, 0, 0, 0, 1, 0, 0, 0);
    };
  }

  /** Mirrors in the plane through the origin whose normal is the given axis. */
  public static Placement mirror(Axis normal) {
    return new Placement(normal == Axis.X ? -1 : 1, 0, 0, 0, normal == Axis.Y ? -1 : 1, 0, 0, 0,
        normal == Axis.Z ? -1 : 1, 0, 0, 0);
  }

  /** This placement first, then {@code next}. */
  public Placement then(Placement next) {
    Placement n = next;
    return new Placement(
        n.xx * xx + n.xy * yx + n.xz * zx, n.xx * xy + n.xy * yy + n.xz * zy, n.xx * xz + n.xy * yz + n.xz * zz,
        n.yx * xx + n.yy * yx + n.yz * zx, n.yx * xy + n.yy * yy + n.yz * zy, n.yx * xz + n.yy * yz + n.yz * zz,
        n.zx * xx + n.zy * yx + n.zz * zx, n.zx * xy + n.zy * yy + n.zz * zy, n.zx * xz + n.zy * yz + n.zz * zz,
        n.x(tx, ty, tz), n.y(tx, ty, tz), n.z(tx, ty, tz));
  }

  /** What takes all back to where it was. */
  public Placement inverse() {
    // turns and mirrors are taken back by their rows as columns
    return new Placement(xx, yx, zx, xy, yy, zy, xz, yz, zz, -(xx * tx + yx * ty + zx * tz),
        -(xy * tx + yy * ty + zy * tz), -(xz * tx + yz * ty + zz * tz));
  }

  /** Image of a point, x. */
  public double x(double px, double py, double pz) {
    return xx * px + xy * py + xz * pz + tx;
  }

  /** Image of a point, y. */
  public double y(double px, double py, double pz) {
    return yx * px + yy * py + yz * pz + ty;
  }

  /** Image of a point, z. */
  public double z(double px, double py, double pz) {
    return zx * px + zy * py + zz * pz + tz;
  }

  /** Whether it turns a left hand into a right one. */
  public boolean mirrors() {
    return xx * (yy * zz - yz * zy) - xy * (yx * zz - yz * zx) + xz * (yx * zy - yy * zx) < 0;
  }

  /** Whether it maps the grid onto itself: axes onto axes, moved by whole grid units. */
  public boolean keepsGrid() {
    return turnsQuarterly() && areWhole(xx, xy, xz) && areWhole(yx, yy, yz) && areWhole(zx, zy, zz)
        && isWhole(tx) && isWhole(ty) && isWhole(tz);
  }

  /** Whether it maps axes onto axes: no turn but by quarters, or one that no corner on the grid tells from that. */
  public boolean turnsQuarterly() {
    return isAxis(xx, xy, xz) && isAxis(yx, yy, yz) && isAxis(zx, zy, zz);
  }

  /**
   * The same with its move rounded to the grid, and its turn, if it is one by quarters, exactly that.
   *
   * <p>Last bits go first: in these the same turns and moves put together in another order or place differ, so that of halves
   * of a step, as a turn by 30 degrees makes of a step, some would go up and others down. No corner on the grid moves by more
   * than 2^-20 of a step for it.
   */
  public Placement onGrid() {
    double x = onGrid(tx);
    double y = onGrid(ty);
    double z = onGrid(tz);
    return turnsQuarterly()
        ? new Placement(whole(xx), whole(xy), whole(xz), whole(yx), whole(yy), whole(yz), whole(zx), whole(zy), whole(zz), x, y, z)
        : new Placement(turn(xx), turn(xy), turn(xz), turn(yx), turn(yy), turn(yz), turn(zx), turn(zy), turn(zz), x, y, z);
  }

  private static double onGrid(double mm) {
    return Grid.toMm(Grid.fromMm(Math.rint(mm * 0x1p34) * 0x1p-34));
  }

  private static double turn(double component) {
    return Math.rint(component * 0x1p46) * 0x1p-46;
  }

  /** The nearest whole number, never less than nothing at all. */
  private static double whole(double component) {
    return Math.rint(component) + 0.0;
  }

  private static boolean isAxis(double a, double b, double c) {
    return isWholeTurn(a) && isWholeTurn(b) && isWholeTurn(c)
        && Math.abs(Math.rint(a)) + Math.abs(Math.rint(b)) + Math.abs(Math.rint(c)) == 1;
  }

  private static boolean isWholeTurn(double component) {
    return Math.abs(component - Math.rint(component)) <= OFF;
  }

  private static boolean areWhole(double a, double b, double c) {
    return a == Math.rint(a) && b == Math.rint(b) && c == Math.rint(c);
  }

  private static boolean isWhole(double mm) {
    return mm * Grid.PER_MM == Math.rint(mm * Grid.PER_MM);
  }

  /** Cosine by degrees, exact at multiples of 90 degrees, the same on every machine. */
  private static double cosine(double degrees) {
    double d = Math.abs(degrees % 360);
    if (d > 180) {
      d = 360 - d;
    }
    if (d == 0) {
      return 1;
    }
    if (d == 90) {
      return 0;
    }
    return d == 180 ? -1 : StrictMath.cos(StrictMath.toRadians(d));
  }
}
