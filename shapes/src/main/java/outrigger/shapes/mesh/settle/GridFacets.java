package outrigger.shapes.mesh.settle;

import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.Interrupt;

/** What is asked of facets on the grid, known by the places of vertices and three vertex numbers a facet. */
final class GridFacets {
  private GridFacets() {}

  /** Whether a facet has an area. */
  static boolean hasArea(int[] xyz, int[] corners, int facet) {
    int a = 3 * corners[3 * facet];
    int b = 3 * corners[3 * facet + 1];
    int c = 3 * corners[3 * facet + 2];
    return !Sign.inLine(xyz[b] - xyz[a], xyz[b + 1] - xyz[a + 1], xyz[b + 2] - xyz[a + 2], xyz[c] - xyz[a],
        xyz[c + 1] - xyz[a + 1], xyz[c + 2] - xyz[a + 2]);
  }

  /** Whether a vertex is a corner of a facet. */
  static boolean isCorner(int[] corners, int vertex, int facet) {
    return corners[3 * facet] == vertex || corners[3 * facet + 1] == vertex || corners[3 * facet + 2] == vertex;
  }

  /** Whether two facets, both with an area, meet improperly: of one without nobody can say. */
  static boolean areImproper(int[] xyz, int[] corners, int f, int g) {
    return hasArea(xyz, corners, f) && hasArea(xyz, corners, g) && FacetContact.improper(xyz, corners, f, g);
  }

  /** The box of a facet, and so many steps beyond it: three least, three greatest coordinates. */
  static int[] box(int[] xyz, int[] corners, int facet, int beyond) {
    int[] box = new int[6];
    for (int k = 0; k < 3; k++) {
      int a = xyz[3 * corners[3 * facet] + k];
      int b = xyz[3 * corners[3 * facet + 1] + k];
      int c = xyz[3 * corners[3 * facet + 2] + k];
      box[k] = Math.min(a, Math.min(b, c)) - beyond;
      box[3 + k] = Math.max(a, Math.max(b, c)) + beyond;
    }
    return box;
  }

  /**
   * Tells of all facets without area, each as a pair with itself, and then of all pairs of others that meet improperly: of a
   * facet without area nobody can say.
   *
   * @param tree the boxes of the facets
   * @param told whether to go on, asked with each pair
   */
  static void forEachFault(int[] xyz, int[] corners, BoxTree tree, BoxTree.PairVisitor told) {
    boolean[] hasArea = new boolean[corners.length / 3];
    for (int f = 0; f < hasArea.length; f++) {
      hasArea[f] = hasArea(xyz, corners, f);
      if (!hasArea[f] && !told.visit(f, f)) {
        return;
      }
    }
    tree.selfPairs((f, g) -> {
      Interrupt.check();
      return !hasArea[f] || !hasArea[g] || !FacetContact.improper(xyz, corners, f, g) || told.visit(f, g);
    });
  }
}
