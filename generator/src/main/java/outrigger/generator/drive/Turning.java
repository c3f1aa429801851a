package outrigger.generator.drive;

/**
 * The circle a truck turns in with its inner front wheel at full lock and the outer one as it must be to roll round the
 * same middle (Ackermann), which lies in line with the rear axle; mm and degrees. King pins are taken to stand in the
 * wheels' middles.
 *
 * @param inner radius of the inner rear wheel's path
 * @param outer radius of the outer front wheel's path
 * @param outerAngle angle of the outer front wheel
 */
public record Turning(double inner, double outer, double outerAngle) {

  /** The circle of a wheelbase, a track and the angle of the inner front wheel. */
  public static Turning of(double wheelbase, double track, double steering) {
    double inner = wheelbase / StrictMath.tan(StrictMath.toRadians(steering));
    return new Turning(inner, StrictMath.hypot(inner + track, wheelbase),
        StrictMath.toDegrees(StrictMath.atan2(wheelbase, inner + track)));
  }

  /** Diameter of the circle that the outer front wheel draws. */
  public double circle() {
    return 2 * outer;
  }
}
