package outrigger.generator.fit;

/**
 * What one mount must hold, N.
 *
 * @param up share of a jolt upward at the centre of gravity
 * @param side most that a jolt to either side asks of it, by the body's leaning out over its floor
 * @param fore the same to front or rear
 * @param sideways force along the floor in a jolt from the side
 */
public record Need(double up, double side, double fore, double sideways) {
  /** The greatest of the three, which are not taken to come together. */
  public double most() {
    return Math.max(up, Math.max(side, fore));
  }
}
