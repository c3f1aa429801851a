package outrigger.shapes.print.layer;

import java.util.Arrays;
import java.util.List;

/** Tells whether places lie within closed loops, or on them: their edges in rows by height, about as many as edges; mm. */
final class LoopArea {
  /** Places no farther from an edge along X lie on it, mm. */
  private static final double ON = 1e-9;

  private final double[] ends;
  private final double least;
  private final double height;
  private final int[] start;
  private final int[] edges;

  /** @param loops x, y of each loop's corners, the first not repeated */
  LoopArea(List<double[]> loops) {
    ends = OutlineGrid.ends(loops);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < ends.length; i += 2) {
      low = Math.min(low, ends[i]);
      high = Math.max(high, ends[i]);
    }
    int rows = Math.max(1, ends.length / 4);
    least = low;
    height = (high - low) / rows;
    start = new int[rows + 1];
    for (int e = 0; e < ends.length / 4; e++) {
      for (int row = row(low(e)); row <= row(high(e)); row++) {
        start[row + 1]++;
      }
    }
    for (int row = 0; row < rows; row++) {
      start[row + 1] += start[row];
    }
    edges = new int[start[rows]];
    int[] fill = Arrays.copyOf(start, rows);
    for (int e = 0; e < ends.length / 4; e++) {
      for (int row = row(low(e)); row <= row(high(e)); row++) {
        edges[fill[row]++] = e;
      }
    }
  }

  private double low(int e) {
    return Math.min(ends[4 * e + 1], ends[4 * e + 3]);
  }

  private double high(int e) {
    return Math.max(ends[4 * e + 1], ends[4 * e + 3]);
  }

  private int row(double y) {
    double row = (y - least) / height;
    return row > 0 ? (int) Math.min(start.length - 2, row) : 0;
  }

  /** Whether a place lies inside or on a loop. */
  boolean holds(double x, double y) {
    boolean inside = false;
    int row = row(y);
    for (int i = start[row]; i < start[row + 1]; i++) {
      int o = 4 * edges[i];
      if (ends[o + 1] > y != ends[o + 3] > y) {
        double away = ends[o] + (y - ends[o + 1]) / (ends[o + 3] - ends[o + 1]) * (ends[o + 2] - ends[o]) - x;
        if (Math.abs(away) <= ON) {
          return true;
        }
        inside ^= away > 0;
      }
    }
    return inside;
  }
}
