package outrigger.shapes.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.Mesh;

class HullTest {
  private static final long SEED = 20240611;

  @Test
  void of_pointsOfEvenAndUnevenGrids_holdsAllAndCloses() {
    Random random = new Random(SEED);
    for (int round = 0; round < 400; round++) {
      int points = 3 * (3 + random.nextInt(20));
      int size = round % 2 == 0 ? 5 : 1 << 20;
      int[] xyz = random.ints(3L * points, 0, size).toArray();
      // four that lie in no plane
      System.arraycopy(new int[] {0, 0, 0, size, 0, 0, 0, size, 0, 0, 0, size}, 0, xyz, 3 * random.nextInt(points - 4), 12);
      Mesh mesh = Mesh.of(xyz, numbers(points));
      check("seed " + SEED + " round " + round, mesh.xyz(), Hull.of(mesh, numbers(mesh.vertexCount())));
    }
  }

  private static int[] numbers(int count) {
    return IntStream.range(0, count).toArray();
  }

  private static void check(String where, int[] xyz, List<int[]> hull) {
    Set<List<Integer>> edges = new HashSet<>();
    for (int[] t : hull) {
      for (int v = 0; v < xyz.length / 3; v++) {
        assertTrue(Sign.side(xyz, t[0], t[1], t[2], v) <= 0, where + ": a point lies outside");
      }
      for (int k = 0; k < 3; k++) {
        assertTrue(edges.add(List.of(t[k], t[(k + 1) % 3])), where + ": an edge comes twice");
      }
    }
    edges.forEach(edge -> assertTrue(edges.contains(List.of(edge.get(1), edge.get(0))), where + ": an edge is open"));
    long corners = edges.stream().map(edge -> edge.get(0)).distinct().count();
    assertEquals(2, corners - edges.size() / 2 + hull.size(), where);
  }
}
