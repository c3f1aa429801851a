package outrigger.shapes.print.tree;

/**
 * Shares a sorted row of items out to the leaves of a perfect binary tree, at most one each, so that each node holds a
 * cell of the order where it can: there are more leaves than items, and each node splits what it holds where the order makes
 * its greatest jump. A node that held the end of one cell and the beginning of a far one would be a large box of nothing.
 */
final class Leaves {
  /** So many times as many leaves as items, at least. */
  private static final double ROOM = 1.05;

  private final long[] keys;
  private final int count;
  private final int[] start;

  private Leaves(long[] keys) {
    this.keys = keys;
    int needed = (int) Math.max(1, Math.ceil(ROOM * keys.length));
    count = Integer.highestOneBit(2 * needed - 1);
    start = new int[count + 1];
    start[count] = keys.length;
  }

  /**
   * First item of each leaf, that of the next for an empty one, and the end; a power of two of leaves.
   *
   * @param keys places in the order, rising
   */
  static int[] starts(long[] keys) {
    Leaves leaves = new Leaves(keys);
    leaves.share(0, leaves.count, 0, keys.length);
    return leaves.start;
  }

  private void share(int leaf, int leaves, int from, int to) {
    if (leaves == 1) {
      start[leaf] = from;
      return;
    }
    int half = leaves / 2;
    int split = split(from, to, half);
    share(leaf, half, from, split);
    share(leaf + half, half, split, to);
  }

  /** Where neither part holds more than so many: at the greatest jump there, of equal ones the one nearest the middle. */
  private int split(int from, int to, int most) {
    int middle = (from + to) >>> 1;
    int first = Math.max(from + 1, to - most);
    int last = Math.min(to - 1, from + most);
    if (last <= first) {
      return Math.max(to - most, Math.min(middle, from + most));
    }
    long differing = keys[first - 1] ^ keys[last];
    if (differing == 0) {
      return Math.max(first, Math.min(middle, last));
    }
    // in a rising row the highest bit that differs turns once
    long bit = Long.highestOneBit(differing);
    int low = first;
    int high = last;
    while (low < high) {
      int at = (low + high) >>> 1;
      if ((keys[at] & bit) == 0) {
        low = at + 1;
      } else {
        high = at;
      }
    }
    return low;
  }
}
