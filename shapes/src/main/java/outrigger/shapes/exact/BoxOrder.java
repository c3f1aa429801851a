package outrigger.shapes.exact;

import java.util.Arrays;
import java.util.List;
import outrigger.shapes.num.Workers;

/**
 * Order of boxes along a Morton curve through their centres, equal places by number.
 *
 * <p>One sort of longs: the place on the curve in the high bits, the box's number in the low ones. The cells of the
 * curve are cubes, as fine as the bits left over allow (2^14 along the longest side for a million boxes).
 */
public final class BoxOrder {
  /** From here on sorting by counting digits is the faster way; both give the same order. */
  private static final int MANY = 1 << 12;
  /** Bits of a digit: its counts, 16 kB, stay in the nearest cache. */
  private static final int DIGIT = 11;

  /** Boxes that are worth a thread. */
  private static final int AT_ONCE = 1 << 14;

  private BoxOrder() {}

  /**
   * The order; places on the curve are worked out by some threads.
   *
   * @param boxes least x, y, z and greatest x, y, z of each box
   * @return box numbers along the curve
   */
  static int[] of(int[] boxes, Workers workers) {
    long[] keys = keys(boxes, workers);
    int[] order = new int[keys.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = number(keys[i], order.length);
    }
    return order;
  }

  /**
   * The order as numbers that rise: the place of a box on the curve in the high bits, its {@link #number} in the low ones.
   */
  public static long[] keys(int[] boxes) {
    return keys(boxes, Workers.of(1));
  }

  /** The number of the box that one of so many keys stands for. */
  public static int number(long key, int count) {
    return (int) (key & (1L << numberBits(count)) - 1);
  }

  private static int numberBits(int count) {
    return 32 - Integer.numberOfLeadingZeros(count);
  }

  private static long[] keys(int[] boxes, Workers workers) {
    int n = boxes.length / 6;
    int numberBits = numberBits(n);
    int bits = Math.min(Morton.BITS, (63 - numberBits) / 3);
    long[] least = new long[3];
    int shift = Math.max(0, span(boxes, least) - bits);
    long[] keys = new long[n];
    workers.split(n, AT_ONCE, (from, to) -> {
      for (int i = from; i < to; i++) {
        long place = Morton.place((sum(boxes, i, 0) - least[0]) >> shift, (sum(boxes, i, 1) - least[1]) >> shift,
            (sum(boxes, i, 2) - least[2]) >> shift);
        keys[i] = place << numberBits | i;
      }
    });
    sort(keys, numberBits, numberBits + 3 * bits, workers);
    return keys;
  }

  /** Sorts keys that rise in their lowest bits already, by the bits from one up to before another. */
  private static void sort(long[] keys, int from, int to, Workers workers) {
    if (keys.length < MANY) {
      Arrays.sort(keys);
      return;
    }
    int parts = keys.length < 2 * AT_ONCE ? 1 : workers.threads();
    long[] source = keys;
    long[] target = new long[keys.length];
    for (int shift = from; shift < to; shift += DIGIT) {
      sort(source, target, shift, parts, workers);
      long[] swap = source;
      source = target;
      target = swap;
    }
    if (source != keys) {
      System.arraycopy(source, 0, keys, 0, keys.length);
    }
  }

  /** Sorts by one digit: each thread counts the digits in a part of the keys, and puts that part where it belongs. */
  private static void sort(long[] source, long[] target, int shift, int parts, Workers workers) {
    int[] ends = new int[parts + 1];
    Arrays.setAll(ends, p -> (int) ((long) source.length * p / parts));
    List<int[]> places = workers.each(parts, p -> count(source, ends[p], ends[p + 1], shift));
    int place = 0;
    for (int d = 0; d < 1 << DIGIT; d++) {
      for (int[] of : places) {
        int count = of[d];
        of[d] = place;
        place += count;
      }
    }
    workers.each(parts, p -> {
      put(source, ends[p], ends[p + 1], shift, places.get(p), target);
      return p;
    });
  }

  private static int[] count(long[] keys, int from, int to, int shift) {
    int[] counts = new int[1 << DIGIT];
    for (int i = from; i < to; i++) {
      counts[(int) (keys[i] >>> shift) & (1 << DIGIT) - 1]++;
    }
    return counts;
  }

  private static void put(long[] keys, int from, int to, int shift, int[] places, long[] target) {
    for (int i = from; i < to; i++) {
      target[places[(int) (keys[i] >>> shift) & (1 << DIGIT) - 1]++] = keys[i];
    }
  }

  /** Twice the centre. */
  private static long sum(int[] boxes, int i, int axis) {
    return (long) boxes[6 * i + axis] + boxes[6 * i + 3 + axis];
  }

  /** Sets the least doubled centres and returns how many bits the widest span of them takes. */
  private static int span(int[] boxes, long[] least) {
    long widest = 0;
    for (int axis = 0; axis < 3; axis++) {
      long min = Long.MAX_VALUE;
      long max = Long.MIN_VALUE;
      for (int i = 0; i < boxes.length / 6; i++) {
        long s = sum(boxes, i, axis);
        min = Math.min(min, s);
        max = Math.max(max, s);
      }
      least[axis] = min;
      widest = Math.max(widest, boxes.length == 0 ? 0 : max - min);
    }
    return 64 - Long.numberOfLeadingZeros(widest);
  }
}
