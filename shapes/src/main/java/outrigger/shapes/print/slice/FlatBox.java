package outrigger.shapes.print.slice;

import outrigger.shapes.profile.Section;

/** Least and greatest x and y of something flat; mm. */
public record FlatBox(double minX, double minY, double maxX, double maxY) {
  /** That of nothing. */
  public static final FlatBox NONE = new FlatBox(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

  /** That of an area, which is not empty. */
  public static FlatBox of(Section area) {
    return new FlatBox(area.minX(), area.minY(), area.maxX(), area.maxY());
  }

  /** The same with a place in it. */
  public FlatBox with(double x, double y) {
    return new FlatBox(Math.min(minX, x), Math.min(minY, y), Math.max(maxX, x), Math.max(maxY, y));
  }

  /** The least that holds this and another. */
  public FlatBox with(FlatBox other) {
    return new FlatBox(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** Size along x. */
  public double width() {
    return maxX - minX;
  }

  /** Size along y. */
  public double depth() {
    return maxY - minY;
  }
}
