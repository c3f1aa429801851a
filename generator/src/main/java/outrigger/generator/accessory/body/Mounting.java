package outrigger.generator.accessory.body;

/** Which face of the rail's web the flange is bolted to. */
public enum Mounting {
  /** The outer one, looking away from the truck's middle. */
  OUTBOARD,
  /** The inner one. */
  INBOARD
}
