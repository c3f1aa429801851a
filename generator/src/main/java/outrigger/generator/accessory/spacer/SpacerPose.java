package outrigger.generator.accessory.spacer;

/** How a spacer lies on the bed. */
public enum SpacerPose {
  /** On its face: thickness is a stack of layers. */
  FLAT,
  /** On its long edge: thickness lies in the plane of the bed and is no stack of layers. */
  ON_EDGE
}
