package outrigger.shapes.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FacetContactPropertyTest {
  private static final long SEED = 20240611;
  private static final int[][] TURNS = {{0, 1, 2}, {1, 2, 0}, {2, 0, 1}, {0, 2, 1}, {2, 1, 0}, {1, 0, 2}};

  @Test
  void improper_smallCoordinates_agreesWithFractions() {
    int[] seen = new int[2];
    for (int range : new int[] {2, 3, 4, 6}) {
      compare(new Random(SEED + range), range, 1, 15_000, seen);
    }
    assertTrue(seen[0] > 5_000 && seen[1] > 5_000, "both answers must occur often: " + Arrays.toString(seen));
  }

  @Test
  void improper_flatFacets_agreesWithFractions() {
    int[] seen = new int[2];
    Random random = new Random(SEED);
    for (int i = 0; i < 15_000; i++) {
      int[] p = random(random, 5, 1);
      int axis = random.nextInt(3);
      for (int v = 0; v < 6; v++) {
        p[3 * v + axis] = p[3 * v + (axis + 1) % 3] * (i % 3);
      }
      compare(p, seen, "flat case " + i + ", seed " + SEED);
    }
    assertTrue(seen[0] > 500 && seen[1] > 5_000, "both answers must occur often: " + Arrays.toString(seen));
  }

  /** Corners of the grid's cube and steps of one unit next to them: the largest products there are. */
  @Test
  void improper_largestCoordinates_agreesWithFractions() {
    int[] seen = new int[2];
    compare(new Random(SEED), 3, (1 << 24) - 1, 15_000, seen);
    Random random = new Random(SEED + 1);
    for (int i = 0; i < 15_000; i++) {
      int[] p = random(random, 3, (1 << 24) - 1);
      for (int k = 0; k < 18; k++) {
        p[k] += random.nextInt(3) - 1;
      }
      compare(p, seen, "large case " + i + ", seed " + (SEED + 1));
    }
    assertTrue(seen[0] > 5_000 && seen[1] > 5_000, "both answers must occur often: " + Arrays.toString(seen));
  }

  @Test
  void improper_nearlyFlatFolds_agreesWithFractions() {
    int[] seen = new int[2];
    Random random = new Random(SEED + 2);
    for (int i = 0; i < 15_000; i++) {
      int[] p = random(random, 1 << 24, 1);
      System.arraycopy(p, 0, p, 9, 3);
      System.arraycopy(p, 3, p, 12, i % 2 == 0 ? 3 : 0);
      for (int k = 0; k < 3; k++) {
        p[15 + k] = (p[k] + p[3 + k] + p[6 + k]) / 3 + random.nextInt(3) - 1;
      }
      compare(p, seen, "fold case " + i + ", seed " + (SEED + 2));
    }
  }

  private static void compare(Random random, int range, int scale, int cases, int[] seen) {
    for (int i = 0; i < cases; i++) {
      compare(random(random, range, scale), seen, "case " + i + ", range " + range + ", seed " + SEED);
    }
  }

  /** Six points in a cube of whole steps about the origin. */
  private static int[] random(Random random, int range, int scale) {
    int[] p = new int[18];
    for (int k = 0; k < 18; k++) {
      p[k] = (random.nextInt(range) - range / 2) * scale;
    }
    return p;
  }

  private static void compare(int[] p, int[] seen, String which) {
    if (!hasArea(p, 0) || !hasArea(p, 3)) {
      return;
    }
    boolean expected = RationalContact.improper(p, 0, 1, 2, 3, 4, 5);
    seen[expected ? 1 : 0]++;
    for (int[] t : TURNS) {
      String what = which + ": " + Arrays.toString(p);
      assertEquals(expected, FacetContact.improper(p, t[0], t[1], t[2], 3, 4, 5), what);
      assertEquals(expected, FacetContact.improper(p, 4, 5, 3, t[0], t[1], t[2]), what);
    }
  }

  private static boolean hasArea(int[] p, int v) {
    long ux = (long) p[3 * v + 3] - p[3 * v];
    long uy = (long) p[3 * v + 4] - p[3 * v + 1];
    long uz = (long) p[3 * v + 5] - p[3 * v + 2];
    long vx = (long) p[3 * v + 6] - p[3 * v];
    long vy = (long) p[3 * v + 7] - p[3 * v + 1];
    long vz = (long) p[3 * v + 8] - p[3 * v + 2];
    return uy * vz != uz * vy || uz * vx != ux * vz || ux * vy != uy * vx;
  }
}
