package outrigger.shapes.print;

import java.util.Arrays;

/**
 * What of a tree lies near a place, put together once for many searches there: a search goes through a short row of boxes
 * instead of down from the root. Not for several threads.
 */
final class Nearby {
  /** Levels of the tree left below the boxes of the row. */
  private static final int LEVELS = 2;
  private static final int UNDER = 1 << LEVELS;
  /** More boxes than this are no short row. */
  private static final int MOST = 400;
  /** Far more than what 32-bit floats round off beside the place, mm. */
  private static final double ROUNDING = 1e-4;
  private static final int AXES = 3;

  private final FacetTree tree;
  private final int first;
  private final int[] nodes = new int[MOST];
  private final float[] middles = new float[AXES * MOST];
  private final float[] halves = new float[AXES * MOST];
  private int count;
  private double x;
  private double y;
  private double z;
  private double reach;

  Nearby(FacetTree tree) {
    this.tree = tree;
    first = tree.leaves() / UNDER;
    reach = -1;
  }

  /** Takes what lies within a ball from now on; nothing if that is too much for a short row. */
  void take(double px, double py, double pz, double radius) {
    x = px;
    y = py;
    z = pz;
    reach = first == 0 ? -1 : radius;
    count = 0;
    collect(1, radius * radius);
  }

  private void collect(int node, double reach2) {
    if (reach < 0 || !(tree.distance2(node, x, y, z) <= reach2)) {
      return;
    }
    if (node < first) {
      collect(2 * node, reach2);
      collect(2 * node + 1, reach2);
      return;
    }
    if (count == MOST) {
      reach = -1;
      return;
    }
    nodes[count] = node;
    for (int k = 0; k < AXES; k++) {
      double place = k == 0 ? x : k == 1 ? y : z;
      middles[AXES * count + k] = (float) ((tree.low(node, k) + tree.high(node, k)) / 2 - place);
      halves[AXES * count + k] = (float) ((tree.high(node, k) - tree.low(node, k)) / 2);
    }
    count++;
  }

  /** Drops what it holds. */
  void clear() {
    reach = -1;
  }

  /** Whether all within a ball is known. */
  boolean holds(double px, double py, double pz, double reach2) {
    if (reach < 0) {
      return false;
    }
    double d2 = (px - x) * (px - x) + (py - y) * (py - y) + (pz - z) * (pz - z);
    double within = Math.sqrt(d2) + Math.sqrt(reach2);
    return within <= reach;
  }

  /** A row of leaves, nearest first. */
  static final class Row {
    private int count;
    private int nearest;
    private int[] leaves = new int[UNDER * UNDER];
    private double[] distances = new double[UNDER * UNDER];

    int size() {
      return count;
    }

    /** The nearest comes first. */
    int leaf(int i) {
      return leaves[i == 0 ? nearest : i == nearest ? 0 : i];
    }

    private void put(int leaf, double d2) {
      if (count == leaves.length) {
        leaves = Arrays.copyOf(leaves, 2 * count);
        distances = Arrays.copyOf(distances, 2 * count);
      }
      leaves[count] = leaf;
      distances[count] = d2;
      if (d2 < distances[nearest]) {
        nearest = count;
      }
      count++;
    }
  }

  /** Sets a row to the leaves that reach into a ball held here. */
  void fill(Row row, NearSearch search, double px, double py, double pz, double reach2) {
    row.count = 0;
    row.nearest = 0;
    float dx = (float) (px - x);
    float dy = (float) (py - y);
    float dz = (float) (pz - z);
    float r = (float) (Math.sqrt(reach2) + ROUNDING);
    float most = r * r;
    for (int i = 0, o = 0; i < count; i++, o += AXES) {
      float ax = Math.max(0, Math.abs(dx - middles[o]) - halves[o]);
      float ay = Math.max(0, Math.abs(dy - middles[o + 1]) - halves[o + 1]);
      float az = Math.max(0, Math.abs(dz - middles[o + 2]) - halves[o + 2]);
      if (ax * ax + ay * ay + az * az <= most) {
        int to = UNDER * nodes[i] + UNDER;
        for (int leaf = to - UNDER; leaf < to; leaf++) {
          double d2 = tree.distance2(leaf, px, py, pz);
          if (d2 <= reach2 && !search.isIdle(leaf)) {
            row.put(leaf, d2);
          }
        }
      }
    }
  }
}
