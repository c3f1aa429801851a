package outrigger.shapes.print.facet;

/** Numbers directions by the cell of a cube's surface that they go through. */
public final class CubeMap {
  private final int side;

  /** @param side cells along an edge of the cube */
  public CubeMap(int side) {
    this.side = side;
  }

  /** How many cells there are. */
  public int cells() {
    return 6 * side * side;
  }

  /** The cell of a direction of any length. */
  public int cell(double x, double y, double z) {
    double ax = Math.abs(x);
    double ay = Math.abs(y);
    double az = Math.abs(z);
    if (ax >= ay && ax >= az) {
      return cell(x > 0 ? 0 : 1, y, z, ax);
    }
    return ay >= az ? cell(y > 0 ? 2 : 3, x, z, ay) : cell(z > 0 ? 4 : 5, x, y, az);
  }

  private int cell(int face, double a, double b, double most) {
    int i = (int) Math.min(side - 1.0, (a / most + 1) / 2 * side);
    int j = (int) Math.min(side - 1.0, (b / most + 1) / 2 * side);
    return (face * side + i) * side + j;
  }
}
