package outrigger.generator.accessory.spacer;

/** Which spacers have their thickness engraved. */
public enum Engrave {
  /** Those of a set. */
  SETS,
  /** Every one. */
  ALWAYS,
  /** None. */
  NEVER
}
