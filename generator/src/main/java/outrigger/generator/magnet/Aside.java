package outrigger.generator.magnet;

/**
 * What keeps the body from sliding, for each mount, N.
 *
 * @param friction of the faces, counted on
 * @param centring pull back to the middle once pushed aside, counted on; 0 of steel
 * @param along pull along the axis that ordinary magnets keep when pushed aside
 * @param needed for a jolt from the side
 */
public record Aside(double friction, double centring, double along, double needed) {

  /** Whether something must be there that keeps the body in place by its shape. */
  public boolean needsPin() {
    return friction + centring < needed;
  }
}
