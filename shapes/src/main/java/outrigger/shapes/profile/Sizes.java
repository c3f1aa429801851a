package outrigger.shapes.profile;

import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

/** Refuses sizes no shape can have, in words, and writes lengths the short way. */
public final class Sizes {
  /** Longest size in millimetres: from one end of the grid to the other. */
  public static final double LONGEST_MM = 2 * Grid.LIMIT_MM;

  private Sizes() {}

  /**
   * Lets a length through that is at least one grid step and at most {@link #LONGEST_MM}.
   *
   * @param name what the length is, for the message
   * @param mm the length
   * @return the length
   * @throws ShapeException if it is not a number, infinite, zero, negative or out of range
   */
  public static double positive(String name, double mm) {
    if (!(mm >= Grid.STEP && mm <= LONGEST_MM)) {
      throw new ShapeException(name + " is " + mm(mm) + "; it must be at least " + mm(Grid.STEP) + " and at most "
          + mm(LONGEST_MM), "Give a " + name + " within that range.");
    }
    return mm;
  }

  /**
   * Lets any coordinate, distance or angle through that is a finite number.
   *
   * @throws ShapeException if it is not
   */
  public static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new ShapeException(name + " is " + value + "; it must be a finite number", "Give a number.");
    }
    return value;
  }

  /** A length with its unit, without a trailing {@code .0}. */
  public static String mm(double mm) {
    return number(mm) + " mm";
  }

  /** A number without a trailing {@code .0}. */
  public static String number(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9 ? Long.toString((long) value) : Double.toString(value);
  }
}
