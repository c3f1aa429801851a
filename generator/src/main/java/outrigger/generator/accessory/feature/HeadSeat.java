package outrigger.generator.accessory.feature;

/** How the screw's head lies in the face of a part. */
public enum HeadSeat {
  /** On the face. */
  NONE,
  /** In a flat-bottomed round recess, flush or below. */
  COUNTERBORE,
  /** In such a recess on a plain washer, which spreads its load. */
  WASHER,
  /** In a 90 degree cone, flush or below. */
  COUNTERSINK;

  /** Whether the head lies in a flat-bottomed recess. */
  public boolean isFlat() {
    return this == COUNTERBORE || this == WASHER;
  }
}
