package outrigger.shapes.print.tree;

import java.util.Arrays;
import outrigger.shapes.exact.BoxOrder;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.facet.Extremes;

/**
 * The facets of a {@link FacetTree} by place alone, for asking which of them lie near: whatever way they face, those near
 * each other hang below few nodes.
 *
 * <p>A perfect binary tree of boxes along a space-filling curve. A box is kept as its middle and its half sizes, rounded
 * up, so that the distance from it takes no branches.
 */
final class PlaceTree {
  /** Numbers a node: the middle's x, y, z and half the size along each. */
  private static final int WIDTH = TreeBounds.WIDTH;
  /** Half sizes are taken larger by far more than a float is rounded by. */
  private static final double ROUNDED_UP = 1 + 1e-6;
  /** Half the size of an empty box: far from everything, and below every level. */
  private static final float EMPTY = -1e18f;

  private final int leaves;
  /** First slot of each leaf, and the slot after its last. */
  private final int[] first;
  private final int[] end;
  private final float[] boxes;

  private PlaceTree(int leaves) {
    this.leaves = leaves;
    first = new int[leaves];
    end = new int[leaves];
    boxes = new float[2 * leaves * WIDTH];
  }

  /**
   * The same runs of facets as the leaves of a tree that is ordered otherwise.
   *
   * @param nodes its boxes, those of the leaves last
   * @param starts first slot of each of its leaves, and the end
   */
  static PlaceTree of(float[] nodes, int... starts) {
    int[] runs = runs(starts);
    int[] runBoxes = new int[WIDTH * runs.length];
    for (int r = 0; r < runs.length; r++) {
      for (int k = 0; k < WIDTH; k++) {
        runBoxes[WIDTH * r + k] = (int) (nodes[WIDTH * (starts.length - 1 + runs[r]) + k] * Grid.PER_MM);
      }
    }
    long[] keys = BoxOrder.keys(runBoxes);
    int[] row = Leaves.starts(keys);
    PlaceTree tree = new PlaceTree(row.length - 1);
    for (int leaf = 0; leaf < tree.leaves; leaf++) {
      int at = WIDTH * (tree.leaves + leaf);
      if (row[leaf] < row[leaf + 1]) {
        int run = runs[BoxOrder.number(keys[row[leaf]], keys.length)];
        tree.first[leaf] = starts[run];
        tree.end[leaf] = starts[run + 1];
        System.arraycopy(nodes, WIDTH * (starts.length - 1 + run), tree.boxes, at, WIDTH);
      } else {
        Arrays.fill(tree.boxes, at, at + 3, Float.POSITIVE_INFINITY);
        Arrays.fill(tree.boxes, at + 3, at + WIDTH, Float.NEGATIVE_INFINITY);
      }
    }
    TreeBounds.gather(tree.boxes, tree.leaves);
    for (int o = 0; o < tree.boxes.length; o += WIDTH) {
      for (int k = o; k < o + 3; k++) {
        tree.center(k);
      }
    }
    return tree;
  }

  /** The leaves that hold facets. */
  private static int[] runs(int... starts) {
    int[] runs = new int[starts.length];
    int count = 0;
    for (int leaf = 0; leaf < starts.length - 1; leaf++) {
      if (starts[leaf] < starts[leaf + 1]) {
        runs[count++] = leaf;
      }
    }
    return Arrays.copyOf(runs, count);
  }

  private void center(int k) {
    double low = boxes[k];
    double high = boxes[k + 3];
    boxes[k] = low > high ? 0 : (float) ((low + high) / 2);
    boxes[k + 3] = low > high ? EMPTY : (float) (Extremes.greater(high - boxes[k], boxes[k] - low) * ROUNDED_UP);
  }

  /** The first leaf's node; nodes below it in number have children. */
  int leaves() {
    return leaves;
  }

  /** First slot of a leaf. */
  int first(int leaf) {
    return first[leaf - leaves];
  }

  /** The slot after a leaf's last. */
  int end(int leaf) {
    return end[leaf - leaves];
  }

  /** A number not above the squared distance of a point from a node's box, mm^2. */
  double distance2(int node, double x, double y, double z) {
    int o = WIDTH * node;
    double dx = Math.abs(x - boxes[o]) - boxes[o + 3];
    double dy = Math.abs(y - boxes[o + 1]) - boxes[o + 4];
    double dz = Math.abs(z - boxes[o + 2]) - boxes[o + 5];
    dx += Math.abs(dx);
    dy += Math.abs(dy);
    dz += Math.abs(dz);
    return (dx * dx + dy * dy + dz * dz) / 4;
  }

  /** Whether a node's box meets another, least x, y, z and greatest. */
  boolean meets(int node, double... box) {
    int o = WIDTH * node;
    return boxes[o] - boxes[o + 3] <= box[3] && boxes[o] + boxes[o + 3] >= box[0]
        && boxes[o + 1] - boxes[o + 4] <= box[4] && boxes[o + 1] + boxes[o + 4] >= box[1]
        && boxes[o + 2] - boxes[o + 5] <= box[5] && boxes[o + 2] + boxes[o + 5] >= box[2];
  }

  /** A number not below the product of any place in a node's box and a vector. */
  double mostAlong(int node, double ax, double ay, double az) {
    int o = WIDTH * node;
    return boxes[o] * ax + boxes[o + 1] * ay + boxes[o + 2] * az
        + boxes[o + 3] * Math.abs(ax) + boxes[o + 4] * Math.abs(ay) + boxes[o + 5] * Math.abs(az);
  }
}
