package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class NearPairsTest {
  private static final double REACH = 6;
  private static final int[] CORNERS = {0, 1, 2, 3, 4, 5};

  private final Random random = new Random(11);

  /** Two facets without a common corner, anywhere in a box. */
  private Places drawn() {
    double[] xyz = new double[18];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = 20 * random.nextDouble();
    }
    Places places = new Places(OnCube.rounded(new int[18], CORNERS, new boolean[] {true, true, true, true, true, true}, xyz));
    for (int v = 0; v < 6; v++) {
      places.know(v);
    }
    return places;
  }

  private static NearPairs pairs(Places places) {
    NearPairs pairs = new NearPairs(CORNERS, places, REACH, v -> true, v -> v / 3);
    pairs.add(0, 1);
    return pairs;
  }

  private static double least(NearPairs pairs) {
    double[] least = {REACH};
    pairs.measure();
    pairs.forEach(pair -> least[0] = Math.min(least[0], pair.distance));
    return least[0];
  }

  /** Corners that move as far as they may between two looks come no nearer than the pairs of the first look tell. */
  @Test
  void measure_afterCornersMoved_tellsWhatIsNearestThen() {
    int nearer = 0;
    for (int i = 0; i < 3000; i++) {
      Places places = drawn();
      NearPairs before = pairs(places);
      double first = least(before);
      for (int v = 0; v < 6; v++) {
        for (int k = 0; k < 3; k++) {
          places.move(v, k, 2 * random.nextDouble() - 1);
        }
      }
      double now = least(pairs(places));
      if (now < REACH - 2 * Math.sqrt(3)) {
        assertEquals(now, least(before));
        nearer += now < first ? 1 : 0;
      }
    }
    assertTrue(nearer > 300);
  }
}
