package outrigger.shapes.profile;

/** Least and greatest coordinates of what lies in the plane, grid units. */
record Box(int minX, int minY, int maxX, int maxY) {
  static Box of(Ring ring) {
    Box box = edge(ring, 0);
    for (int i = 1; i < ring.size(); i++) {
      box = box.with(edge(ring, i));
    }
    return box;
  }

  /** The box of the edge that ends at a corner. */
  static Box edge(Ring ring, int corner) {
    int before = (corner + ring.size() - 1) % ring.size();
    return new Box(Math.min(ring.x(before), ring.x(corner)), Math.min(ring.y(before), ring.y(corner)),
        Math.max(ring.x(before), ring.x(corner)), Math.max(ring.y(before), ring.y(corner)));
  }

  Box with(Box other) {
    return new Box(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** Whether the two share a point, their rims included. */
  boolean meets(Box other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }
}
