package outrigger.shapes.mesh;

/** Goes round the corners of facets that are written one after the other, three corners each. */
public final class FacetCorner {
  private FacetCorner() {}

  /** The corner after one of the same facet. */
  public static int next(int corner) {
    return corner % 3 == 2 ? corner - 2 : corner + 1;
  }
}
