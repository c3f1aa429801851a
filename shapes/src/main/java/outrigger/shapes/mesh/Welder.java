package outrigger.shapes.mesh;

import java.util.Arrays;
import outrigger.shapes.num.Workers;

/** Gives equal vertices one number, by an open-addressed table over their coordinates. */
final class Welder {
  /** Vertices that are worth a thread. */
  private static final int AT_ONCE = 1 << 14;
  /** The hash's bits from this one on say which part a vertex falls to; those below it, where it stands in the table. */
  private static final int PART_BITS = 24;

  private Welder() {}

  static Mesh weld(int[] xyz, int[] corners, Workers workers) {
    int n = xyz.length / 3;
    int[] same = new int[n];
    Workers some = workers.from(AT_ONCE, n);
    int parts = some.threads();
    some.each(parts, p -> {
      findSame(xyz, parts, p, same);
      return p;
    });
    int[] welded = new int[corners.length];
    some.split(corners.length, AT_ONCE, (from, to) -> {
      for (int i = from; i < to; i++) {
        welded[i] = same[corners[i]];
      }
    });
    return inOrder(xyz, welded);
  }

  /** Finds for each vertex whose hash falls to one of some parts the first that is equal to it. */
  private static void findSame(int[] xyz, int parts, int part, int[] same) {
    int size = Integer.highestOneBit(Math.max(8, 2 * same.length / parts)) << 1;
    int[] table = new int[size];
    Arrays.fill(table, -1);
    for (int v = 0; v < same.length; v++) {
      int hash = hash(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
      if (parts > 1 && (hash >>> PART_BITS) % parts != part) {
        continue;
      }
      int slot = hash & (size - 1);
      while (table[slot] >= 0 && !Arrays.equals(xyz, 3 * table[slot], 3 * table[slot] + 3, xyz, 3 * v, 3 * v + 3)) {
        slot = (slot + 1) & (size - 1);
      }
      if (table[slot] < 0) {
        table[slot] = v;
      }
      same[v] = table[slot];
    }
  }

  /** Numbers vertices, no two of them equal, anew in the order of their first use; unused ones are dropped. */
  static Mesh inOrder(int[] xyz, int[] corners) {
    int[] number = new int[xyz.length / 3];
    int[] kept = new int[xyz.length];
    int[] out = new int[corners.length];
    int count = 0;
    for (int i = 0; i < corners.length; i++) {
      int v = corners[i];
      if (number[v] == 0) {
        kept[3 * count] = xyz[3 * v];
        kept[3 * count + 1] = xyz[3 * v + 1];
        kept[3 * count + 2] = xyz[3 * v + 2];
        number[v] = ++count;
      }
      out[i] = number[v] - 1;
    }
    return Mesh.welded(Arrays.copyOf(kept, 3 * count), out);
  }

  /** By multipliers in common use, as in {@code frame.Signature}; no result depends on it. */
  private static int hash(int x, int y, int z) {
    long h = x * 0x9E3779B97F4A7C15L ^ y * 0xC2B2AE3D27D4EB4FL ^ z * 0x165667B19E3779F9L;
    h ^= h >>> 32;
    h *= 0xD6E8FEB86659FD93L;
    return (int) (h >>> 32);
  }
}
