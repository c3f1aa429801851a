package outrigger.generator.fit;

import outrigger.generator.param.Measure;

/**
 * One length of a stack-up.
 *
 * @param name in the trade's words; the key it is written under, where it has one
 * @param sign +1 where it adds to the sum, -1 where it is taken off
 * @param size the length, or free
 * @param off how far it may be off either way, mm
 * @param isSystematic whether it is off always the same way, as one printer is, so that it is added, never under a root
 */
public record Member(String name, int sign, Measure size, double off, boolean isSystematic) {
  public Member {
    if (sign != 1 && sign != -1 || !(off >= 0)) {
      throw new IllegalArgumentException(name + ": sign " + sign + ", off " + off);
    }
  }

  /** A length of its own spread, or one assumed where none was said. */
  public static Member of(String name, int sign, Measure size, double assumed, boolean isSystematic) {
    return new Member(name, sign, size, size.off().orElse(assumed), isSystematic);
  }

  /** The same with its length solved. */
  Member solved(double mm) {
    return new Member(name, sign, Measure.of(mm, off), off, isSystematic);
  }
}
