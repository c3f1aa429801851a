package outrigger.shapes.check;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class KeySortTest {
  @Test
  void sort_randomKeys_risingAndStable() {
    Random random = new Random(9);
    for (int bits = 0; bits < 63; bits++) {
      int n = random.nextInt(300);
      long mask = (1L << bits) - 1;
      long[] keys = random.longs(n).map(k -> k & mask).toArray();
      int[] numbers = IntStream.range(0, n).toArray();
      long[] before = keys.clone();
      int[] expected = IntStream.range(0, n).boxed().sorted(Comparator.comparingLong(i -> before[i]))
          .mapToInt(Integer::intValue).toArray();
      KeySort.sort(keys, numbers, n);
      assertArrayEquals(expected, numbers, bits + " bits, seed 9");
      assertArrayEquals(IntStream.of(expected).mapToLong(i -> before[i]).toArray(), keys);
    }
  }
}
