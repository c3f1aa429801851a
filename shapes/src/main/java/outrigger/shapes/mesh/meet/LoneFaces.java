package outrigger.shapes.mesh.meet;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.HalfEdges;

/**
 * Finds faces that need not be laid into the sheet of their plane although they are flush with others: such as are apart
 * from all else there, as the foot of a post on a plate.
 *
 * <p>Their box holds nothing of the sheet but their own edges, and free loops. So all inside of such a face is alike, and
 * all just outside of it, and the rest of the sheet is as if it were not there.
 */
final class LoneFaces {
  /** Fewest edges of a lone face: two looks cost about as much as laying so many. */
  private static final int WORTH = 8;

  private final Faces faces;

  LoneFaces(Faces faces) {
    this.faces = faces;
  }

  /** Whether any of some faces of one plane, null for none, has edges enough. */
  boolean isWorthIt(List<Integer> onPlane) {
    if (onPlane != null && onPlane.size() > 1) {
      for (int f : onPlane) {
        if (faces.face(f).edges() >= WORTH) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether a face is lone.
   *
   * @param onPlane the boxes of all edges and all else on its plane
   * @param isLaid which of them are not those of free loops
   * @param kept gets its box if it is
   */
  boolean isLone(int f, BoxTree onPlane, IntPredicate isLaid, PlaneBounds kept) {
    Face face = faces.face(f);
    if (face.edges() < WORTH || !isOnItsOwn(face)) {
      return false;
    }
    kept.begin();
    for (int v : face.from) {
      kept.enclose(faces.point(v), PlaneBounds.GAP);
    }
    boolean lone = kept.countAtLast(onPlane, isLaid) == face.edges();
    if (!lone) {
      kept.drop();
    }
    return lone;
  }

  /**
   * Whether a face has one rim, no neighbour goes on flat from it, and it comes to no corner twice. Within an inner rim it
   * need not be as it is outside: the operand may go on there, as above a shoulder.
   */
  private boolean isOnItsOwn(Face face) {
    HalfEdges halfEdges = faces.halfEdges();
    for (int e = 0; e < face.edges(); e++) {
      if (halfEdges.loop(face.first + e) != halfEdges.loop(face.first) || faces.planeOf(face.across[e]) == face.plane) {
        return false;
      }
    }
    int[] corners = face.from.clone();
    Arrays.sort(corners);
    for (int i = 1; i < corners.length; i++) {
      if (corners[i] == corners[i - 1]) {
        return false;
      }
    }
    return true;
  }
}
