package outrigger.shapes.mesh.frame;

import java.util.List;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.Upright;

/**
 * Sums over the faces of operands by which their axes are told apart, about the middle of the bounds.
 *
 * <p>Of each face the sum of its corners is taken: corners alone would not tell which way a bent face was cut. The moments
 * do not change with a move, nor with the order of operands or faces. They wrap round at 64 bits, which spoils none of this.
 */
final class Moments {
  /** Tells operands that are cut away from others; any number but 1 would do. */
  private static final long CUT_AWAY = -3;

  private final long[] second = new long[3];
  private final long[] fourth = new long[3];
  private final long[] third = new long[3];
  private final long[] fifth = new long[3];
  /** Of one axis times the square of another, by both. */
  private final long[] cross = new long[9];
  private final long[] twiceMiddle;

  private Moments(long[] twiceMiddle) {
    this.twiceMiddle = twiceMiddle;
  }

  /**
   * The moments of some operands.
   *
   * @param cutAway of each operand whether an odd number of cuts takes it away
   */
  static Moments of(List<Polyhedron> operands, List<Boolean> cutAway) {
    Moments moments = new Moments(twiceMiddle(operands.stream().map(Polyhedron::xyz).toList()));
    for (int i = 0; i < operands.size(); i++) {
      for (int[][] loops : operands.get(i).faces()) {
        moments.addFace(operands.get(i).xyz(), loops, cutAway.get(i) ? CUT_AWAY : 1);
      }
    }
    return moments;
  }

  /** The moments of upright operands: the same as those of their polyhedra. */
  static Moments ofUprights(List<Upright> operands, List<Boolean> cutAway) {
    Moments moments = new Moments(twiceMiddle(operands.stream().map(u -> u.xyz).toList()));
    for (int i = 0; i < operands.size(); i++) {
      Upright upright = operands.get(i);
      for (int r = 0; r < upright.rings.length; r++) {
        moments.addRegion(upright, r, cutAway.get(i) ? CUT_AWAY : 1);
      }
    }
    return moments;
  }

  private void addRegion(Upright upright, int region, long weight) {
    long[][] caps = new long[2][3];
    long[] wall = new long[3];
    int[] xyz = upright.xyz;
    for (int r = 0; r < upright.rings[region].length; r++) {
      int end = upright.end(region, r);
      for (int e = upright.rings[region][r], last = end - 1; e < end; last = e, e++) {
        for (int k = 0; k < 3; k++) {
          long low = 2L * xyz[6 * e + k] - twiceMiddle[k];
          long high = 2L * xyz[6 * e + 3 + k] - twiceMiddle[k];
          caps[0][k] += low;
          caps[1][k] += high;
          wall[k] = low + high + 2L * xyz[6 * last + k] + 2L * xyz[6 * last + 3 + k] - 2 * twiceMiddle[k];
        }
        addSum(weight, wall[0], wall[1], wall[2]);
      }
    }
    addSum(weight, caps[0][0], caps[0][1], caps[0][2]);
    addSum(weight, caps[1][0], caps[1][1], caps[1][2]);
  }

  private static long[] twiceMiddle(List<int[]> operands) {
    long[] least = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE};
    long[] most = {Long.MIN_VALUE, Long.MIN_VALUE, Long.MIN_VALUE};
    for (int[] xyz : operands) {
      for (int j = 0; j < xyz.length; j++) {
        least[j % 3] = Math.min(least[j % 3], xyz[j]);
        most[j % 3] = Math.max(most[j % 3], xyz[j]);
      }
    }
    return new long[] {least[0] + most[0], least[1] + most[1], least[2] + most[2]};
  }

  private void addFace(int[] xyz, int[][] loops, long weight) {
    long x = 0;
    long y = 0;
    long z = 0;
    for (int[] loop : loops) {
      for (int v : loop) {
        x += 2L * xyz[3 * v] - twiceMiddle[0];
        y += 2L * xyz[3 * v + 1] - twiceMiddle[1];
        z += 2L * xyz[3 * v + 2] - twiceMiddle[2];
      }
    }
    addSum(weight, x, y, z);
  }

  private void addSum(long weight, long x, long y, long z) {
    add(weight, x, y, z, 0, 1, 2);
    add(weight, y, z, x, 1, 2, 0);
    add(weight, z, x, y, 2, 0, 1);
  }

  private void add(long weight, long a, long b, long c, int i, int j, int k) {
    long square = weight * a * a;
    second[i] += square;
    third[i] += square * a;
    fourth[i] += square * a * a;
    fifth[i] += square * a * a * a;
    cross[3 * j + i] += square * b;
    cross[3 * k + i] += square * c;
  }

  /** Twice the middle of the bounds of all. */
  long[] twiceMiddle() {
    return twiceMiddle;
  }

  /** Order of two axes; 0 where nothing here tells them apart. */
  int compare(int i, int j) {
    return second[i] != second[j] ? Long.compare(second[i], second[j]) : Long.compare(fourth[i], fourth[j]);
  }

  /**
   * The way that an axis goes by itself: the sign of the first odd moment that is not 0.
   *
   * @param first axis that comes first in the order of the other two
   * @param last the remaining axis
   * @return +1, -1, or 0 where all are 0
   */
  int way(int axis, int first, int last) {
    long odd = third[axis] != 0 ? third[axis] : cross[3 * axis + first] != 0 ? cross[3 * axis + first]
        : cross[3 * axis + last] != 0 ? cross[3 * axis + last] : fifth[axis];
    return Long.signum(odd);
  }
}
