package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.DisjointSets;
import outrigger.shapes.num.LongMap;

/**
 * Which facets hang together at each vertex of a mesh: those that share an edge there. A vertex with more than one fan of
 * them is a place where the surface touches itself.
 */
final class Fans {
  private final int[] corners;
  /** Corners, by their fans. */
  private final DisjointSets fans;

  private Fans(int[] corners) {
    this.corners = corners;
    fans = new DisjointSets(corners.length);
  }

  /** Whether a vertex has more than one fan, or an edge other than two facets that run it both ways. */
  static boolean isPinched(Mesh mesh) {
    Fans fans = new Fans(mesh.corners());
    return !fans.areJoined() || fans.areSeveral(mesh.vertexCount());
  }

  /** Joins corners along all edges; false where that cannot be told. */
  private boolean areJoined() {
    LongMap halfEdges = new LongMap(corners.length);
    for (int h = 0; h < corners.length; h++) {
      if (halfEdges.put(LongMap.edge(corners[h], corners[FacetCorner.next(h)]), h) >= 0) {
        return false;
      }
    }
    for (int h = 0; h < corners.length; h++) {
      int twin = halfEdges.get(LongMap.edge(corners[FacetCorner.next(h)], corners[h]));
      if (twin < 0) {
        return false;
      }
      fans.join(h, FacetCorner.next(twin));
    }
    return true;
  }

  private boolean areSeveral(int vertices) {
    int[] seen = new int[vertices];
    Arrays.fill(seen, -1);
    for (int c = 0; c < corners.length; c++) {
      int before = seen[corners[c]];
      seen[corners[c]] = fans.find(c);
      if (before >= 0 && before != seen[corners[c]]) {
        return true;
      }
    }
    return false;
  }
}
