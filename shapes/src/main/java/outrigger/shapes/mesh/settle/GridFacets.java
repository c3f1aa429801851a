package outrigger.shapes.mesh.settle;

import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.exact.Sign;

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
}
