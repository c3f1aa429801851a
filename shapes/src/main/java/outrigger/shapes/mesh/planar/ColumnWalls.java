package outrigger.shapes.mesh.planar;

import java.util.Arrays;

/**
 * What stands along an edge between the columns to its left and to its right: pieces of wall, where one of them holds the
 * result and the other does not.
 */
final class ColumnWalls {
  private int[] low = new int[4];
  private int[] high = new int[4];
  private boolean[] matterLeft = new boolean[4];
  private int count;
  private boolean touching;

  /** Compares two columns; what was here before is gone. */
  void compare(int[] left, int[] right) {
    count = 0;
    touching = false;
    int i = 0;
    int j = 0;
    while (i < left.length || j < right.length) {
      int height = j == right.length || i < left.length && left[i] < right[j] ? left[i] : right[j];
      boolean wasLeft = i % 2 == 1;
      boolean wasRight = j % 2 == 1;
      i += i < left.length && left[i] == height ? 1 : 0;
      j += j < right.length && right[j] == height ? 1 : 0;
      step(height, wasLeft, wasRight, i % 2 == 1, j % 2 == 1);
    }
  }

  /** Goes up past a height at which one column or both begin or end. */
  private void step(int height, boolean wasLeft, boolean wasRight, boolean isLeft, boolean isRight) {
    boolean was = wasLeft != wasRight;
    boolean is = isLeft != isRight;
    touching |= was && is;
    if (was) {
      high[count - 1] = height;
    }
    if (is) {
      if (count == low.length) {
        low = Arrays.copyOf(low, 2 * count);
        high = Arrays.copyOf(high, 2 * count);
        matterLeft = Arrays.copyOf(matterLeft, 2 * count);
      }
      low[count] = height;
      matterLeft[count++] = isLeft;
    }
  }

  /** Number of pieces of wall. */
  int count() {
    return count;
  }

  int low(int i) {
    return low[i];
  }

  int high(int i) {
    return high[i];
  }

  /** Whether the matter is on the left. */
  boolean matterLeft(int i) {
    return matterLeft[i];
  }

  /** Whether matter on the left ends where matter on the right begins, or the other way round: along a line they touch. */
  boolean areTouching() {
    return touching;
  }
}
