package outrigger.shapes.mesh;

import java.util.Arrays;

/** A map from longs to non-negative ints, open-addressed; no removal. */
final class LongMap {
  private long[] keys;
  private int[] values;
  private int size;

  LongMap(int expected) {
    int n = Integer.highestOneBit(Math.max(8, 2 * expected)) << 1;
    keys = new long[n];
    values = new int[n];
    Arrays.fill(values, -1);
  }

  /** Key of a directed edge. */
  static long edge(int from, int to) {
    return (long) from << 32 | to;
  }

  /** The value of a key, or -1. */
  int get(long key) {
    return values[slot(key)];
  }

  /** Sets the value of a key; returns the one before, or -1. */
  int put(long key, int value) {
    int s = slot(key);
    int old = values[s];
    keys[s] = key;
    values[s] = value;
    if (old < 0 && ++size * 2 > keys.length) {
      grow();
    }
    return old;
  }

  private int slot(long key) {
    long h = key * 0x9E3779B97F4A7C15L;
    int mask = keys.length - 1;
    int s = (int) (h ^ h >>> 32) & mask;
    while (values[s] >= 0 && keys[s] != key) {
      s = (s + 1) & mask;
    }
    return s;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldValues = values;
    keys = new long[2 * oldKeys.length];
    values = new int[keys.length];
    Arrays.fill(values, -1);
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldValues[i] >= 0) {
        int s = slot(oldKeys[i]);
        keys[s] = oldKeys[i];
        values[s] = oldValues[i];
      }
    }
  }
}
