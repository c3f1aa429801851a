package outrigger.generator.drive;

/**
 * A truck as it stands on its wheels.
 *
 * @param mass g, above 0
 * @param behind distance of its centre of gravity behind the front axle, mm
 * @param height of its centre of gravity over the ground, mm
 * @param wheelbase mm, above 0
 * @param track middle to middle of the wheels of an axle, mm, above 0
 */
public record Vehicle(double mass, double behind, double height, double wheelbase, double track) {
  /** Standard acceleration of free fall, m/s^2 (ISO 80000-3). */
  static final double GRAVITY = 9.80665;
  private static final double GRAMS_PER_KILOGRAM = 1000;

  public Vehicle {
    if (!(mass > 0 && wheelbase > 0 && track > 0)) {
      throw new IllegalArgumentException(mass + " g on " + wheelbase + " x " + track + " mm");
    }
  }

  /** Weight, N. */
  double weight() {
    return weight(mass);
  }

  static double weight(double grams) {
    return grams / GRAMS_PER_KILOGRAM * GRAVITY;
  }

  static double grams(double newton) {
    return newton / GRAVITY * GRAMS_PER_KILOGRAM;
  }
}
