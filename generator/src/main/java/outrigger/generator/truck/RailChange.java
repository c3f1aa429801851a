package outrigger.generator.truck;

/** How a rail gets from one section to the next behind it. */
public enum RailChange {
  /** Evenly from one place to the next. */
  TAPER,
  /** All at once, at the place where the new section begins. */
  STEP
}
