package outrigger.shapes.profile;

/** A closed loop of grid points, the first not repeated; no point thrice in line, none twice. */
public final class Ring {
  private final int[] xy;

  Ring(int[] xy) {
    this.xy = xy.clone();
  }

  /** Number of corners. */
  public int size() {
    return xy.length / 2;
  }

  /** x of a corner, grid units. */
  public int x(int corner) {
    return xy[2 * corner];
  }

  /** y of a corner, grid units. */
  public int y(int corner) {
    return xy[2 * corner + 1];
  }
}
