package outrigger.shapes.mesh.meet;

import java.util.List;
import outrigger.shapes.exact.ExactPoint;

/**
 * A piece of line in which two faces of different operands pass clean through each other, from piercing to piercing.
 *
 * <p>It runs along the cross product of the outward normals of {@code f} and {@code g}, so that seen from outside of f the
 * inside of g's operand lies to its left. Working data: see {@link CrossingFinder} for the later fields.
 */
public final class Stretch {
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
  void cross(int face, List<Crossing> found) {
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

  /** Need not be laid into the sheet of one of its faces. */
  void free(int face) {
    if (face == f) {
      freeOnF = true;
    } else {
      freeOnG = true;
    }
  }

  /** Whether the sheet of one of its faces, if it needs one, does without it. */
  boolean isFree(int face) {
    return face == f ? freeOnF : freeOnG;
  }

  int other(int face) {
    return face == f ? g : f;
  }
}
