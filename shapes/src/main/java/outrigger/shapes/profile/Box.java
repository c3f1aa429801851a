package outrigger.shapes.profile;

/** Least and greatest coordinates of what lies in the plane, grid units. */
record Box(int minX, int minY, int maxX, int maxY) {
  static Box of(Ring ring) {
    int minX = ring.x(0);
    int minY = ring.y(0);
    int maxX = minX;
    int maxY = minY;
    for (int i = 1; i < ring.size(); i++) {
      minX = Math.min(minX, ring.x(i));
      minY = Math.min(minY, ring.y(i));
      maxX = Math.max(maxX, ring.x(i));
      maxY = Math.max(maxY, ring.y(i));
    }
    return new Box(minX, minY, maxX, maxY);
  }

  Box with(Box other) {
    return new Box(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** Whether the two share a point, their rims included. */
  boolean meets(Box other) {
    return meets(other.minX, other.minY, other.maxX, other.maxY);
  }

  /** The same with one given by its bounds. */
  boolean meets(int fromX, int fromY, int toX, int toY) {
    return minX <= toX && fromX <= maxX && minY <= toY && fromY <= maxY;
  }

  /** Whether another lies in this one, common rims allowed. */
  boolean holds(Box other) {
    return minX <= other.minX && other.maxX <= maxX && minY <= other.minY && other.maxY <= maxY;
  }
}
