package outrigger.generator.accessory.feature;

/** How the screw's head lies in the face of a part. */
public enum HeadSeat {
  /** On the face. */
  NONE,
  /** In a flat-bottomed round recess, flush or below. */
  COUNTERBORE,
  /** In a 90 degree cone, flush or below. */
  COUNTERSINK
}
