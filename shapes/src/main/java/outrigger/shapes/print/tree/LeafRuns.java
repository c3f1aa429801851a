package outrigger.shapes.print.tree;

import java.util.Arrays;
import outrigger.shapes.print.facet.Extremes;

/** Cuts a row of facets into runs that lie close together, and shares these out to the leaves of a tree. */
final class LeafRuns {
  /** The most facets of a run. */
  private static final int MOST = 4;
  /** A run's box is no larger than so many times those of its facets together. */
  private static final double LOOSE = 1.5;
  private static final int WIDTH = TreeBounds.WIDTH;

  private final float[] corners;
  private final int count;

  private LeafRuns(float[] corners) {
    this.corners = corners;
    count = corners.length / 9;
  }

  /**
   * Where the leaves of a perfect tree begin in the row, and the end.
   *
   * @param corners of the facets, nine numbers each, mm
   * @param keys what the row is ordered by, rising
   */
  static int[] starts(float[] corners, long... keys) {
    int[] runs = new LeafRuns(corners).runs();
    long[] runKeys = new long[runs.length - 1];
    for (int r = 0; r < runKeys.length; r++) {
      runKeys[r] = keys[runs[r]];
    }
    int[] starts = Leaves.starts(runKeys);
    for (int leaf = 0; leaf < starts.length; leaf++) {
      starts[leaf] = runs[starts[leaf]];
    }
    return starts;
  }

  /** Where runs begin, and the end. */
  private int[] runs() {
    int[] runs = new int[count + 1];
    int found = 0;
    float[] run = new float[WIDTH];
    float[] both = new float[WIDTH];
    double area = 0;
    for (int i = 0; i < count; i++) {
      double own = box(i, both);
      double joined = own;
      if (found > 0 && i < runs[found - 1] + MOST) {
        for (int k = 0; k < 3; k++) {
          both[k] = Extremes.less(both[k], run[k]);
          both[k + 3] = Extremes.greater(both[k + 3], run[k + 3]);
        }
        joined = area(both);
      } else {
        area = -own;
      }
      if (joined > LOOSE * (area + own)) {
        runs[found++] = i;
        joined = box(i, both);
      }
      System.arraycopy(both, 0, run, 0, WIDTH);
      area = joined;
    }
    runs[found] = count;
    return Arrays.copyOf(runs, found + 1);
  }

  /** Sets a box to that of a facet, and returns its area. */
  private double box(int slot, float... box) {
    for (int k = 0; k < 3; k++) {
      int o = 9 * slot + k;
      box[k] = Extremes.less(corners[o], Extremes.less(corners[o + 3], corners[o + 6]));
      box[k + 3] = Extremes.greater(corners[o], Extremes.greater(corners[o + 3], corners[o + 6]));
    }
    return area(box);
  }

  /** Half of a box's surface. */
  private static double area(float... box) {
    double dx = box[3] - box[0];
    double dy = box[4] - box[1];
    double dz = box[5] - box[2];
    return dx * dy + dy * dz + dz * dx;
  }
}
