package outrigger.shapes.mesh.planar;

import java.util.Arrays;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.leaf.Upright;

/**
 * A closed loop in the plane across the axis, counter-clockwise from its least corner, and the operands whose outline it is.
 *
 * <p>Stepping into it changes the winding number of each of these: by 1 where it is an outer ring, by -1 where it is that
 * of a hole.
 */
final class Rim {
  /** First coordinate of each corner, grid units. */
  final int[] u;
  /** Second coordinate of each corner. */
  final int[] v;
  private final int hash;
  final int leastU;
  final int leastV;
  final int mostU;
  final int mostV;
  private int[] operands = new int[1];
  private int[] changes = new int[1];
  private int count;

  private Rim(int[] u, int[] v) {
    this.u = u;
    this.v = v;
    int[] box = {u[0], v[0], u[0], v[0]};
    int h = 0;
    for (int i = 0; i < u.length; i++) {
      box[1] = Math.min(box[1], v[i]);
      box[2] = Math.max(box[2], u[i]);
      box[3] = Math.max(box[3], v[i]);
      h = 31 * h + u[i] * 0x9E3779B9 + v[i];
    }
    leastU = box[0];
    leastV = box[1];
    mostU = box[2];
    mostV = box[3];
    hash = h;
  }

  /**
   * The rim that a ring of an operand makes.
   *
   * @param from the ring's first edge along the axis
   * @param to the edge after its last
   */
  static Rim of(Upright operand, int from, int to) {
    int axis = operand.axis();
    int atU = (axis + 1) % 3;
    int atV = (axis + 2) % 3;
    int[] xyz = operand.xyz;
    int n = to - from;
    int least = from;
    for (int e = from + 1; e < to; e++) {
      int du = Integer.compare(xyz[6 * e + atU], xyz[6 * least + atU]);
      least = du < 0 || du == 0 && xyz[6 * e + atV] < xyz[6 * least + atV] ? e : least;
    }
    int[] u = new int[n];
    int[] v = new int[n];
    int way = isCounterClockwise(xyz, from, to, atU, atV) ? 1 : n - 1;
    int e = least - from;
    for (int i = 0; i < n; i++) {
      u[i] = xyz[6 * (from + e) + atU];
      v[i] = xyz[6 * (from + e) + atV];
      e += way;
      e = e < n ? e : e - n;
    }
    return new Rim(u, v);
  }

  /** By its area, below 2^52 for a loop that does not cross itself, so that sums that wrap round come right. */
  private static boolean isCounterClockwise(int[] xyz, int from, int to, int atU, int atV) {
    long area = 0;
    int last = 6 * (to - 1);
    for (int o = 6 * from; o < 6 * to; last = o, o += 6) {
      area += (long) xyz[last + atU] * xyz[o + atV] - (long) xyz[last + atV] * xyz[o + atU];
    }
    return area > 0;
  }

  int size() {
    return u.length;
  }

  /** Corner after one. */
  int next(int corner) {
    return corner + 1 < u.length ? corner + 1 : 0;
  }

  /** Makes it an outline of one more operand. */
  void add(int operand, int change) {
    if (count == operands.length) {
      operands = Arrays.copyOf(operands, 2 * count);
      changes = Arrays.copyOf(changes, 2 * count);
    }
    operands[count] = operand;
    changes[count++] = change;
  }

  /** How many outlines it is. */
  int count() {
    return count;
  }

  int operand(int i) {
    return operands[i];
  }

  int change(int i) {
    return changes[i];
  }

  boolean boxMeets(Rim other) {
    return leastU <= other.mostU && mostU >= other.leastU && leastV <= other.mostV && mostV >= other.leastV;
  }

  boolean boxHolds(Rim other) {
    return leastU <= other.leastU && mostU >= other.mostU && leastV <= other.leastV && mostV >= other.mostV;
  }

  /** Whether a point that is not on it lies inside. */
  boolean holds(int pu, int pv) {
    boolean in = false;
    int j = u.length - 1;
    for (int i = 0; i < u.length; j = i, i++) {
      if (v[i] > pv != v[j] > pv) {
        boolean up = v[i] > v[j];
        in ^= Sign.turn(u[j], v[j], u[i], v[i], pu, pv) > 0 == up;
      }
    }
    return in;
  }

  /** Whether it bends to the left at every corner, and goes round once. */
  boolean isConvex() {
    int n = u.length;
    int rounds = 0;
    for (int i = 0; i < n; i++) {
      int j = next(i);
      int k = next(j);
      if (Sign.turn(u[i], v[i], u[j], v[j], u[k], v[k]) <= 0) {
        return false;
      }
      rounds += !isUpward(i, j) && isUpward(j, k) ? 1 : 0;
    }
    return rounds == 1;
  }

  /** Whether at any corner the next edge lies in the line of the one before. */
  boolean goesStraightOn() {
    for (int i = 0; i < u.length; i++) {
      int j = next(i);
      int k = next(j);
      if (Sign.turn(u[i], v[i], u[j], v[j], u[k], v[k]) == 0) {
        return true;
      }
    }
    return false;
  }

  /** One half of all directions. */
  private boolean isUpward(int i, int j) {
    return v[j] > v[i] || v[j] == v[i] && u[j] > u[i];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rim r && hash == r.hash && Arrays.equals(u, r.u) && Arrays.equals(v, r.v);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
