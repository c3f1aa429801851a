package outrigger.presets;

/** Checks shared by the compact constructors of the items; a refused value names its component. */
final class Checks {
  private Checks() {}

  /** Refuses a text that is blank. */
  static void text(String component, String value) {
    require(!value.isBlank(), component + " is blank. Give it a text.");
  }

  /** Refuses what is not finite and above 0. */
  static void positive(String component, double value) {
    if (!(value > 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          component + " is " + value + ", but must be finite and above 0. Use a size above 0.");
    }
  }

  /** Refuses what is not finite and 0 or more. */
  static void zeroOrMore(String component, double value) {
    if (!(value >= 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          component + " is " + value + ", but must be finite and not below 0. Use 0 or more.");
    }
  }

  /** Refuses a pair that is not in rising order. */
  static void below(String lesser, double lesserValue, String greater, double greaterValue) {
    if (!(lesserValue < greaterValue)) {
      throw new IllegalArgumentException(lesser + " (" + Datum.print(lesserValue) + ") must be below " + greater
          + " (" + Datum.print(greaterValue) + "). Lower " + lesser + " or raise " + greater + ".");
    }
  }

  /** Refuses a pair that is in falling order. */
  static void notAbove(String lesser, double lesserValue, String greater, double greaterValue) {
    if (!(lesserValue <= greaterValue)) {
      throw new IllegalArgumentException(lesser + " (" + Datum.print(lesserValue) + ") must not be above " + greater
          + " (" + Datum.print(greaterValue) + "). Lower " + lesser + " or raise " + greater + ".");
    }
  }

  /** Refuses with this message unless the condition holds. */
  static void require(boolean condition, String message) {
    if (!condition) {
      throw new IllegalArgumentException(message);
    }
  }
}
