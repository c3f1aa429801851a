package outrigger.shapes.num;

/**
 * The grid every coordinate of a finished mesh lies on.
 *
 * <p>A coordinate is an integer count of {@link #STEP} (2^-14 mm, about 61 nm) within +-{@link #LIMIT_MM}.
 * That is 24 significant bits and a sign, so a 32-bit float holds it exactly and nothing is rounded when a file
 * is written.
 */
public final class Grid {
  /** Grid units in one millimetre, 2^14. */
  public static final int PER_MM = 1 << 14;
  /** One grid unit in millimetres, 2^-14. */
  public static final double STEP = 1.0 / PER_MM;
  /** Largest coordinate in millimetres, either sign. */
  public static final double LIMIT_MM = 1024;
  /** Largest coordinate in grid units, either sign: 2^24. */
  public static final int LIMIT = 1 << 24;

  private Grid() {}

  /**
   * Rounds a length to the nearest grid unit, halves upward.
   *
   * @param mm a coordinate in millimetres
   * @return grid units
   * @throws ShapeException if {@code mm} is not a number or lies beyond +-{@link #LIMIT_MM}
   */
  public static int fromMm(double mm) {
    if (!(mm >= -LIMIT_MM && mm <= LIMIT_MM)) {
      throw new ShapeException("coordinate " + mm + " mm lies outside the grid's range of +-" + LIMIT_MM + " mm",
          "Keep parts within that range about their own origin.");
    }
    return (int) Math.floor(mm * PER_MM + 0.5);
  }

  /** Converts grid units to millimetres, exactly. */
  public static double toMm(long units) {
    return units * STEP;
  }
}
