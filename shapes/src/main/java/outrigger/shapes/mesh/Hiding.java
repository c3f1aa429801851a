package outrigger.shapes.mesh;

import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.Outline.IntList;

/**
 * Finds what need not be looked at because it is hidden: strictly inside an operand that dominates it ({@link Dominance}).
 * Where many operands overlap, most of their surfaces are.
 *
 * <p>What is hidden leaves no trace, so whoever carries winding numbers along finds them stale on coming out of an operand
 * that {@link #hidesAny hides} something: there they must be taken anew. Inside they may be stale without harm, for the
 * operand that hides settles the expression. Only {@link ConvexOperands} hide: to see that a straight thing lies in one,
 * its ends suffice.
 */
final class Hiding {
  private final Faces faces;
  private final int[] boxes;
  private final Dominance dominance;
  private final ConvexOperands convex;
  private final boolean[] hides;
  /** Of each face the operands near it that may hide something; null until asked for. */
  private final int[][] near;
  /** Of each face whether all of it is hidden: 1 if so, -1 if not, 0 if not yet asked. */
  private final byte[] hidden;
  private final boolean possible;
  private boolean any;

  /**
   * For the operands of an expression.
   *
   * @param boxes the boxes of the faces
   * @param look whether to look at all; if not, nothing is hidden
   */
  Hiding(Faces faces, int[] boxes, Membership.Tree tree, ConvexOperands convex, boolean look) {
    this.faces = faces;
    this.boxes = boxes;
    this.convex = convex;
    dominance = new Dominance(tree);
    hides = new boolean[faces.operandCount()];
    near = new int[faces.faceCount()][];
    hidden = new byte[faces.faceCount()];
    boolean may = false;
    for (int k = 0; k < hides.length; k++) {
      may |= mayHide(k);
    }
    possible = may && look;
  }

  private boolean mayHide(int operand) {
    return convex.isConvex(operand) && dominance.isAny(operand);
  }

  /** Whether anything was found hidden. */
  boolean hidesAny() {
    return any;
  }

  /** Whether something was found hidden in an operand. */
  boolean hidesAny(int operand) {
    return hides[operand];
  }

  /** Whether a whole face is hidden. */
  boolean isHidden(int f) {
    if (possible && hidden[f] == 0) {
      hidden[f] = (byte) (lookAt(f) ? 1 : -1);
    }
    return hidden[f] > 0;
  }

  private boolean lookAt(int f) {
    Face face = faces.face(f);
    for (int k : near(f)) {
      boolean in = convex.boxHolds(k, boxes, 6 * f) && dominance.over(k, face.operand);
      for (int e = 0; in && e < face.edges(); e++) {
        in = convex.holds(k, face.from[e]);
      }
      if (in) {
        note(k);
        return true;
      }
    }
    return false;
  }

  private void note(int operand) {
    hides[operand] = true;
    any = true;
  }

  private int[] near(int f) {
    if (near[f] == null) {
      IntList found = new IntList();
      convex.tree().forEachOverlap(boxes[6 * f], boxes[6 * f + 1], boxes[6 * f + 2], boxes[6 * f + 3], boxes[6 * f + 4],
          boxes[6 * f + 5], k -> {
            if (mayHide(k)) {
              found.add(k);
            }
          });
      near[f] = found.toArray();
    }
    return near[f];
  }

  /** Whether a straight piece common to two faces is hidden with its ends, because one of their operands is dominated. */
  boolean hides(int f, int g, ExactPoint from, ExactPoint to) {
    if (!possible) {
      return false;
    }
    int a = faces.face(f).operand;
    int b = faces.face(g).operand;
    for (int k : near(f).length < near(g).length ? near(f) : near(g)) {
      // on its own surface nothing is strictly inside
      if (k != a && k != b && convex.isNear(k, from) && convex.isNear(k, to)
          && (dominance.over(k, a) || dominance.over(k, b)) && convex.holds(k, from)
          && (from == to || convex.holds(k, to))) {
        note(k);
        return true;
      }
    }
    return false;
  }

  /** Whether an operand in which a point lies strictly inside keeps another one from mattering there. */
  boolean settles(int operand, int other) {
    return hides[operand] && dominance.over(operand, other);
  }
}
