package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Extremes;

/** Bounds of what hangs below each node of a perfect binary tree: node i has children 2i and 2i + 1. */
final class TreeBounds {
  /** Numbers a node: least x, y, z and greatest. */
  static final int WIDTH = 6;

  private TreeBounds() {}

  /**
   * The bounds of all nodes, inside out for nodes with nothing below; leaf k is node {@code leaves + k}.
   *
   * @param points their x, y, z, those of each slot together
   * @param ofSlot how many points a slot has
   * @param starts first slot of each leaf, and the end; a power of two of leaves
   */
  static float[] of(float[] points, int ofSlot, int... starts) {
    int leaves = starts.length - 1;
    float[] bounds = new float[2 * leaves * WIDTH];
    for (int leaf = 0; leaf < leaves; leaf++) {
      int o = WIDTH * (leaves + leaf);
      for (int k = o; k < o + 3; k++) {
        bounds[k] = Float.POSITIVE_INFINITY;
        bounds[k + 3] = Float.NEGATIVE_INFINITY;
      }
      add(bounds, o, points, 3 * ofSlot * starts[leaf], 3 * ofSlot * starts[leaf + 1]);
    }
    gather(bounds, leaves);
    return bounds;
  }

  /** Fills in the bounds of all nodes above the leaves. */
  static void gather(float[] bounds, int leaves) {
    for (int i = leaves - 1; i > 0; i--) {
      for (int k = WIDTH * i, down = 2 * k; k < WIDTH * i + 3; k++, down++) {
        bounds[k] = Extremes.less(bounds[down], bounds[down + WIDTH]);
        bounds[k + 3] = Extremes.greater(bounds[down + 3], bounds[down + WIDTH + 3]);
      }
    }
  }

  private static void add(float[] bounds, int o, float[] points, int from, int to) {
    float lowX = bounds[o];
    float lowY = bounds[o + 1];
    float lowZ = bounds[o + 2];
    float highX = bounds[o + 3];
    float highY = bounds[o + 4];
    float highZ = bounds[o + 5];
    for (int p = from; p < to; p += 3) {
      lowX = Extremes.less(lowX, points[p]);
      lowY = Extremes.less(lowY, points[p + 1]);
      lowZ = Extremes.less(lowZ, points[p + 2]);
      highX = Extremes.greater(highX, points[p]);
      highY = Extremes.greater(highY, points[p + 1]);
      highZ = Extremes.greater(highZ, points[p + 2]);
    }
    bounds[o] = lowX;
    bounds[o + 1] = lowY;
    bounds[o + 2] = lowZ;
    bounds[o + 3] = highX;
    bounds[o + 4] = highY;
    bounds[o + 5] = highZ;
  }
}
