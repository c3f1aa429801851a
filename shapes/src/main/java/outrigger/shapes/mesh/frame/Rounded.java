package outrigger.shapes.mesh.frame;

import java.math.BigInteger;

/**
 * Facets on the grid, not yet welded.
 *
 * <p>Working data: the arrays are shared, not copied.
 */
public final class Rounded {
  /** Bits after the point with which it is told where vertices were before they were rounded. */
  public static final int BITS = 200;

  private final int[] xyz;
  private final int[] corners;
  private final boolean[] moved;
  private final Exact before;

  /** Where vertices were before they were rounded. */
  public interface Exact {
    /** A coordinate of one along axis 0, 1 or 2, 2^-{@value #BITS} of a grid unit. */
    BigInteger of(int vertex, int axis);
  }

  /**
   * Facets from their parts.
   *
   * @param xyz x, y, z of each vertex in grid units
   * @param corners three vertex numbers a facet
   * @param moved of each vertex whether it was rounded
   * @param before asked only for vertices that were
   */
  public Rounded(int[] xyz, int[] corners, boolean[] moved, Exact before) {
    this.xyz = xyz;
    this.corners = corners;
    this.moved = moved;
    this.before = before;
  }

  /** The same where vertices are taken to have been where they are put. */
  public Rounded(int[] xyz, int[] corners, boolean[] moved) {
    this(xyz, corners, moved, (v, axis) -> fixed(xyz[3 * v + axis]));
  }

  /** A coordinate on the grid, 2^-{@value #BITS} of a unit. */
  public static BigInteger fixed(long place) {
    return BigInteger.valueOf(place).shiftLeft(BITS);
  }

  /** x, y, z of each vertex, grid units. */
  public int[] xyz() {
    return xyz;
  }

  /** Where a vertex was before it was rounded, along axis 0, 1 or 2, 2^-{@value #BITS} of a grid unit. */
  public BigInteger before(int vertex, int axis) {
    return moved[vertex] ? before.of(vertex, axis) : fixed(xyz[3 * vertex + axis]);
  }

  /** Three vertex numbers a facet. */
  public int[] corners() {
    return corners;
  }

  /** Of each vertex whether it was rounded. */
  public boolean[] moved() {
    return moved;
  }
}
