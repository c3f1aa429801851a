package outrigger.generator.magnet;

/**
 * What the body asks of its mounts.
 *
 * @param weight of the body, N
 * @param jolt multiple of the weight it must stay on through
 * @param mounts that share it evenly
 */
public record Load(double weight, double jolt, int mounts) {
  /** Standard acceleration of free fall, m/s^2. */
  private static final double GRAVITY = 9.80665;
  private static final double GRAMS_PER_KILOGRAM = 1000;

  static Load of(HoldParams p) {
    return new Load(p.mass() / GRAMS_PER_KILOGRAM * GRAVITY, p.shock(), p.mounts());
  }

  /** Pull needed of each mount, N. The body's own weight helps only while the truck stands upright: not counted on. */
  public double each() {
    return weight * jolt / mounts;
  }

  /** Mounts that would do, each counted on for a pull above 0, N. */
  long mountsFor(double counted) {
    return (long) Math.ceil(weight * jolt / counted);
  }
}
