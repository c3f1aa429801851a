package outrigger.generator.param;

import java.util.OptionalDouble;

/**
 * A length as measured, with what it may be off; or none, where the program is to work it out.
 *
 * @param size mm; empty where it is to be solved
 * @param off how far the truth may lie from it either way, mm, 0 or more; empty where nothing was said
 */
public record Measure(OptionalDouble size, OptionalDouble off) {
  /** Left to the program. */
  public static final Measure FREE = new Measure(OptionalDouble.empty(), OptionalDouble.empty());

  public Measure {
    if (off.isPresent() && !(off.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("off by " + off.getAsDouble() + " mm");
    }
  }

  /** A length with what it may be off, mm. */
  public static Measure of(double size, double off) {
    return new Measure(OptionalDouble.of(size), OptionalDouble.of(off));
  }

  /** Whether the program is to work it out. */
  public boolean isFree() {
    return size.isEmpty();
  }

  /**
   * The length, mm.
   *
   * @throws java.util.NoSuchElementException where it is free
   */
  public double mm() {
    return size.getAsDouble();
  }
}
