package outrigger.shapes.mesh;

import java.util.Arrays;

/** Gives equal vertices one number, by an open-addressed table over their coordinates. */
final class Welder {
  private Welder() {}

  static Mesh weld(int[] xyz, int[] corners) {
    int n = xyz.length / 3;
    int size = Integer.highestOneBit(Math.max(8, 2 * n)) << 1;
    int[] table = new int[size];
    Arrays.fill(table, -1);
    int[] kept = new int[xyz.length];
    int[] number = new int[n];
    Arrays.fill(number, -1);
    int[] out = new int[corners.length];
    int count = 0;
    for (int i = 0; i < corners.length; i++) {
      int v = corners[i];
      if (number[v] < 0) {
        int slot = hash(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]) & (size - 1);
        while (table[slot] >= 0 && !Arrays.equals(kept, 3 * table[slot], 3 * table[slot] + 3, xyz, 3 * v, 3 * v + 3)) {
          slot = (slot + 1) & (size - 1);
        }
        if (table[slot] < 0) {
          System.arraycopy(xyz, 3 * v, kept, 3 * count, 3);
          table[slot] = count++;
        }
        number[v] = table[slot];
      }
      out[i] = number[v];
    }
    return Mesh.welded(Arrays.copyOf(kept, 3 * count), out);
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

  private static int hash(int x, int y, int z) {
    long h = x * 0x9E3779B97F4A7C15L ^ y * 0xC2B2AE3D27D4EB4FL ^ z * 0x165667B19E3779F9L;
    h ^= h >>> 32;
    h *= 0xD6E8FEB86659FD93L;
    return (int) (h >>> 32);
  }
}
