package outrigger.shapes.mesh.inside;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntPredicate;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.num.IntList;

/**
 * Finds what need not be looked at because it is hidden: strictly inside an operand that dominates it there, or outside of
 * one that does so there ({@link Dominance}). Where many operands overlap, most of their surfaces are.
 *
 * <p>What is hidden leaves no trace, so whoever carries winding numbers along finds them stale on coming out of an operand
 * that hides what is inside it, or into one that hides what is outside ({@link #hidesBehind}): there they must be taken
 * anew. Before that they may be stale without harm, for the operand that hides settles the expression. Only operands hide
 * that are convex or nearly so ({@link ConvexOperands}): to see that a straight thing lies in one its ends suffice, and to
 * see that it lies outside, a plane that both are beyond.
 *
 * <p>Several threads may ask: what one notes is only added to, and what it looks up comes out alike for all.
 */
public final class Hiding {
  /** Asks of something whether it lies strictly inside an operand, and whether outside of one. */
  private interface Test {
    boolean isInside(ConvexOperands operands, int operand);

    boolean isOutside(ConvexOperands operands, int operand);
  }

  /** Of what may lie anywhere. */
  private static final Test ANY = new Test() {
    @Override
    public boolean isInside(ConvexOperands operands, int operand) {
      return true;
    }

    @Override
    public boolean isOutside(ConvexOperands operands, int operand) {
      return true;
    }
  };

  private final Faces faces;
  private final int[] boxes;
  private final Dominance dominance;
  private final ConvexOperands convex;
  /** Of each operand whether something was found hidden inside it, and outside of it. */
  private final boolean[] hidesInside;
  private final boolean[] hidesOutside;
  /** Operands that may hide something outside of them. */
  private final int[] hidersOutside;
  /** Of each face the operands near it that may hide something inside them, its own left out; null until asked for. */
  private final AtomicReferenceArray<int[]> near;
  /** Of each operand the others that are near it and may hide something inside them; null until asked for. */
  private final AtomicReferenceArray<int[]> neighbours;
  /** Of each face whether all of it is hidden: 1 if so, -1 if not, 0 if not yet asked. */
  private final byte[] hidden;
  /** Whether anything may be hidden at all. */
  private final boolean possible;
  /** Whether anything was found hidden. */
  private boolean any;

  /**
   * For the operands of an expression.
   *
   * @param boxes the boxes of the faces
   * @param look whether to look at all; if not, nothing is hidden
   */
  public Hiding(Faces faces, int[] boxes, ExpressionTree tree, boolean look) {
    this.faces = faces;
    this.boxes = boxes;
    convex = new ConvexOperands(faces);
    dominance = new Dominance(tree);
    hidesInside = new boolean[faces.operandCount()];
    hidesOutside = new boolean[hidesInside.length];
    near = new AtomicReferenceArray<>(faces.faceCount());
    neighbours = new AtomicReferenceArray<>(hidesInside.length);
    hidden = new byte[faces.faceCount()];
    boolean may = false;
    IntList outside = new IntList();
    for (int k = 0; k < hidesInside.length; k++) {
      may |= mayHideInside(k);
      if (convex.isNearlyConvex(k) && dominance.dominatesAnyOutside(k)) {
        outside.add(k);
      }
    }
    hidersOutside = outside.toArray();
    possible = (may || hidersOutside.length > 0) && look;
  }

  /** The operands that may hide anything. */
  ConvexOperands convex() {
    return convex;
  }

  /** Whether two faces of one plane are seen to lie apart: all of one beyond an edge of the other, of a convex operand. */
  public boolean areApart(Face face, Face other) {
    return convex.areApart(face, other) || convex.areApart(other, face);
  }

  /** Whether an operand may hide something inside it. */
  private boolean mayHideInside(int operand) {
    return convex.isNearlyConvex(operand) && dominance.dominatesAnyInside(operand);
  }

  /** Whether anything was found hidden. */
  public boolean hidesAny() {
    return any;
  }

  /** Whether something was found hidden on the side of its surface from which an operand is left, or entered. */
  public boolean hidesBehind(int operand, boolean leaves) {
    return leaves ? hidesInside[operand] : hidesOutside[operand];
  }

  /** Whether a whole face is hidden. */
  public boolean isHidden(int f) {
    if (possible && hidden[f] == 0) {
      hidden[f] = (byte) (lookAt(f) ? 1 : -1);
    }
    return hidden[f] > 0;
  }

  private boolean lookAt(int f) {
    Face face = faces.face(f);
    for (int k : near(f)) {
      boolean in = convex.boxHolds(k, boxes, 6 * f) && dominance.dominatesInside(k, face.operand);
      for (int e = 0; in && e < face.edges(); e++) {
        in = convex.holds(k, face.from[e]);
      }
      if (in) {
        note(k, hidesInside);
        return true;
      }
    }
    for (int k : hidersOutside) {
      if (dominance.dominatesOutside(k, face.operand) && convex.walls(k).areBeyond(faces, face)) {
        note(k, hidesOutside);
        return true;
      }
    }
    return false;
  }

  private void note(int operand, boolean[] hides) {
    hides[operand] = true;
    any = true;
  }

  private int[] near(int f) {
    int[] known = near.getAcquire(f);
    if (known == null) {
      IntList found = new IntList();
      for (int k : neighbours(faces.face(f).operand)) {
        if (convex.boxMeets(k, boxes, 6 * f)) {
          found.add(k);
        }
      }
      known = found.toArray();
      near.setRelease(f, known);
    }
    return known;
  }

  /** The operands near one of two faces, whichever has fewer: what hides something of both is near both. */
  private int[] fewerNear(int f, int g) {
    int[] nearF = near(f);
    int[] nearG = near(g);
    return nearF.length < nearG.length ? nearF : nearG;
  }

  private int[] neighbours(int operand) {
    int[] known = neighbours.getAcquire(operand);
    if (known == null) {
      IntList found = new IntList();
      convex.forEachNear(operand, k -> {
        if (k != operand && mayHideInside(k)) {
          found.add(k);
        }
      });
      known = found.toArray();
      neighbours.setRelease(operand, known);
    }
    return known;
  }

  /** Whether a straight piece common to two faces is hidden, ends included, because one of their operands is dominated. */
  public boolean hides(int f, int g, ExactPoint from, ExactPoint to) {
    double[] ends = {from.rough(0), from.rough(1), from.rough(2), to.rough(0), to.rough(1), to.rough(2)};
    return isHidden(f, g, new Test() {
      @Override
      public boolean isInside(ConvexOperands operands, int k) {
        return operands.isNear(k, from) && operands.isNear(k, to) && operands.holds(k, from)
            && (from == to || operands.holds(k, to));
      }

      @Override
      public boolean isOutside(ConvexOperands operands, int k) {
        return operands.walls(k).areBeyond(ends, 1);
      }
    });
  }

  /** Whether doubles tell that a stretch common to two faces is hidden; if not, they may not suffice. */
  public boolean hidesClearly(int f, int g, RoughStretch stretch) {
    return isHidden(f, g, new Test() {
      @Override
      public boolean isInside(ConvexOperands operands, int k) {
        return stretch.isInside(operands.walls(k));
      }

      @Override
      public boolean isOutside(ConvexOperands operands, int k) {
        return stretch.isOutside(operands.walls(k));
      }
    });
  }

  /** What doubles tell to be hidden, inside of others, of a straight piece common to two faces. */
  public HiddenParts hiddenParts(int f, int g, ExactPoint from, ExactPoint to) {
    HiddenParts parts = new HiddenParts(this);
    int a = faces.face(f).operand;
    int b = faces.face(g).operand;
    double[] ends = {from.rough(0), from.rough(1), from.rough(2), to.rough(0), to.rough(1), to.rough(2)};
    if (!possible) {
      return parts;
    }
    for (int k : fewerNear(f, g)) {
      if (dominatesInside(k, a, b)) {
        convex.walls(k).addHeld(ends, RoughStretch.DOUBT, parts);
      }
    }
    return parts.order();
  }

  /** Notes that something was left out inside of an operand. */
  void noteInside(int operand) {
    note(operand, hidesInside);
  }

  /** Whether what two faces have in common passes a test of being hidden; if so, it notes by whom. */
  private boolean isHidden(int f, int g, Test test) {
    if (!possible) {
      return false;
    }
    int k = hider(f, g, test);
    if (k >= 0) {
      note(k, hidesInside);
      return true;
    }
    k = hiderOutside(f, g, test);
    if (k >= 0) {
      note(k, hidesOutside);
    }
    return k >= 0;
  }

  /** Whether anything near two faces may hide what they have in common. */
  public boolean mayHide(int f, int g) {
    return possible && (hider(f, g, ANY) >= 0 || hiderOutside(f, g, ANY) >= 0);
  }

  /** An operand near two faces that dominates one of theirs inside it, where a test says that something is; -1 if none. */
  private int hider(int f, int g, Test test) {
    int a = faces.face(f).operand;
    int b = faces.face(g).operand;
    for (int k : fewerNear(f, g)) {
      if (dominatesInside(k, a, b) && test.isInside(convex, k)) {
        return k;
      }
    }
    return -1;
  }

  /** The same of one that does so outside of it. */
  private int hiderOutside(int f, int g, Test test) {
    int a = faces.face(f).operand;
    int b = faces.face(g).operand;
    for (int k : hidersOutside) {
      if (k != a && k != b && (dominance.dominatesOutside(k, a) || dominance.dominatesOutside(k, b))
          && test.isOutside(convex, k)) {
        return k;
      }
    }
    return -1;
  }

  /** Whether an operand dominates one of two others, and is neither: on its own surface nothing is strictly inside. */
  private boolean dominatesInside(int k, int a, int b) {
    return k != a && k != b && (dominance.dominatesInside(k, a) || dominance.dominatesInside(k, b));
  }

  /** Whether an operand in which a point lies strictly inside keeps another one from mattering there. */
  boolean settles(int operand, int other) {
    return hidesInside[operand] && dominance.dominatesInside(operand, other);
  }

  /**
   * Whether some operand, outside of which a point lies, keeps another one from mattering there.
   *
   * @param mayHold operands that the point may be inside of
   */
  boolean isSettledOutside(int other, IntPredicate mayHold) {
    for (int k : hidersOutside) {
      if (hidesOutside[k] && dominance.dominatesOutside(k, other) && !mayHold.test(k)) {
        return true;
      }
    }
    return false;
  }
}
