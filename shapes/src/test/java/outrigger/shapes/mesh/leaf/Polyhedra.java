package outrigger.shapes.mesh.leaf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.Set;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.LongMap;

/** What any leaf's polyhedron must keep, and its volume by the divergence theorem. */
final class Polyhedra {
  private static final double CUBIC = Grid.STEP * Grid.STEP * Grid.STEP;

  private Polyhedra() {}

  /** Each directed edge once and its reverse once, every face flat and with area, all vertices on the grid. */
  static void assertClosedAndFlat(Polyhedron p) {
    Set<Long> edges = new HashSet<>();
    for (int[][] loops : p.faces()) {
      for (int[] loop : loops) {
        assertTrue(loop.length >= 3, "a loop of " + loop.length);
        for (int i = 0; i < loop.length; i++) {
          assertTrue(edges.add(LongMap.edge(loop[i], loop[(i + 1) % loop.length])), "an edge twice in one direction");
        }
      }
      assertFlat(p, loops);
    }
    for (long edge : edges) {
      assertTrue(edges.contains(LongMap.edge((int) edge, (int) (edge >> 32))), "an open edge");
    }
    for (int c : p.xyz()) {
      assertTrue(Math.abs(c) <= Grid.LIMIT, "beyond the grid: " + c);
    }
  }

  private static void assertFlat(Polyhedron p, int[][] loops) {
    int[] v = p.xyz();
    int a = 3 * loops[0][0];
    int b = 3 * loops[0][1];
    int c = -1;
    for (int k = 2; k < loops[0].length && c < 0; k++) {
      int d = 3 * loops[0][k];
      boolean line = Sign.turn(v[a], v[a + 1], v[b], v[b + 1], v[d], v[d + 1]) == 0
          && Sign.turn(v[a + 1], v[a + 2], v[b + 1], v[b + 2], v[d + 1], v[d + 2]) == 0
          && Sign.turn(v[a], v[a + 2], v[b], v[b + 2], v[d], v[d + 2]) == 0;
      c = line ? -1 : d;
    }
    assertTrue(c >= 0, "a face without area");
    for (int[] loop : loops) {
      for (int n : loop) {
        int d = 3 * n;
        assertEquals(0, Sign.side(v[a], v[a + 1], v[a + 2], v[b], v[b + 1], v[b + 2], v[c], v[c + 1], v[c + 2], v[d],
            v[d + 1], v[d + 2]), "a face that is not flat");
      }
    }
  }

  /** Volume in mm^3, summed exactly over fans of every loop. */
  static double volume(Polyhedron p) {
    BigInteger six = BigInteger.ZERO;
    for (int[][] loops : p.faces()) {
      for (int[] loop : loops) {
        for (int i = 1; i + 1 < loop.length; i++) {
          six = six.add(six(p.xyz(), 3 * loop[0], 3 * loop[i], 3 * loop[i + 1]));
        }
      }
    }
    return six.doubleValue() / 6 * CUBIC;
  }

  private static BigInteger six(int[] v, int a, int b, int c) {
    BigInteger sum = BigInteger.ZERO;
    for (int k = 0; k < 3; k++) {
      long minor = (long) v[b + (k + 1) % 3] * v[c + (k + 2) % 3] - (long) v[b + (k + 2) % 3] * v[c + (k + 1) % 3];
      sum = sum.add(BigInteger.valueOf(v[a + k]).multiply(BigInteger.valueOf(minor)));
    }
    return sum;
  }

  /** V - E + F less what holes in faces add: 2 for each shell, less 2 for each handle. */
  static int eulerNumber(Polyhedron p) {
    Set<Integer> vertices = new HashSet<>();
    int halfEdges = 0;
    int inner = 0;
    for (int[][] loops : p.faces()) {
      inner += loops.length - 1;
      for (int[] loop : loops) {
        halfEdges += loop.length;
        for (int n : loop) {
          vertices.add(n);
        }
      }
    }
    return vertices.size() - halfEdges / 2 + p.faces().size() - inner;
  }
}
