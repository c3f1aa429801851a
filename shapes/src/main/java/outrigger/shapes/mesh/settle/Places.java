package outrigger.shapes.mesh.settle;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import outrigger.shapes.mesh.frame.Rounded;

/** Where vertices are, that may move from where they were before they were rounded. */
final class Places {
  private final Rounded given;
  private final boolean[] known;
  /** Exactly where vertices were, of those somebody asked for; three a vertex. */
  private final Map<Integer, BigInteger[]> exact = new HashMap<>();
  /** Where vertices were; of those nobody asked for yet nothing. */
  private final double[] before;
  /** How far they have moved since. */
  private final double[] by;
  private final double[] xyz;

  Places(Rounded given) {
    this.given = given;
    known = new boolean[given.moved().length];
    before = new double[given.xyz().length];
    by = new double[before.length];
    xyz = new double[before.length];
  }

  /** Has it known where a vertex is. */
  void know(int v) {
    if (!known[v]) {
      known[v] = true;
      for (int k = 0; k < 3; k++) {
        int put = given.xyz()[3 * v + k];
        double from = given.before(v, k).subtract(Rounded.fixed(put)).doubleValue();
        before[3 * v + k] = put + Math.scalb(from, -Rounded.BITS);
        xyz[3 * v + k] = before[3 * v + k];
      }
    }
  }

  /** A coordinate of a known vertex, grid units, within some 2^-29. */
  double at(int v, int axis) {
    return xyz[3 * v + axis];
  }

  /** The same exactly, 2^-{@link Rounded#BITS} of a grid unit. */
  BigInteger fixed(int v, int axis) {
    BigInteger was = exact.computeIfAbsent(v, this::exact)[axis];
    double moved = by[3 * v + axis];
    if (moved == 0) {
      return was;
    }
    // all 53 bits of it as a whole number
    int places = Math.getExponent(moved) - 52;
    return was.add(BigInteger.valueOf((long) Math.scalb(moved, -places)).shiftLeft(Rounded.BITS + places));
  }

  private BigInteger[] exact(int v) {
    BigInteger[] exact = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      exact[k] = given.before(v, k);
    }
    return exact;
  }

  /** Whether the boxes of the first few of four known vertices and of the others are within reach of each other. */
  boolean areNear(int[] vertices, int few, double reach) {
    for (int k = 0; k < 3; k++) {
      if (least(vertices, few, 4, k) - greatest(vertices, 0, few, k) > reach
          || least(vertices, 0, few, k) - greatest(vertices, few, 4, k) > reach) {
        return false;
      }
    }
    return true;
  }

  private double least(int[] vertices, int from, int to, int axis) {
    double least = xyz[3 * vertices[from] + axis];
    for (int i = from + 1; i < to; i++) {
      least = Math.min(least, xyz[3 * vertices[i] + axis]);
    }
    return least;
  }

  private double greatest(int[] vertices, int from, int to, int axis) {
    double greatest = xyz[3 * vertices[from] + axis];
    for (int i = from + 1; i < to; i++) {
      greatest = Math.max(greatest, xyz[3 * vertices[i] + axis]);
    }
    return greatest;
  }

  /** Moves a vertex along an axis. */
  void move(int v, int axis, double more) {
    by[3 * v + axis] += more;
    xyz[3 * v + axis] = before[3 * v + axis] + by[3 * v + axis];
  }

  /** Order of vertices by where they were. */
  int compare(int v, int w) {
    int rough = Arrays.compare(before, 3 * v, 3 * v + 3, before, 3 * w, 3 * w + 3);
    for (int k = 0; k < 3 && rough == 0; k++) {
      rough = exact.computeIfAbsent(v, this::exact)[k].compareTo(exact.computeIfAbsent(w, this::exact)[k]);
    }
    return rough;
  }

  /** Where a vertex is now, to the nearest grid point: where it was put before unless it has moved. */
  int rounded(int v, int axis) {
    return by[3 * v + axis] == 0 ? given.xyz()[3 * v + axis] : (int) Math.floor(xyz[3 * v + axis] + 0.5);
  }
}
