package outrigger.shapes.mesh.settle;

import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.LongMap;

/** Finds where a surface touched itself before it was rounded, so far as its vertices and what lies on the grid tell. */
final class ExactTouch {
  private ExactTouch() {}

  /**
   * A vertex at which the exact surface touches itself at a point.
   *
   * @param facets with vertices that are equal only if their exact points are
   * @return its number, or -1
   */
  static int find(Rounded facets) {
    int crowded = crowded(facets.corners());
    int pinched = crowded >= 0 ? crowded : Fans.of(facets.xyz(), facets.corners()).pinched();
    return pinched >= 0 ? pinched : meeting(facets);
  }

  /** Faces that touch along a line between two corners of both may be cut there; such an edge has four facets. */
  private static int crowded(int[] corners) {
    LongMap edges = new LongMap(corners.length);
    for (int h = 0; h < corners.length; h++) {
      if (edges.put(LongMap.edge(corners[h], corners[FacetCorner.next(h)]), h) >= 0) {
        return corners[h];
      }
    }
    return -1;
  }

  private static int meeting(Rounded facets) {
    int[] found = {-1};
    int[] c = facets.corners();
    BoxTree.ofFacets(facets.xyz(), c).selfPairs((f, g) -> {
      if (isOnGrid(facets, f) && isOnGrid(facets, g) && FacetContact.improper(facets.xyz(), c, f, g)) {
        found[0] = c[3 * f];
      }
      return found[0] < 0;
    });
    return found[0];
  }

  private static boolean isOnGrid(Rounded facets, int f) {
    int[] c = facets.corners();
    return !facets.moved()[c[3 * f]] && !facets.moved()[c[3 * f + 1]] && !facets.moved()[c[3 * f + 2]];
  }
}
