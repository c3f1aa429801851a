package outrigger.shapes.mesh.inside;

import java.util.function.IntConsumer;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.num.Shares;

/**
 * Which operands are convex and of few faces, so that the planes of their faces tell at once what is inside; and which are
 * so but for what rounding has bent ({@link Convexity}), so that the planes still tell of most places. Several threads may
 * ask: what one asked last decides where it begins, not what it finds.
 *
 * <p>What lies strictly behind all planes of a closed surface lies inside it, convex or not: any ray from there to a face
 * passes only outward. What lies beyond a plane moved out to the farthest corner lies outside.
 */
final class ConvexOperands {
  /**
   * Up to how many faces asking all planes is quicker than a ray. Not sharp: where hundreds of operands crowd, a ray costs
   * as much as some hundred planes.
   */
  private static final int FEW = 128;

  private final Faces faces;
  private final boolean[] convex;
  private final int[] boxes;
  private final BoxTree tree;
  /** Of each convex or nearly convex operand its walls; null of others. */
  private final Walls[] walls;
  /** Of each operand the face, counted from its first, that last was found to have a point outside. */
  private final int[] last;

  /** Looks at all operands; those whose faces do not know their neighbours count as not convex. */
  ConvexOperands(Faces faces) {
    this.faces = faces;
    int n = faces.operandCount();
    convex = new boolean[n];
    boxes = new int[6 * n];
    last = new int[n];
    walls = new Walls[n];
    boolean[] counted = new boolean[faces.vertexCount()];
    Shares.of(faces.workers(), n, k -> faces.firstFace(k + 1) - faces.firstFace(k)).each(() -> (from, to) -> {
      for (int k = from; k < to; k++) {
        boolean few = faces.firstFace(k + 1) - faces.firstFace(k) <= FEW;
        Convexity found = few ? Convexity.of(faces, k, counted) : Convexity.NONE;
        convex[k] = found == Convexity.WHOLLY;
        System.arraycopy(faces.operandBox(k), 0, boxes, 6 * k, 6);
        walls[k] = found == Convexity.NONE ? null : Walls.of(faces, k, convex[k]);
      }
      return to;
    });
    tree = BoxTree.of(boxes);
  }

  /** Whether an operand is convex. */
  boolean isConvex(int operand) {
    return convex[operand];
  }

  /** Whether it is convex but for what rounding has bent. */
  boolean isNearlyConvex(int operand) {
    return walls[operand] != null;
  }

  /** The walls of a nearly convex operand. */
  Walls walls(int operand) {
    return walls[operand];
  }

  /** Whether an edge of a face of a convex operand is seen to have all of another face of its plane outside of it. */
  boolean areApart(Face face, Face other) {
    for (int e = 0; convex[face.operand] && e < face.edges(); e++) {
      Face next = faces.face(face.across[e]);
      if (next.plane != face.plane && isBeyond(other, next)) {
        return true;
      }
    }
    return false;
  }

  private boolean isBeyond(Face face, Face wall) {
    for (int e = 0; e < face.edges(); e++) {
      int side = faces.side(face.from[e], faces.plane(wall.plane));
      if (side == 0 || side > 0 != wall.up) {
        return false;
      }
    }
    return true;
  }

  /** The boxes of all operands. */
  BoxTree tree() {
    return tree;
  }

  /** Gives each operand whose box meets that of one, this one included. */
  void forEachNear(int operand, IntConsumer consumer) {
    tree.forEachOverlap(boxes, operand, consumer);
  }

  /** Whether a box, its bounds found at a place among those of many, meets the box of an operand. */
  boolean boxMeets(int operand, int[] all, int at) {
    for (int k = 0; k < 3; k++) {
      if (all[at + k] > boxes[6 * operand + 3 + k] || all[at + 3 + k] < boxes[6 * operand + k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether a box, its bounds found at a place among those of many, lies inside the box of an operand. */
  boolean boxHolds(int operand, int[] all, int at) {
    for (int k = 0; k < 3; k++) {
      if (all[at + k] <= boxes[6 * operand + k] || all[at + 3 + k] >= boxes[6 * operand + 3 + k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point lies in the box of an operand or within a grid unit of it. */
  boolean isNear(int operand, ExactPoint p) {
    for (int k = 0; k < 3; k++) {
      long at = p.grid(k);
      if (at < boxes[6 * operand + k] - 1 || at > boxes[6 * operand + 3 + k] + 1) {
        return false;
      }
    }
    return true;
  }

  /**
   * Side of a point against a convex operand: -1 strictly inside, 0 on its surface, 1 outside; of a nearly convex one only
   * -1 is to be relied on.
   *
   * @param except number of a plane that is not asked, or -1
   */
  int side(int operand, ExactPoint p, int except) {
    int from = faces.firstFace(operand);
    int count = faces.firstFace(operand + 1) - from;
    Walls own = walls[operand];
    int side = -1;
    int i = last[operand];
    for (int n = 0; n < count; n++) {
      if (faces.planeOf(from + i) != except) {
        int clear = own.side(i, p);
        int s = clear != 0 ? clear : exactSide(from + i, p);
        if (s > 0) {
          last[operand] = i;
          return 1;
        }
        side = s == 0 ? 0 : side;
      }
      i = i + 1 == count ? 0 : i + 1;
    }
    return side;
  }

  private int exactSide(int face, ExactPoint p) {
    int exact = p.side(faces.plane(faces.planeOf(face)));
    return faces.face(face).up ? exact : -exact;
  }

  /** Which way a convex operand's face in a plane looks: 1 up the plane's normal, -1 down it, 0 where it has none there. */
  int lookOf(int operand, int plane) {
    for (int f = faces.firstFace(operand); f < faces.firstFace(operand + 1); f++) {
      if (faces.face(f).plane == plane) {
        return faces.face(f).up ? 1 : -1;
      }
    }
    return 0;
  }

  /** Whether a corner lies strictly behind all planes of a nearly convex operand. */
  boolean holds(int operand, int vertex) {
    for (int f = faces.firstFace(operand); f < faces.firstFace(operand + 1); f++) {
      Face face = faces.face(f);
      int s = faces.side(vertex, faces.plane(face.plane));
      if (s == 0 || s > 0 == face.up) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point lies strictly behind all planes of a nearly convex operand; ask whether it is near first. */
  boolean holds(int operand, ExactPoint p) {
    return side(operand, p, -1) < 0;
  }
}
