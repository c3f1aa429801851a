package outrigger.shapes.check;

/** Stable sort of longs that carry a number each, by counting, eleven bits at a time. */
final class KeySort {
  private static final int BITS = 11;
  private static final int DIGITS = 1 << BITS;

  private KeySort() {}

  /**
   * Sorts keys in rising order and moves the numbers along. Equal keys keep their order.
   *
   * @param keys 0 or more each
   * @param count how many leading elements to sort
   */
  static void sort(long[] keys, int[] numbers, int count) {
    long all = 0;
    for (int i = 0; i < count; i++) {
      all |= keys[i];
    }
    long[] keysFrom = keys;
    int[] numbersFrom = numbers;
    long[] keysTo = new long[count];
    int[] numbersTo = new int[count];
    for (int shift = 0; shift < Long.SIZE && all >>> shift != 0; shift += BITS) {
      pass(keysFrom, numbersFrom, keysTo, numbersTo, count, shift);
      long[] k = keysFrom;
      keysFrom = keysTo;
      keysTo = k;
      int[] n = numbersFrom;
      numbersFrom = numbersTo;
      numbersTo = n;
    }
    if (keysFrom != keys) {
      System.arraycopy(keysFrom, 0, keys, 0, count);
      System.arraycopy(numbersFrom, 0, numbers, 0, count);
    }
  }

  private static void pass(long[] keys, int[] numbers, long[] keysTo, int[] numbersTo, int count, int shift) {
    int[] start = new int[DIGITS + 1];
    for (int i = 0; i < count; i++) {
      start[digit(keys[i], shift) + 1]++;
    }
    for (int d = 0; d < DIGITS; d++) {
      start[d + 1] += start[d];
    }
    for (int i = 0; i < count; i++) {
      int to = start[digit(keys[i], shift)]++;
      keysTo[to] = keys[i];
      numbersTo[to] = numbers[i];
    }
  }

  private static int digit(long key, int shift) {
    return (int) (key >>> shift) & DIGITS - 1;
  }
}
