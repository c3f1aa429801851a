package outrigger.shapes.mesh.planar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.leaf.Upright;
import outrigger.shapes.num.IntList;

/**
 * The different rims of all operands, and how they lie to each other: apart, one within the other, or in contact.
 *
 * <p>Rims of which no two meet or cross part the plane by themselves, and nothing need be arranged.
 */
final class Rims {
  /** Up to how many pairs of rims or of edges are compared one by one; more are looked up in a tree. Any number would do. */
  private static final int FEW = 4096;

  private final List<Rim> rims = new ArrayList<>();
  /** Of each rim those that go round it. */
  private final List<IntList> around = new ArrayList<>();
  private boolean loose = true;
  private boolean meetThemselves;

  private Rims() {}

  /** The rims of operands that stand along one axis. */
  static Rims of(List<Upright> operands) {
    Rims all = new Rims();
    Map<Rim, Rim> known = new HashMap<>();
    for (int i = 0; i < operands.size(); i++) {
      Upright operand = operands.get(i);
      for (int r = 0; r < operand.rings.length; r++) {
        for (int k = 0; k < operand.rings[r].length; k++) {
          Rim rim = Rim.of(operand, operand.rings[r][k], operand.end(r, k));
          Rim first = known.putIfAbsent(rim, rim);
          if (first == null) {
            all.rims.add(rim);
            all.around.add(new IntList());
          }
          (first == null ? rim : first).add(i, k == 0 ? 1 : -1);
        }
      }
    }
    all.compare();
    return all;
  }

  int size() {
    return rims.size();
  }

  Rim rim(int i) {
    return rims.get(i);
  }

  /** The rims that go round one, where they are loose. */
  IntList around(int i) {
    return around.get(i);
  }

  /** Whether no two rims meet or cross, and none goes straight on at a corner. */
  boolean areLoose() {
    return loose;
  }

  /** Whether one of them meets itself. */
  boolean meetThemselves() {
    return meetThemselves;
  }

  /** Finds out how they lie to each other, as far as they are loose. */
  private void compare() {
    for (Rim rim : rims) {
      if (!rim.isConvex()) {
        loose &= !rim.goesStraightOn();
        meetThemselves |= meetsItself(rim);
      }
    }
    if (meetThemselves || !loose) {
      return;
    }
    int n = rims.size();
    if ((long) n * n <= FEW) {
      for (int i = 0; i < n && loose; i++) {
        for (int j = i + 1; j < n && loose; j++) {
          compare(i, j);
        }
      }
    } else {
      BoxTree.of(boxes()).selfPairs(this::compare);
    }
  }

  /** Compares two rims; whether all are loose so far. */
  private boolean compare(int i, int j) {
    Rim a = rims.get(i);
    Rim b = rims.get(j);
    if (a.boxMeets(b)) {
      if (meet(a, b)) {
        loose = false;
      } else if (a.boxHolds(b) && a.holds(b.u[0], b.v[0])) {
        around.get(j).add(i);
      } else if (b.boxHolds(a) && b.holds(a.u[0], a.v[0])) {
        around.get(i).add(j);
      }
    }
    return loose;
  }

  private int[] boxes() {
    int[] boxes = new int[6 * rims.size()];
    for (int i = 0; i < rims.size(); i++) {
      Rim rim = rims.get(i);
      set(boxes, i, rim.leastU, rim.leastV, rim.mostU, rim.mostV);
    }
    return boxes;
  }

  private static void set(int[] boxes, int i, int leastU, int leastV, int mostU, int mostV) {
    boxes[6 * i] = leastU;
    boxes[6 * i + 1] = leastV;
    boxes[6 * i + 3] = mostU;
    boxes[6 * i + 4] = mostV;
  }

  /** Whether two rims have a point in common. */
  private static boolean meet(Rim a, Rim b) {
    int[] nearA = near(a, b);
    int[] nearB = nearA.length == 0 ? nearA : near(b, a);
    if ((long) nearA.length * nearB.length > FEW) {
      return meetByTree(a, nearA, b, nearB);
    }
    for (int i : nearA) {
      for (int j : nearB) {
        if (meet(a, i, b, j)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean meetByTree(Rim a, int[] nearA, Rim b, int[] nearB) {
    BoxTree tree = BoxTree.inOrder(edgeBoxes(a, nearA));
    int[] boxes = edgeBoxes(b, nearB);
    boolean[] found = new boolean[1];
    for (int k = 0; k < nearB.length && !found[0]; k++) {
      int j = nearB[k];
      tree.forEachOverlap(boxes[6 * k], boxes[6 * k + 1], 0, boxes[6 * k + 3], boxes[6 * k + 4], 0,
          i -> found[0] = found[0] || meet(a, nearA[i], b, j));
    }
    return found[0];
  }

  /** Edges of a rim whose boxes meet another's box. */
  private static int[] near(Rim rim, Rim other) {
    IntList found = new IntList();
    for (int i = 0; i < rim.size(); i++) {
      int j = rim.next(i);
      if (Math.min(rim.u[i], rim.u[j]) <= other.mostU && Math.max(rim.u[i], rim.u[j]) >= other.leastU
          && Math.min(rim.v[i], rim.v[j]) <= other.mostV && Math.max(rim.v[i], rim.v[j]) >= other.leastV) {
        found.add(i);
      }
    }
    return found.toArray();
  }

  private static int[] edgeBoxes(Rim rim, int[] edges) {
    int[] boxes = new int[6 * edges.length];
    for (int k = 0; k < edges.length; k++) {
      int i = edges[k];
      int j = rim.next(i);
      set(boxes, k, Math.min(rim.u[i], rim.u[j]), Math.min(rim.v[i], rim.v[j]), Math.max(rim.u[i], rim.u[j]),
          Math.max(rim.v[i], rim.v[j]));
    }
    return boxes;
  }

  private static boolean meetsItself(Rim rim) {
    int[] all = new int[rim.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = i;
    }
    return !BoxTree.inOrder(edgeBoxes(rim, all)).selfPairs((i, j) -> {
      if (rim.next(i) == j || rim.next(j) == i) {
        return !goesBack(rim, rim.next(i) == j ? i : j);
      }
      return !meet(rim, i, rim, j);
    });
  }

  /** Whether the edge after one goes back over it. */
  private static boolean goesBack(Rim rim, int edge) {
    int j = rim.next(edge);
    int k = rim.next(j);
    return Sign.turn(rim.u[edge], rim.v[edge], rim.u[j], rim.v[j], rim.u[k], rim.v[k]) == 0
        && (long) (rim.u[j] - rim.u[edge]) * (rim.u[k] - rim.u[j])
            + (long) (rim.v[j] - rim.v[edge]) * (rim.v[k] - rim.v[j]) < 0;
  }

  /** Whether two edges, ends included, have a point in common. */
  private static boolean meet(Rim a, int i, Rim b, int k) {
    int j = a.next(i);
    int l = b.next(k);
    if (apart(a.u[i], a.u[j], b.u[k], b.u[l]) || apart(a.v[i], a.v[j], b.v[k], b.v[l])) {
      return false;
    }
    return Sign.turn(a.u[i], a.v[i], a.u[j], a.v[j], b.u[k], b.v[k])
        * Sign.turn(a.u[i], a.v[i], a.u[j], a.v[j], b.u[l], b.v[l]) <= 0
        && Sign.turn(b.u[k], b.v[k], b.u[l], b.v[l], a.u[i], a.v[i])
        * Sign.turn(b.u[k], b.v[k], b.u[l], b.v[l], a.u[j], a.v[j]) <= 0;
  }

  private static boolean apart(int a, int b, int c, int d) {
    return Math.max(a, b) < Math.min(c, d) || Math.max(c, d) < Math.min(a, b);
  }
}
