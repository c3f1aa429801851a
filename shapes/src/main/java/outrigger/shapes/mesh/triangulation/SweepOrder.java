package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntFunction;
import outrigger.shapes.exact.ExactPoint;

/**
 * Order of points by their first coordinate, equal ones by their second, exactly.
 *
 * <p>Rounding to the grid keeps the order of coordinates: numbers are sorted first, and points themselves only where numbers
 * are equal and one is rounded.
 */
final class SweepOrder {
  private SweepOrder() {}

  /**
   * The numbers of points from the least to the greatest.
   *
   * @param count how many points there are
   * @param points the point of each number, all in different places
   */
  static int[] of(int count, IntFunction<ExactPoint> points, int firstAxis, int secondAxis) {
    long[] keys = new long[count];
    for (int i = 0; i < count; i++) {
      keys[i] = points.apply(i).grid(firstAxis) << 32 | i;
    }
    Arrays.sort(keys);
    for (int from = 0, to; from < count; from = to) {
      to = from + 1;
      while (to < count && keys[to] >> 32 == keys[from] >> 32) {
        to++;
      }
      if (to > from + 1) {
        sortEqual(keys, from, to, points, firstAxis, secondAxis);
      }
    }
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      order[i] = (int) keys[i];
    }
    return order;
  }

  /** Sorts keys whose points have the same first coordinate on the grid. */
  private static void sortEqual(long[] keys, int from, int to, IntFunction<ExactPoint> points, int firstAxis,
      int secondAxis) {
    boolean areOnGrid = true;
    for (int i = from; i < to; i++) {
      ExactPoint point = points.apply((int) keys[i]);
      areOnGrid &= point.isOnGrid();
      keys[i] = point.grid(secondAxis) << 32 | (int) keys[i];
    }
    if (areOnGrid) {
      Arrays.sort(keys, from, to);
    } else {
      Comparator<Long> byPlace = Comparator.comparing(key -> points.apply(key.intValue()),
          (p, q) -> LoopOrder.compare(p, q, firstAxis, secondAxis));
      long[] sorted = Arrays.stream(keys, from, to).boxed().sorted(byPlace).mapToLong(Long::longValue).toArray();
      System.arraycopy(sorted, 0, keys, from, sorted.length);
    }
  }
}
