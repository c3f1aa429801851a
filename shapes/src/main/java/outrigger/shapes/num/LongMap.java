package outrigger.shapes.num;

/** A map from longs to non-negative ints, open-addressed; no removal. */
public final class LongMap {
  /** Key and value of each slot side by side, so that both are fetched at once; the value is one more, 0 where free. */
  private long[] slots;
  private int size;

  /** An empty map with room for about as many keys as are expected; it grows. */
  public LongMap(int expected) {
    slots = new long[4 * Integer.highestOneBit(Math.max(8, 2 * expected))];
  }

  /** Key of a directed edge. */
  public static long edge(int from, int to) {
    return (long) from << 32 | to;
  }

  /** The value of a key, or -1. */
  public int get(long key) {
    return (int) slots[slot(key) + 1] - 1;
  }

  /** Sets the value of a key; returns the one before, or -1. */
  public int put(long key, int value) {
    int s = slot(key);
    int old = (int) slots[s + 1] - 1;
    slots[s] = key;
    slots[s + 1] = value + 1L;
    if (old < 0 && 4 * ++size > slots.length) {
      grow();
    }
    return old;
  }

  private int slot(long key) {
    long h = key * 0x9E3779B97F4A7C15L;
    int mask = slots.length - 2;
    int s = (int) (h ^ h >>> 32) << 1 & mask;
    while (slots[s + 1] != 0 && slots[s] != key) {
      s = s + 2 & mask;
    }
    return s;
  }

  private void grow() {
    long[] before = slots;
    slots = new long[2 * before.length];
    for (int i = 0; i < before.length; i += 2) {
      if (before[i + 1] != 0) {
        int s = slot(before[i]);
        slots[s] = before[i];
        slots[s + 1] = before[i + 1];
      }
    }
  }
}
