package outrigger.shapes.mesh;

import java.util.List;

/**
 * Axes that an expression's operands set themselves, so that the same solid turned by right angles or mirrored is
 * evaluated in the very same coordinates.
 *
 * <p>Rounding halves upward and choosing between equal diagonals would otherwise differ from one position to the next.
 * The axes are put in the order of the operands' second moments along them and each is turned the way its third moment
 * is positive. Moments are taken about the middle of the bounds and so do not change with a move; they are sums, and so
 * do not change with the order. They wrap round at 64 bits, which spoils none of this. Where a moment is 0 or two are
 * equal the solid most often looks the same both ways; if not, the choice is left to chance and no worse than none.
 */
final class Frame {
  /** Tells operands that are cut away from others; any number but 1 would do. */
  private static final long CUT_AWAY = -3;

  private final int[] axis = {0, 1, 2};
  private final int[] sign = {1, 1, 1};

  private Frame() {}

  /**
   * The frame of some operands.
   *
   * @param cutAway of each operand whether an odd number of cuts takes it away
   */
  static Frame of(List<Polyhedron> operands, List<Boolean> cutAway) {
    Frame frame = new Frame();
    long[] middle = twiceMiddle(operands);
    long[] second = new long[3];
    long[] third = new long[3];
    for (int i = 0; i < operands.size(); i++) {
      int[] xyz = operands.get(i).xyz();
      long weight = cutAway.get(i) ? CUT_AWAY : 1;
      for (int j = 0; j < xyz.length; j++) {
        long d = 2L * xyz[j] - middle[j % 3];
        second[j % 3] += weight * d * d;
        third[j % 3] += weight * d * d * d;
      }
    }
    for (int k = 0; k < 3; k++) {
      frame.sign[k] = third[k] < 0 ? -1 : 1;
    }
    frame.order(second);
    return frame;
  }

  private static long[] twiceMiddle(List<Polyhedron> operands) {
    long[] least = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE};
    long[] most = {Long.MIN_VALUE, Long.MIN_VALUE, Long.MIN_VALUE};
    for (Polyhedron p : operands) {
      for (int j = 0; j < p.xyz().length; j++) {
        least[j % 3] = Math.min(least[j % 3], p.xyz()[j]);
        most[j % 3] = Math.max(most[j % 3], p.xyz()[j]);
      }
    }
    return new long[] {least[0] + most[0], least[1] + most[1], least[2] + most[2]};
  }

  private void order(long[] second) {
    for (int i = 0; i < 3; i++) {
      for (int j = i + 1; j < 3; j++) {
        if (second[axis[j]] < second[axis[i]]) {
          int swapped = axis[i];
          axis[i] = axis[j];
          axis[j] = swapped;
        }
      }
    }
  }

  private boolean isGiven() {
    return axis[0] == 0 && axis[1] == 1 && sign[0] > 0 && sign[1] > 0 && sign[2] > 0;
  }

  private boolean mirrors() {
    boolean even = axis[0] == 0 && axis[1] == 1 || axis[0] == 1 && axis[1] == 2 || axis[0] == 2 && axis[1] == 0;
    return even != sign[0] * sign[1] * sign[2] > 0;
  }

  /** An operand in this frame. */
  Polyhedron in(Polyhedron p) {
    if (isGiven()) {
      return p;
    }
    int[] xyz = new int[p.xyz().length];
    for (int i = 0; i < xyz.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + k] = sign[axis[k]] * p.xyz()[i + axis[k]];
      }
    }
    return new Polyhedron(xyz, mirrors() ? LeafBuilder.reversed(p.faces()) : p.faces());
  }

  /** A mesh made in this frame, brought back to the given axes. */
  Mesh out(Mesh mesh) {
    if (isGiven()) {
      return mesh;
    }
    int[] from = mesh.xyz();
    int[] xyz = new int[from.length];
    for (int i = 0; i < xyz.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + axis[k]] = sign[axis[k]] * from[i + k];
      }
    }
    int[] corners = mesh.corners();
    for (int i = 0; i < corners.length && mirrors(); i += 3) {
      int c = corners[i + 1];
      corners[i + 1] = corners[i + 2];
      corners[i + 2] = c;
    }
    return Mesh.of(xyz, corners);
  }
}
