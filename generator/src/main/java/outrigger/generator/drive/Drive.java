package outrigger.generator.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.generator.truck.DriveParams;

/**
 * How a truck drives.
 *
 * @param freeSpeed speed without load, m/s
 * @param levelSpeed top speed on the level with what is towed, m/s; 0 where the motor stalls
 * @param slopeSpeed the same on the slope it is to climb
 * @param pull what the motor pushes with at stall, N
 * @param grip what the tyres push with on the level without trailer before they slip, N
 * @param motorSlope steepest slope with what is towed before the motor stalls, degrees; below 0 where it does on the level
 * @param tyreSlope the same before the tyres slip
 * @param motorTrailer heaviest trailer on the slope it is to climb before the motor stalls, g
 * @param tyreTrailer the same before the tyres slip
 * @param turning its circle
 */
public record Drive(DriveParams given, Vehicle vehicle, double freeSpeed, double levelSpeed, double slopeSpeed,
    double pull, double grip, double motorSlope, double tyreSlope, double motorTrailer, double tyreTrailer,
    Turning turning) {
  private static final double KMH = 3.6;

  /** Reckons it. */
  public static Drive of(DriveParams given, Vehicle vehicle) {
    Climb climb = new Climb(given, vehicle);
    double slope = StrictMath.toRadians(given.slope());
    double towed = Vehicle.weight(given.towed());
    return new Drive(given, vehicle, climb.freeSpeed(), climb.speed(0, towed), climb.speed(slope, towed),
        climb.stallForce(), given.grip() * climb.drivenLoad(0, 0), StrictMath.toDegrees(climb.motorSlope(towed)),
        StrictMath.toDegrees(climb.tyreSlope(towed)), Vehicle.grams(climb.motorTrailer(slope)),
        Vehicle.grams(climb.tyreTrailer(slope)),
        Turning.of(vehicle.wheelbase(), vehicle.track(), given.steering()));
  }

  /** Whether the motor stalls before the tyres slip as the slope grows. */
  public boolean motorGivesUpFirst() {
    return motorSlope < tyreSlope;
  }

  /** Whether it climbs the slope it is to climb with what is towed. */
  public boolean climbs() {
    return given.slope() <= Math.min(motorSlope, tyreSlope);
  }

  /** Steepest slope it climbs with what is towed, degrees; 0 where it does not start at all. */
  public double steepest() {
    return Math.max(0, Math.min(motorSlope, tyreSlope));
  }

  /** Heaviest trailer on the slope it is to climb, g. */
  public double heaviest() {
    return Math.min(motorTrailer, tyreTrailer);
  }

  /**
   * The working, one sentence a line.
   *
   * @param scale 24 for 1:24
   */
  public List<String> lines(double scale) {
    List<String> lines = new ArrayList<>();
    lines.add(words("Top speed on the level with %.0f g in tow %.2f m/s, to scale %.0f km/h; without load %.2f m/s.",
        given.towed(), levelSpeed, levelSpeed * KMH * scale, freeSpeed));
    lines.add(words("At stall the motor pushes with %.2f N; the tyres grip %.2f N on the level.", pull, grip));
    lines.add(steepest() == 0 ? words("With %.0f g in tow it does not move off: the %s first.", given.towed(), loser())
        : words("With %.0f g in tow it climbs up to %.1f degrees; then the %s.", given.towed(), steepest(), loser()));
    if (given.slope() > 0) {
      lines.add(climbs() ? words("On the %.1f degrees asked for it does %.2f m/s.", given.slope(), slopeSpeed)
          : words("The %.1f degrees asked for are too steep.", given.slope()));
    }
    lines.add(Double.isInfinite(heaviest()) ? "Nothing holds a trailer back on the level without rolling resistance."
        : words("On %.1f degrees it pulls up to %.0f g: motor %.0f g, tyres %.0f g.", given.slope(), heaviest(),
            motorTrailer, tyreTrailer));
    lines.add(words("Turning circle %.0f mm at the outer front wheel, the inner one at %.1f and the outer at %.1f degrees.",
        turning.circle(), given.steering(), turning.outerAngle()));
    return lines;
  }

  private String loser() {
    return motorGivesUpFirst() ? "motor stalls" : "tyres slip";
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
