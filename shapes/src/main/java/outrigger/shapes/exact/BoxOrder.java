package outrigger.shapes.exact;

import java.util.Arrays;

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

  private BoxOrder() {}

  /**
   * The order.
   *
   * @param boxes least x, y, z and greatest x, y, z of each box
   * @return box numbers along the curve
   */
  public static int[] of(int[] boxes) {
    int n = boxes.length / 6;
    int numberBits = 32 - Integer.numberOfLeadingZeros(n);
    int bits = Math.min(Morton.BITS, (63 - numberBits) / 3);
    long[] least = new long[3];
    int shift = Math.max(0, span(boxes, least) - bits);
    long[] keys = new long[n];
    for (int i = 0; i < n; i++) {
      long place = Morton.place((sum(boxes, i, 0) - least[0]) >> shift, (sum(boxes, i, 1) - least[1]) >> shift,
          (sum(boxes, i, 2) - least[2]) >> shift);
      keys[i] = place << numberBits | i;
    }
    sort(keys, numberBits, numberBits + 3 * bits);
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = (int) (keys[i] & (1L << numberBits) - 1);
    }
    return order;
  }

  /** Sorts keys that rise in their lowest bits already, by the bits from one up to before another. */
  private static void sort(long[] keys, int from, int to) {
    if (keys.length < MANY) {
      Arrays.sort(keys);
      return;
    }
    long[] source = keys;
    long[] target = new long[keys.length];
    for (int shift = from; shift < to; shift += DIGIT) {
      int[] places = new int[(1 << DIGIT) + 1];
      for (long key : source) {
        places[((int) (key >>> shift) & (1 << DIGIT) - 1) + 1]++;
      }
      for (int d = 0; d < 1 << DIGIT; d++) {
        places[d + 1] += places[d];
      }
      for (long key : source) {
        target[places[(int) (key >>> shift) & (1 << DIGIT) - 1]++] = key;
      }
      long[] swap = source;
      source = target;
      target = swap;
    }
    if (source != keys) {
      System.arraycopy(source, 0, keys, 0, keys.length);
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
