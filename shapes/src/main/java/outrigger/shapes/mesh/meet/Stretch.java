package outrigger.shapes.mesh.meet;

import java.util.List;
import outrigger.shapes.exact.ExactPoint;

/**
 * A piece of line in which two faces of different operands pass clean through each other, from piercing to piercing.
 *
 * <p>It runs along the cross product of the outward normals of {@code f} and {@code g}, so that seen from outside of f the
 * inside of g's operand lies to its left. Working data: {@link CrossingFinder} adds the crossings, {@link FreeLoops}
 * whether it is part of a free loop, and the walk along it that it is done.
 */
public final class Stretch {
  /** Farther apart, in grid units, than rounding can hide: a place in doubles is within 2^-24 of itself. */
  private static final double APART = 0x1p-20;

  /** Number among all stretches. */
  public final int number;
  /** One of the two faces. */
  public final int f;
  /** The other. */
  public final int g;
  /** Where it begins. */
  public final Piercing from;
  /** Where it ends. */
  public final Piercing to;
  /** Where faces of third operands cross it, in order, as found on one of its faces; null where that face did not tell. */
  private List<Crossing> onLower;
  private List<Crossing> onGreater;
  /** Whether it belongs to a {@link FreeLoops free loop} on either face. */
  private boolean freeOnF;
  private boolean freeOnG;
  /** Whether its part in the result has been said. */
  public boolean done;

  /**
   * A face of a third operand crosses a stretch.
   *
   * @param at where
   * @param operand the third operand
   * @param change what its winding number gains there on the way from {@code from} to {@code to}
   */
  public record Crossing(ExactPoint at, int operand, int change) {}

  Stretch(int number, int f, int g, Piercing from, Piercing to) {
    this.number = number;
    this.f = f;
    this.g = g;
    this.from = from;
    this.to = to;
  }

  /** Takes the crossings found on one of its faces. */
  void setCrossings(int face, List<Crossing> found) {
    if (face < other(face)) {
      onLower = found;
    } else {
      onGreater = found;
    }
  }

  /** Whether the crossings are known, by way of one of its two faces. */
  public boolean isKnown() {
    return onLower != null || onGreater != null;
  }

  /** Where faces of third operands cross it, in order; empty where that is not known. */
  public List<Crossing> crossings() {
    // both tell the same, but for what is hidden
    return onGreater != null ? onGreater : onLower != null ? onLower : List.of();
  }

  /** Says that the sheet of one of its faces does without it. */
  void setFree(int face) {
    if (face == f) {
      freeOnF = true;
    } else {
      freeOnG = true;
    }
  }

  /** Whether the sheet of one of its faces, if that has one, does without it. */
  boolean isFree(int face) {
    return face == f ? freeOnF : freeOnG;
  }

  /** The other one of its two faces. */
  int other(int face) {
    return face == f ? g : f;
  }

  /** Whether the boxes of this and another lie farther apart than rounding could hide. */
  boolean isApart(Stretch other) {
    for (int k = 0; k < 3; k++) {
      double sa = from.at.rough(k);
      double sb = to.at.rough(k);
      double ta = other.from.at.rough(k);
      double tb = other.to.at.rough(k);
      if (Math.max(sa, sb) < Math.min(ta, tb) - APART || Math.max(ta, tb) < Math.min(sa, sb) - APART) {
        return true;
      }
    }
    return false;
  }

  /** The box, with room to spare, of what of it lies between two shares of the way. */
  void bound(double start, double end, int[] boxes, int at) {
    for (int k = 0; k < 3; k++) {
      double first = from.at.rough(k);
      double way = to.at.rough(k) - first;
      double a = start == 0 ? from.at.grid(k) : first + start * way;
      double b = end == 1 ? to.at.grid(k) : first + end * way;
      boxes[at + k] = (int) Math.floor(Math.min(a, b)) - 1;
      boxes[at + 3 + k] = (int) Math.ceil(Math.max(a, b)) + 1;
    }
  }

  /** Whether it holds a point of its line, seen along an axis. */
  boolean holds(ExactPoint p, int axis) {
    return ExactPoint.compare(from.at, p, axis) * ExactPoint.compare(p, to.at, axis) >= 0;
  }

  /** Its lower end along an axis. */
  ExactPoint low(int axis) {
    return sooner(from.at, to.at, axis);
  }

  /** Its upper end along an axis. */
  ExactPoint high(int axis) {
    return later(from.at, to.at, axis);
  }

  /** The upper of two points along an axis; the first of equal ones. */
  static ExactPoint later(ExactPoint p, ExactPoint q, int axis) {
    return ExactPoint.compare(p, q, axis) >= 0 ? p : q;
  }

  /** The lower of two points along an axis; the first of equal ones. */
  static ExactPoint sooner(ExactPoint p, ExactPoint q, int axis) {
    return ExactPoint.compare(p, q, axis) <= 0 ? p : q;
  }
}
