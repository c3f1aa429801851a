package outrigger.shapes.mesh;

import outrigger.shapes.num.Placement;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;

/** Makes the polyhedron of a leaf solid. Pending. */
final class LeafBuilder {
  private LeafBuilder() {}

  static Polyhedron prism(Prism prism) {
    throw new UnsupportedOperationException("pending");
  }

  static Polyhedron revolution(Revolution revolution) {
    throw new UnsupportedOperationException("pending");
  }

  /** The same polyhedron placed: exact where the placement keeps the grid, else rounded once and cut into facets. */
  static Polyhedron place(Polyhedron polyhedron, Placement placement) {
    throw new UnsupportedOperationException("pending");
  }
}
