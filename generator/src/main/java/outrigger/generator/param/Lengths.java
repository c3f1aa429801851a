package outrigger.generator.param;

import java.util.OptionalDouble;

/** Lengths inside texts that have a form of their own. */
public final class Lengths {
  private static final NumberForm ANY = new NumberForm(new Range(Unit.MM, -Double.MAX_VALUE, Double.MAX_VALUE));

  private Lengths() {}

  /** The length a text states in mm, in or thou, as millimetres; empty where it states none. */
  public static OptionalDouble read(String text) {
    try {
      return OptionalDouble.of((Double) ANY.parse(text, null));
    } catch (BadText e) {
      return OptionalDouble.empty();
    }
  }
}
