package outrigger.shapes.num;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SharesTest {
  private static final long SEED = 11;

  @Test
  void each_anyWeights_runsCoverTheRowInOrder() {
    Random random = new Random(SEED);
    for (int count : new int[] {0, 1, 2, 31, 255, 256, 257, 1_000, 20_000}) {
      for (int heavy : new int[] {0, 1, 1_000_000}) {
        long[] weights = random.longs(count, 0, 3).map(w -> w == 2 ? w + heavy : w).toArray();
        for (int threads = 1; threads <= 3; threads++) {
          List<int[]> runs = Shares.of(Workers.of(threads), count, i -> weights[i])
              .each(() -> (from, to) -> new int[] {from, to});
          assertCover(runs, count, "count " + count + ", heavy " + heavy + ", threads " + threads + ", seed " + SEED);
        }
      }
    }
  }

  private static void assertCover(List<int[]> runs, int count, String what) {
    int at = 0;
    for (int[] run : runs) {
      assertEquals(at, run[0], what);
      assertTrue(run[1] > at || count == 0, what);
      at = run[1];
    }
    assertEquals(count, at, what);
  }

  @Test
  void each_alikeWeights_runsAlike() {
    List<Integer> sizes = new ArrayList<>(Shares.of(Workers.of(2), 64_000, i -> 1).each(() -> (from, to) -> to - from));
    assertTrue(sizes.stream().allMatch(size -> size <= 2_001), sizes.toString());
    assertTrue(sizes.size() <= 65, sizes.toString());
  }
}
