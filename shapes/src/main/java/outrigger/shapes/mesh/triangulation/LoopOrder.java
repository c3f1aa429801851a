package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.num.IntList;

/** Puts the edges of a group in an order that depends on their places alone: along loops, each from its least corner. */
final class LoopOrder {
  private LoopOrder() {}

  /**
   * The same edges, loop after loop.
   *
   * @param u axis that is the first coordinate of the group's plane
   * @param v axis that is the second
   */
  static IntList of(Outline outline, IntList edges, int u, int v) {
    Integer[] sorted = new Integer[edges.size() / 2];
    Arrays.setAll(sorted, i -> 2 * i);
    Comparator<ExactPoint> places = (p, q) -> compare(p, q, u, v);
    Comparator<Integer> byStart = Comparator.comparing(i -> outline.point(edges.get(i)), places);
    Arrays.sort(sorted, byStart.thenComparing(i -> outline.point(edges.get(i + 1)), places));
    Map<Integer, Integer> first = new HashMap<>();
    for (int i = sorted.length - 1; i >= 0; i--) {
      first.put(edges.get(sorted[i]), i);
    }
    IntList result = new IntList();
    boolean[] taken = new boolean[sorted.length];
    for (int start = 0; start < sorted.length; start++) {
      for (int i = start; i < sorted.length && !taken[i];) {
        taken[i] = true;
        int end = edges.get(sorted[i] + 1);
        result.add(edges.get(sorted[i]));
        result.add(end);
        i = next(edges, sorted, taken, first.get(end));
      }
    }
    return result;
  }

  /** The first edge not yet taken of those that start where the one at {@code from} does; past the end if there is none. */
  private static int next(IntList edges, Integer[] sorted, boolean[] taken, int from) {
    int i = from;
    while (taken[i]) {
      i++;
      if (i == sorted.length || edges.get(sorted[i]) != edges.get(sorted[from])) {
        return sorted.length;
      }
    }
    return i;
  }

  /** Order of two points by their first coordinate, then their second. */
  static int compare(ExactPoint p, ExactPoint q, int u, int v) {
    int first = compare(p, q, u);
    return first != 0 ? first : compare(p, q, v);
  }

  private static int compare(ExactPoint p, ExactPoint q, int axis) {
    int grid = Long.compare(p.grid(axis), q.grid(axis));
    return grid != 0 ? grid : ExactPoint.compare(p, q, axis);
  }
}
