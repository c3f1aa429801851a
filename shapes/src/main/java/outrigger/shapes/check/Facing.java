package outrigger.shapes.check;

/** Gathers neighbours as long as there is an axis direction that all of them face. */
final class Facing implements Regions.Bond {
  private final Surface surface;
  private final HalfEdges edges;
  private int common;

  Facing(Surface surface, HalfEdges edges) {
    this.surface = surface;
    this.edges = edges;
  }

  @Override
  public void begin(int facet) {
    common = surface.facing(facet);
  }

  @Override
  public boolean joins(int h) {
    int left = common & surface.facing(edges.across(h));
    common = left == 0 ? common : left;
    return left != 0;
  }
}
