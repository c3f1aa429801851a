package outrigger.generator.accessory.feature;

/** The pole of a magnet that looks up, as marked on a part. */
public enum Pole {
  /** North up. */
  N,
  /** South up. */
  S,
  /** Not marked. */
  NONE
}
