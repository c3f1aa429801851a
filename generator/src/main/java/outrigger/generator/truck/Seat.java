package outrigger.generator.truck;

/**
 * Where a part lies against the left rail, which may run at an angle; the right rail mirrors it.
 *
 * @param x of the middle of what lies against the web, mm
 * @param y of the same, mm
 * @param degrees by which the part turns with the web, 0 of parallel rails
 */
public record Seat(double x, double y, double degrees) {

  /** y of what stands square out from the web, mm. */
  public double yOut(double reach) {
    return y + reach * StrictMath.cos(StrictMath.toRadians(degrees));
  }
}
