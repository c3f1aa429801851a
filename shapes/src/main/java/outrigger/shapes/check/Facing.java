package outrigger.shapes.check;

/** The axis directions a facet faces, as a set of bits: +x, -x, +y, -y, +z, -z from the lowest on. */
final class Facing {
  private Facing() {}

  static int of(Surface surface, int facet) {
    int set = 0;
    for (int axis = 0; axis < 3; axis++) {
      long n = surface.normal(facet, axis);
      set |= n > 0 ? 1 << 2 * axis : n < 0 ? 2 << 2 * axis : 0;
    }
    return set;
  }

  /** Gathers neighbours as long as there is a direction that all of them face. */
  static final class Bond implements Regions.Bond {
    private final Surface surface;
    private final HalfEdges edges;
    private int common;

    Bond(Surface surface, HalfEdges edges) {
      this.surface = surface;
      this.edges = edges;
    }

    @Override
    public void begin(int facet) {
      common = of(surface, facet);
    }

    @Override
    public boolean joins(int h) {
      int left = common & of(surface, edges.across(h));
      common = left == 0 ? common : left;
      return left != 0;
    }
  }
}
