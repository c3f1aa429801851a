package outrigger.shapes.check;

/** Gathers neighbours that lie in one plane and face one way, and notices those folded onto each other. */
final class Flatness implements Regions.Bond {
  private final Surface surface;
  private final HalfEdges edges;
  private boolean folded;

  Flatness(Surface surface, HalfEdges edges) {
    this.surface = surface;
    this.edges = edges;
  }

  /** Whether two facets asked about lie on top of each other. */
  boolean foundFold() {
    return folded;
  }

  @Override
  public boolean joins(int h) {
    int facet = h / 3;
    int twin = edges.twin(h);
    if (surface.side(facet, edges.from(HalfEdges.before(twin))) != 0) {
      return false;
    }
    // in one plane the two normals are multiples of each other: positive ones unless folded
    int next = twin / 3;
    int axis = surface.normal(facet, 0) != 0 ? 0 : surface.normal(facet, 1) != 0 ? 1 : 2;
    boolean alike = surface.normal(facet, axis) > 0 == surface.normal(next, axis) > 0;
    folded |= !alike;
    return alike;
  }
}
