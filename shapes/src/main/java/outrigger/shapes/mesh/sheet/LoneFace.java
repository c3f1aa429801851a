package outrigger.shapes.mesh.sheet;

import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.inside.Locator;

/**
 * A face apart from all else on its plane: a look inside and one beside it tell what it bounds there.
 *
 * <p>Both are taken at its greatest corner, by x, then y, then z. Such a corner is convex, and what is beyond it is outside
 * of the face. Of the face's corners in the triangle that it makes with its neighbours, the nearest can be joined to it
 * within the face; if there are none, all of the triangle is inside.
 */
final class LoneFace {
  /** How far beyond the corner at most, grid units: half of what is left round a lone face, {@code PlaneBounds.GAP}. */
  private static final int BESIDE = 4;
  /** Weights of the ways from both neighbours to the corner; others are tried where one leads onto a face by chance. */
  private static final int[][] BEYOND = {{1, 1}, {1, 2}, {3, 1}, {5, 7}, {11, 4}, {13, 29}};

  private final Faces faces;
  private final Face face;
  /** The greatest corner. */
  private final int corner;
  /** Its neighbours on the rim. */
  private final int before;
  private final int after;

  private LoneFace(Faces faces, Face face, int corner, int before, int after) {
    this.faces = faces;
    this.face = face;
    this.corner = corner;
    this.before = before;
    this.after = after;
  }

  /** A face by its number. */
  static LoneFace of(Faces faces, int f) {
    Face face = faces.face(f);
    int greatest = 0;
    for (int e = 1; e < face.edges(); e++) {
      if (compare(faces, face.from[e], face.from[greatest]) > 0) {
        greatest = e;
      }
    }
    int corner = face.from[greatest];
    int before = -1;
    for (int e = 0; e < face.edges(); e++) {
      before = face.to[e] == corner ? face.from[e] : before;
    }
    return new LoneFace(faces, face, corner, before, face.to[greatest]);
  }

  private static int compare(Faces faces, int a, int b) {
    int c = Integer.compare(faces.x(a), faces.x(b));
    c = c != 0 ? c : Integer.compare(faces.y(a), faces.y(b));
    return c != 0 ? c : Integer.compare(faces.z(a), faces.z(b));
  }

  /**
   * Tells all edges of it that bound the result, as a sheet does.
   *
   * @param unlaid boxes that no look may be taken in, but for that of this face
   */
  void outline(SheetWalker walker, BoxTree unlaid, Sheet.EdgeTaker taker) {
    byte inside = labelInside(walker, unlaid);
    byte beside = labelBeside(walker);
    if (inside != beside) {
      outline(inside, true, taker);
      outline(beside, false, taker);
    }
  }

  /** Tells its edges as those of what is to their left, as they run, or to their right. */
  private void outline(byte label, boolean left, Sheet.EdgeTaker taker) {
    if (label == Sheet.NONE) {
      return;
    }
    boolean up = label == Sheet.UP;
    boolean along = left == (face.up == up);
    for (int e = 0; e < face.edges(); e++) {
      ExactPoint from = faces.point(face.from[e]);
      ExactPoint to = faces.point(face.to[e]);
      taker.add(Group.of(face.plane, up), along ? from : to, along ? to : from);
    }
  }

  private byte labelInside(SheetWalker walker, BoxTree unlaid) {
    int seen = nearestInCorner();
    ExactPoint a = faces.point(corner);
    ExactPoint b = faces.point(seen < 0 ? before : seen);
    ExactPoint c = faces.point(seen < 0 ? after : seen);
    // one box is that of the face
    return walker.labelInside(a, b, c, face.plane, q -> Sheet.boxesAt(unlaid, q) > 1);
  }

  /** The corner nearest to the greatest one in the triangle that this makes with its neighbours; -1 if there is none. */
  private int nearestInCorner() {
    int way = Long.signum(turn(corner, before, after));
    int nearest = -1;
    long most = -1;
    for (int v : face.from) {
      if (v != corner && v != before && v != after && way * turn(corner, before, v) >= 0
          && way * turn(after, corner, v) >= 0 && way * turn(before, after, v) > most) {
        most = way * turn(before, after, v);
        nearest = v;
      }
    }
    return nearest;
  }

  /** Twice the area of a triangle, seen along an axis; positive if it runs from u to v. Grid differences stay below 2^25. */
  private long turn(int a, int b, int c) {
    Plane plane = faces.plane(face.plane);
    int u = plane.firstAxis();
    int v = plane.secondAxis();
    return difference(a, b, u) * difference(a, c, v) - difference(a, b, v) * difference(a, c, u);
  }

  private long difference(int from, int to, int axis) {
    return (long) faces.coordinate(to, axis) - faces.coordinate(from, axis);
  }

  private byte labelBeside(SheetWalker walker) {
    for (int[] ways : BEYOND) {
      try {
        return walker.labelAt(beyond(ways[0], ways[1]), face.plane);
      } catch (Locator.OnFace chance) {
        // the next weights give another point
      }
    }
    throw new IllegalStateException("every point tried beside a lone face lies on another");
  }

  private ExactPoint beyond(int fromBefore, int fromAfter) {
    long reach = 0;
    for (int k = 0; k < 3; k++) {
      long way = fromBefore * difference(before, corner, k) + fromAfter * difference(after, corner, k);
      reach = Math.max(reach, Math.abs(way));
    }
    long weight = fromBefore + fromAfter + 1 + reach / BESIDE;
    return ExactPoint.mean(faces.point(corner), weight, faces.point(before), -fromBefore, faces.point(after), -fromAfter);
  }
}
