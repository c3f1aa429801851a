package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.frame.TouchException;
import outrigger.shapes.num.Grid;

class SpreadingTest {
  private static final int SIDE = 6;

  /** A pyramid upside down on the cube whose tip was some steps above its top before it was rounded. */
  private static Rounded tip(Mesh rounded, double above) {
    int top = 2 * Grid.PER_MM;
    int tip = IntStream.range(0, rounded.vertexCount()).filter(v -> rounded.x(v) == Grid.PER_MM / 4).findFirst()
        .orElseThrow();
    boolean[] moved = new boolean[rounded.vertexCount()];
    moved[tip] = true;
    double[] from = new double[rounded.xyz().length];
    from[3 * tip + 2] = top - rounded.z(tip) + above;
    return OnCube.rounded(rounded.xyz(), rounded.corners(), moved, from);
  }

  private static Proof.Verdict judged(int[] xyz, Rounded facets) {
    return Proof.judge(Mesh.of(xyz, facets.corners()));
  }

  private static int[] spread(Rounded facets) {
    return Spreading.of(facets, Frame.GIVEN);
  }

  /** Spread, what was unsound becomes sound, no corner so many steps from where it was put. */
  private static void assertSpread(Rounded given, double steps) {
    assertTrue(judged(given.xyz(), given).proven().isEmpty());
    int[] xyz = spread(given);
    assertTrue(judged(xyz, given).proven().isPresent(), judged(xyz, given).findings().toString());
    for (int i = 0; i < xyz.length; i++) {
      assertEquals(given.xyz()[i], xyz[i], steps);
    }
  }

  @Test
  void of_tipLessThanAStepAboveAFace_keepsItAbove() {
    for (double above : new double[] {0.4, 0.01, 1e-4, 1e-9, 0x1p-100}) {
      assertSpread(tip(OnCube.pyramid(0), above), 3);
    }
  }

  @Test
  void of_tipOnAFace_isATouch() {
    assertThrows(TouchException.class, () -> spread(tip(OnCube.pyramid(0), 0)));
  }

  /** What met before it was rounded cannot be spread. */
  @Test
  void of_tipDeepInAFace_doesNotSettle() {
    assertThrows(UnsettledException.class, () -> spread(tip(OnCube.pyramid(200), -200)));
  }

  @Test
  void of_soundMesh_leavesIt() {
    int[] xyz = OnCube.CUBE.xyz();
    assertArrayEquals(xyz, spread(OnCube.rounded(xyz, OnCube.CUBE.corners(), new boolean[xyz.length / 3], new double[0])));
  }

  /** A tilted skin half a millimetre wide and a fraction of a step thick, its sides cut up unlike. */
  private static Rounded skin(double thickness, int[] order) {
    Random random = new Random(3);
    int n = SIDE + 1;
    double[] p = new double[6 * n * n];
    for (int v = 0; v < 2 * n * n; v++) {
      int i = v % (n * n) / n;
      int j = v % n;
      boolean isRim = i == 0 || i == SIDE || j == 0 || j == SIDE;
      double x = 1000.0 * i + (isRim ? 0 : 600 * random.nextDouble() - 300);
      double y = 1000.0 * j + (isRim ? 0 : 600 * random.nextDouble() - 300);
      double z = 0.31 * x + 0.17 * y + 0.013 + (v < n * n ? 0 : thickness);
      System.arraycopy(new double[] {x, y, z}, 0, p, 3 * order[v], 3);
    }
    int[] c = new int[6 * (2 * SIDE * SIDE + 4 * SIDE)];
    int at = 0;
    for (int i = 0; i < SIDE; i++) {
      for (int j = 0; j < SIDE; j++) {
        int a = i * n + j;
        int top = n * n;
        at = add(c, at, order, a, a + 1, a + n + 1, a, a + n + 1, a + n);
        at = add(c, at, order, top + a, top + a + n, top + a + 1, top + a + n, top + a + n + 1, top + a + 1);
      }
      int[][] rims = {{i * n, i * n + n}, {(i + 1) * n + SIDE, i * n + SIDE}, {i + 1, i}, {SIDE * n + i, SIDE * n + i + 1}};
      for (int[] rim : rims) {
        int u = rim[0] + n * n;
        int w = rim[1] + n * n;
        at = add(c, at, order, rim[0], rim[1], w, rim[0], w, u);
      }
    }
    int[] xyz = Arrays.stream(p).mapToInt(x -> (int) Math.floor(x + 0.5)).toArray();
    boolean[] moved = new boolean[2 * n * n];
    Arrays.fill(moved, true);
    return OnCube.rounded(xyz, c, moved, IntStream.range(0, p.length).mapToDouble(i -> p[i] - xyz[i]).toArray());
  }

  private static int add(int[] corners, int at, int[] order, int... more) {
    for (int i = 0; i < more.length; i++) {
      corners[at + i] = order[more[i]];
    }
    return at + more.length;
  }

  @Test
  void of_skinThinnerThanTheGrid_makesItThicker() {
    int[] order = IntStream.range(0, 2 * (SIDE + 1) * (SIDE + 1)).toArray();
    for (double thickness : new double[] {0.3, 0.1, 0.01}) {
      assertSpread(skin(thickness, order), 6);
    }
  }

  /** Places depend neither on the numbers of vertices nor on the order of facets. */
  @Test
  void of_verticesNumberedOtherwise_arePutAlike() {
    int[] order = IntStream.range(0, 2 * (SIDE + 1) * (SIDE + 1)).toArray();
    int[] expected = spread(skin(0.3, order));
    int[] back = IntStream.range(0, order.length).map(v -> order.length - 1 - v).toArray();
    int[] actual = spread(skin(0.3, back));
    for (int v = 0; v < order.length; v++) {
      assertArrayEquals(Arrays.copyOfRange(expected, 3 * v, 3 * v + 3),
          Arrays.copyOfRange(actual, 3 * back[v], 3 * back[v] + 3));
    }
  }
}
