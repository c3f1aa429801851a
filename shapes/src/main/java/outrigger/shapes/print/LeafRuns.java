package outrigger.shapes.print;

import java.util.Arrays;
import outrigger.shapes.exact.Morton;
import outrigger.shapes.num.Grid;

/** Cuts a row of facets into runs that lie close together, and shares these out to the leaves of a tree. */
final class LeafRuns {
  /** The most facets of a run. */
  static final int MOST = 4;
  /** A run's box is no larger than so many times those of its facets together. */
  private static final double LOOSE = 1.5;
  private static final int WIDTH = FacetTree.WIDTH;

  private final float[] corners;
  private final int[] row;

  /**
   * Of a row.
   *
   * @param corners of all facets, nine numbers a slot, mm
   * @param row slots along a space-filling curve
   */
  LeafRuns(float[] corners, int... row) {
    this.corners = corners;
    this.row = row;
  }

  /** Where the leaves of a perfect tree begin in the row, and the end; of a row that begins anew for each side. */
  int[] starts(byte... sides) {
    int[] runs = runs();
    int[] starts = Leaves.starts(keys(sides, runs));
    for (int leaf = 0; leaf < starts.length; leaf++) {
      starts[leaf] = runs[starts[leaf]];
    }
    return starts;
  }

  /** Where runs begin, and the end. */
  private int[] runs() {
    int[] runs = new int[row.length + 1];
    int count = 0;
    float[] run = new float[WIDTH];
    float[] both = new float[WIDTH];
    double area = 0;
    for (int i = 0; i < row.length; i++) {
      double own = box(row[i], both);
      double joined = own;
      if (count > 0 && i < runs[count - 1] + MOST) {
        for (int k = 0; k < 3; k++) {
          both[k] = Extremes.less(both[k], run[k]);
          both[k + 3] = Extremes.greater(both[k + 3], run[k + 3]);
        }
        joined = area(both);
      } else {
        area = -own;
      }
      if (joined > LOOSE * (area + own)) {
        runs[count++] = i;
        joined = box(row[i], both);
      }
      System.arraycopy(both, 0, run, 0, WIDTH);
      area = joined;
    }
    runs[count] = row.length;
    return Arrays.copyOf(runs, count + 1);
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

  /** Where each run stands on the curve: its first facet's side, then that facet's place. */
  private long[] keys(byte[] sides, int... runs) {
    double scale = ((1 << Morton.BITS) - 1) / (6 * Grid.LIMIT_MM);
    long[] keys = new long[runs.length - 1];
    for (int r = 0; r < keys.length; r++) {
      int o = 9 * row[runs[r]];
      long[] at = new long[3];
      for (int k = 0; k < 3; k++) {
        at[k] = (long) (((double) corners[o + k] + corners[o + 3 + k] + corners[o + 6 + k] + 3 * Grid.LIMIT_MM) * scale);
      }
      long side = sides.length == 0 ? 0 : sides[runs[r]];
      keys[r] = side << 3 * Morton.BITS | Morton.place(at[0], at[1], at[2]);
    }
    return keys;
  }
}
