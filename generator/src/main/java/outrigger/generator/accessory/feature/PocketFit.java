package outrigger.generator.accessory.feature;

/** How a magnet is held in its pocket. */
public enum PocketFit {
  /** Glued: crush ribs hold it while the glue sets. */
  GLUE,
  /** Pressed past a lip that keeps it in, no glue; it keeps a little play. */
  SLIP
}
