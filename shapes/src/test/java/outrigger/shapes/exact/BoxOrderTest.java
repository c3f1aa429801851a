package outrigger.shapes.exact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Workers;

class BoxOrderTest {
  private static final long SEED = 17;

  /** Few and many; spread out, in a small range where most places are shared, or nearly all in one place. */
  @Test
  void keys_anyNumberOfThreads_riseAndNameEachBoxOnce() {
    for (int n : new int[] {0, 1, 100, 5_000, 32_768, 70_000}) {
      for (int range : new int[] {1, 10, 1 << 20}) {
        int[] boxes = points(n, range);
        String what = n + " boxes in " + range + ", seed " + SEED;
        long[] one = BoxOrder.keys(boxes);
        BitSet seen = new BitSet();
        for (int i = 0; i < n; i++) {
          assertTrue(i == 0 || one[i] > one[i - 1], what);
          seen.set(BoxOrder.number(one[i], n));
        }
        assertEquals(n, seen.cardinality(), what);
        for (int threads = 2; threads <= 3; threads++) {
          assertArrayEquals(one, BoxOrder.keys(boxes, Workers.of(threads)), what + ", " + threads + " threads");
        }
      }
    }
  }

  @Test
  void boxTree_manyBoxes_sameAnswersWithAnyNumberOfThreads() {
    int[] boxes = points(70_000, 2_000);
    List<Integer> one = near(BoxTree.of(boxes));
    assertEquals(one.stream().sorted().toList(), bruteNear(boxes));
    for (int threads = 2; threads <= 3; threads++) {
      assertEquals(one, near(BoxTree.of(boxes, Workers.of(threads))), threads + " threads");
    }
  }

  private static List<Integer> near(BoxTree tree) {
    List<Integer> found = new ArrayList<>();
    tree.forEachOverlap(300, 300, 300, 900, 900, 900, found::add);
    return found;
  }

  private static List<Integer> bruteNear(int[] boxes) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < boxes.length / 6; i++) {
      if (Arrays.stream(boxes, 6 * i, 6 * i + 3).allMatch(x -> x >= 300 && x <= 900)) {
        found.add(i);
      }
    }
    return found;
  }

  private static int[] points(int n, int range) {
    Random random = new Random(SEED);
    int[] boxes = new int[6 * n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 3; k++) {
        boxes[6 * i + k] = random.nextInt(range);
        boxes[6 * i + 3 + k] = boxes[6 * i + k];
      }
    }
    return boxes;
  }
}
