package outrigger.shapes.mesh.inside;

import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.num.IntList;

/**
 * Counts how often each operand winds round a point, or round one just above a sheet and just below.
 *
 * <p>Only operands count whose boxes hold the point. Of those that are convex the planes of their faces tell, and mostly of
 * those that are nearly so; for all others one ray is sent, along the axis nearest to the sheet's normal, or without a sheet
 * the shortest way out. Where it meets an edge or a corner of a face it is taken to run a breath beside it, first along u,
 * then along v, the two other axes in turn, the same for all faces, so that each face counts once or not.
 */
public final class Locator {
  /** The point lies exactly on a face that is not in the sheet: choose another. */
  public static final class OnFace extends RuntimeException {
    OnFace() {
      super(null, null, false, false);
    }
  }

  private final Faces faces;
  private final BoxTree tree;
  private final ConvexOperands convex;
  private final Hiding hiding;
  /** Of each operand the last look that asked it by a ray. */
  private final int[] rayOf;
  /** Number of the look that goes on, or was the last. */
  private int looks;
  /** Operands on whose faces the point lies. */
  private final IntList met = new IntList();

  /** With the faces' boxes. */
  public Locator(Faces faces, BoxTree tree, Hiding hiding) {
    this.faces = faces;
    this.tree = tree;
    this.hiding = hiding;
    convex = hiding.convex();
    rayOf = new int[faces.operandCount()];
  }

  /**
   * Looks from a point inside a cell of the sheet.
   *
   * @param q the point, exactly in the sheet's plane
   * @param planeNumber the sheet
   * @throws OnFace if it lies on a face that is not in the sheet's plane
   */
  public WindingCount look(ExactPoint q, int planeNumber) {
    Plane plane = faces.plane(planeNumber);
    int w = plane.dominantAxis();
    boolean upward = plane.normal(w) > 0;
    WindingCount count = new WindingCount();
    met.clear();
    if (askPlanes(q, planeNumber, count, k -> false)) {
      alongRay(q, w, upward, f -> {
        Face face = faces.face(f);
        if (rayOf[face.operand] != looks) {
          return;
        }
        if (face.plane != planeNumber) {
          addChange(face, q, w, upward, count);
        } else if (holds(face, q, w)) {
          count.add(face.operand, 0, face.up ? 1 : -1);
        }
      });
    }
    if (met.size() > 0) {
      throw new OnFace();
    }
    return count;
  }

  /**
   * Looks from a point on no face but those of some operands, which are left out.
   *
   * @param operand one whose surface is walked along; where it cannot matter, nothing found does
   * @param other another, or the same
   * @param passed those passed through there
   * @throws OnFace if it lies on a face of another operand and that is not hidden there
   */
  public WindingCount around(ExactPoint q, int operand, int other, int... passed) {
    int w = shortest(q);
    boolean upward = w >= 3;
    int axis = w % 3;
    WindingCount count = new WindingCount();
    met.clear();
    if (askPlanes(q, -1, count, k -> k == operand || k == other || isOneOf(k, passed))) {
      alongRay(q, axis, upward, f -> {
        Face face = faces.face(f);
        if (rayOf[face.operand] == looks) {
          addChange(face, q, axis, upward, count);
        }
      });
    }
    if (met.size() > 0) {
      IntPredicate mayHold = k -> k == operand || k == other || isOneOf(k, passed) || count.holds(k) || isMet(k);
      boolean settled = isSettled(operand, count, mayHold) || isSettled(other, count, mayHold);
      for (int i = 0; i < met.size(); i++) {
        if (!settled && !isSettled(met.get(i), count, mayHold)) {
          throw new OnFace();
        }
      }
    }
    return count;
  }

  private static boolean isOneOf(int operand, int... operands) {
    for (int one : operands) {
      if (one == operand) {
        return true;
      }
    }
    return false;
  }

  /** Whether an operand cannot matter at a point that is outside of all operands but some. */
  private boolean isSettled(int which, WindingCount count, IntPredicate mayHold) {
    return count.settles(hiding, which) || hiding.isSettledOutside(which, mayHold);
  }

  private boolean isMet(int operand) {
    for (int i = 0; i < met.size(); i++) {
      if (met.get(i) == operand) {
        return true;
      }
    }
    return false;
  }

  /**
   * Asks the operands near a point, some excepted, as far as their planes tell, and marks the others for a ray.
   *
   * @return whether there are others
   */
  private boolean askPlanes(ExactPoint q, int planeNumber, WindingCount count, IntPredicate except) {
    boolean[] others = {false};
    looks++;
    convex.tree().forEachOverlap(q.grid(0) - 1, q.grid(1) - 1, q.grid(2) - 1, q.grid(0) + 1, q.grid(1) + 1, q.grid(2) + 1,
        k -> {
          if (except.test(k)) {
            return;
          }
          if (!convex.isConvex(k)) {
            int clear = convex.isNearlyConvex(k) ? convex.walls(k).clearSide(q) : 0;
            if (clear == 0 && convex.isNear(k, q)) {
              rayOf[k] = looks;
              others[0] = true;
            } else if (clear < 0) {
              count.add(k, 1, 1);
            }
            return;
          }
          int side = convex.side(k, q, planeNumber);
          if (side == 0) {
            met.add(k);
          } else if (side < 0) {
            int on = planeNumber < 0 ? 0 : convex.lookOf(k, planeNumber);
            count.add(k, on > 0 ? 0 : 1, on < 0 ? 0 : 1);
          }
        });
    return others[0];
  }

  /** Adds what its operand's winding number owes to a face that the ray from a point meets. */
  private void addChange(Face face, ExactPoint q, int axis, boolean upward, WindingCount count) {
    Plane plane = faces.plane(face.plane);
    long slope = plane.normal(axis);
    if (slope == 0 || !holds(face, q, axis)) {
      return;
    }
    int side = q.side(plane);
    if (side == 0) {
      met.add(face.operand);
      return;
    }
    boolean ahead = side < 0 == slope > 0 == upward;
    if (ahead) {
      int change = slope > 0 == face.up == upward ? 1 : -1;
      count.add(face.operand, change, change);
    }
  }

  /** Gives each face whose box a ray from a point along an axis may meet. */
  private void alongRay(ExactPoint q, int axis, boolean upward, IntConsumer consumer) {
    long[] low = new long[3];
    long[] high = new long[3];
    for (int k = 0; k < 3; k++) {
      low[k] = q.grid(k) - 1;
      high[k] = q.grid(k) + 1;
    }
    if (upward) {
      high[axis] = Long.MAX_VALUE;
    } else {
      low[axis] = Long.MIN_VALUE;
    }
    tree.forEachOverlap(low[0], low[1], low[2], high[0], high[1], high[2], consumer);
  }

  /** The way out that is shortest, where the fewest faces may be expected: 0 to 2 down an axis, 3 to 5 up it. */
  private int shortest(ExactPoint q) {
    int best = 0;
    long least = Long.MAX_VALUE;
    for (int way = 0; way < 6; way++) {
      long length = way < 3 ? q.grid(way) - faces.bounds()[way] : faces.bounds()[way] - q.grid(way - 3);
      if (length < least) {
        least = length;
        best = way;
      }
    }
    return best;
  }

  /** Whether the shadow of a face along an axis holds that of a point. */
  private boolean holds(Face face, ExactPoint q, int w) {
    int u = (w + 1) % 3;
    int v = (w + 2) % 3;
    boolean in = false;
    double qu = q.rough(u);
    for (int e = 0; e < face.edges(); e++) {
      int a = face.from[e];
      int b = face.to[e];
      long au = faces.coordinate(a, u);
      long bu = faces.coordinate(b, u);
      if (Math.min(au, bu) > qu + 1 || Math.max(au, bu) < qu - 1) {
        continue;
      }
      ExactPoint pa = faces.point(a);
      ExactPoint pb = faces.point(b);
      boolean leftA = ExactPoint.compare(pa, q, u) <= 0;
      if (leftA != ExactPoint.compare(pb, q, u) <= 0) {
        int turn = ExactPoint.turn(pa, pb, q, u, v);
        if (turn == 0) {
          turn = Integer.compare(faces.coordinate(a, v), faces.coordinate(b, v));
          if (turn == 0) {
            turn = Long.signum(bu - au);
          }
        }
        in ^= turn > 0 == leftA;
      }
    }
    return in;
  }
}
