package outrigger.generator.param;

/** Units a number can be declared in. Lengths may be written with mm (default), in or thou. */
public enum Unit {
  MM("mm"), DEGREES("degrees"), GRAMS("g"), CELSIUS("degrees C"), NONE("");

  private final String word;

  Unit(String word) {
    this.word = word;
  }

  /** As it stands behind a number; empty for a plain number. */
  public String word() {
    return word;
  }
}
