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

  /** Boxes that are worth a thread; so many keys, and as many again to sort them, stay in a near cache. */
  private static final int AT_ONCE = 1 << 14;

  private BoxOrder() {}

  /**
   * The order as numbers that rise: the place of a box on the curve in the high bits, its {@link #number} in the low ones.
   *
   * @param boxes least x, y, z and greatest x, y, z of each box
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

  /** The same by some threads. */
  public static long[] keys(int[] boxes, Workers workers) {
    int n = boxes.length / 6;
    int numberBits = numberBits(n);
    int bits = Math.min(Morton.BITS, (63 - numberBits) / 3);
    long[] ends = ends(boxes, workers);
    int shift = Math.max(0, span(ends) - bits);
    long[] keys = new long[n];
    workers.split(n, AT_ONCE, (from, to) -> {
      for (int i = from; i < to; i++) {
        long place = Morton.place((sum(boxes, i, 0) - ends[0]) >> shift, (sum(boxes, i, 1) - ends[1]) >> shift,
            (sum(boxes, i, 2) - ends[2]) >> shift);
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
    } else if (keys.length < 2 * AT_ONCE) {
      sort(keys, new long[keys.length], keys, 0, keys.length, from, to);
    } else {
      sortRuns(keys, from, to, workers);
    }
  }

  /** Divides keys by their highest digit into runs that a near cache holds, and sorts each by itself. */
  private static void sortRuns(long[] keys, int from, int to, Workers workers) {
    int parts = workers.threads();
    int[] ends = new int[parts + 1];
    Arrays.setAll(ends, p -> (int) ((long) keys.length * p / parts));
    int shift = to - DIGIT;
    List<int[]> counts = workers.each(parts, p -> count(keys, ends[p], ends[p + 1], shift));
    int[] runOf = new int[1 << DIGIT];
    int[] starts = starts(counts, keys.length, runOf);
    int runs = starts.length - 1;
    int[][] places = places(counts, runOf, starts);
    long[] target = new long[keys.length];
    workers.each(parts, p -> {
      for (int i = ends[p]; i < ends[p + 1]; i++) {
        target[places[p][runOf[digit(keys[i], shift)]]++] = keys[i];
      }
      return p;
    });
    workers.each(runs, r -> {
      sort(target, keys, keys, starts[r], starts[r + 1], from, to);
      return r;
    });
  }

  /** Says for each digit which run it belongs to, and returns where runs of about equal length start and the last ends. */
  private static int[] starts(List<int[]> counts, int all, int[] runOf) {
    int[] starts = new int[all / AT_ONCE + 1];
    int before = 0;
    for (int d = 0; d < runOf.length; d++) {
      runOf[d] = Math.min(before / AT_ONCE, starts.length - 2);
      for (int[] of : counts) {
        before += of[d];
      }
      starts[runOf[d] + 1] = before;
    }
    for (int r = 1; r < starts.length; r++) {
      starts[r] = Math.max(starts[r], starts[r - 1]);
    }
    return starts;
  }

  /** Where in each run the keys of each part begin. */
  private static int[][] places(List<int[]> counts, int[] runOf, int[] starts) {
    int[][] places = new int[counts.size()][starts.length - 1];
    for (int p = 0; p + 1 < places.length; p++) {
      for (int d = 0; d < runOf.length; d++) {
        places[p + 1][runOf[d]] += counts.get(p)[d];
      }
    }
    for (int r = 0; r + 1 < starts.length; r++) {
      places[0][r] = starts[r];
      for (int p = 1; p < places.length; p++) {
        places[p][r] += places[p - 1][r];
      }
    }
    return places;
  }

  /** Sorts keys from one place up to another, digit by digit, by turns from either of two arrays to the other. */
  private static void sort(long[] keys, long[] other, long[] result, int first, int end, int from, int to) {
    long[] source = keys;
    long[] target = other;
    for (int shift = from; shift < to; shift += DIGIT) {
      int[] places = count(source, first, end, shift);
      int place = first;
      for (int d = 0; d < places.length; d++) {
        int count = places[d];
        places[d] = place;
        place += count;
      }
      for (int i = first; i < end; i++) {
        target[places[digit(source[i], shift)]++] = source[i];
      }
      long[] swap = source;
      source = target;
      target = swap;
    }
    if (source != result) {
      System.arraycopy(source, first, result, first, end - first);
    }
  }

  private static int[] count(long[] keys, int from, int to, int shift) {
    int[] counts = new int[1 << DIGIT];
    for (int i = from; i < to; i++) {
      counts[digit(keys[i], shift)]++;
    }
    return counts;
  }

  private static int digit(long key, int shift) {
    return (int) (key >>> shift) & (1 << DIGIT) - 1;
  }

  /** Twice the centre. */
  private static long sum(int[] boxes, int i, int axis) {
    return (long) boxes[6 * i + axis] + boxes[6 * i + 3 + axis];
  }

  /** The least doubled centres along each axis, and the greatest. */
  private static long[] ends(int[] boxes, Workers workers) {
    long[] all = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE, Long.MIN_VALUE, Long.MIN_VALUE, Long.MIN_VALUE};
    workers.split(boxes.length / 6, AT_ONCE, (from, to) -> {
      long[] own = new long[6];
      for (int axis = 0; axis < 3; axis++) {
        long min = Long.MAX_VALUE;
        long max = Long.MIN_VALUE;
        for (int i = from; i < to; i++) {
          long s = sum(boxes, i, axis);
          min = Math.min(min, s);
          max = Math.max(max, s);
        }
        own[axis] = min;
        own[axis + 3] = max;
      }
      synchronized (all) {
        for (int axis = 0; axis < 3; axis++) {
          all[axis] = Math.min(all[axis], own[axis]);
          all[axis + 3] = Math.max(all[axis + 3], own[axis + 3]);
        }
      }
    });
    return all;
  }

  /** How many bits the widest span between ends takes. */
  private static int span(long[] ends) {
    long widest = 0;
    for (int axis = 0; axis < 3; axis++) {
      widest = Math.max(widest, ends[axis] > ends[axis + 3] ? 0 : ends[axis + 3] - ends[axis]);
    }
    return 64 - Long.numberOfLeadingZeros(widest);
  }
}
