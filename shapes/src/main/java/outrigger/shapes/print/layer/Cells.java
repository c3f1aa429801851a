package outrigger.shapes.print.layer;

/**
 * Square cells over a box, in rows; mm.
 *
 * @param minX least x of the box
 * @param minY least y
 * @param size of a cell
 * @param columns how many lie along x
 * @param rows how many lie along y
 */
record Cells(double minX, double minY, double size, int columns, int rows) {
  /** About so many cells over a box; of a long narrow one no more lie along it. */
  static Cells over(double minX, double minY, double width, double depth, int count) {
    double size = Math.max(Math.sqrt(width * depth / count), Math.max(width, depth) / count);
    return new Cells(minX, minY, size, 1 + (int) (width / size), 1 + (int) (depth / size));
  }

  /** How many there are. */
  int count() {
    return columns * rows;
  }

  /** The column of a place, the nearest one for a place beside the box. */
  int column(double x) {
    return clamp((int) ((x - minX) / size), columns - 1);
  }

  /** The row of a place, likewise. */
  int row(double y) {
    return clamp((int) ((y - minY) / size), rows - 1);
  }

  /** Where a column begins. */
  double left(int column) {
    return minX + column * size;
  }

  /** Where a row begins. */
  double bottom(int row) {
    return minY + row * size;
  }

  private static int clamp(int cell, int last) {
    return Math.max(0, Math.min(last, cell));
  }
}
