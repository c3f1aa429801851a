package outrigger.shapes.print;

/**
 * The facets of a {@link FacetTree} by place alone, for asking which of them lie near: whatever way they face, those near
 * each other hang below few nodes.
 *
 * <p>A perfect binary tree of boxes along a space-filling curve. A box is kept as its middle and its half sizes, rounded
 * up, so that the distance from it takes no branches.
 */
final class PlaceTree {
  /** Numbers a node: the middle's x, y, z and half the size along each. */
  private static final int WIDTH = FacetTree.WIDTH;
  /** Half the size of an empty box: far from everything, and below every level. */
  private static final float EMPTY = -1e18f;

  private final int[] slots;
  private final int[] starts;
  private final int leaves;
  private final float[] boxes;

  /**
   * Over some facets.
   *
   * @param corners of all facets, nine numbers a slot, mm
   * @param row slots along a space-filling curve
   */
  PlaceTree(float[] corners, int... row) {
    slots = row.clone();
    starts = new LeafRuns(corners, slots).starts();
    leaves = starts.length - 1;
    boxes = bounds(corners);
    for (int o = 0; o < boxes.length; o += WIDTH) {
      for (int k = o; k < o + 3; k++) {
        center(k);
      }
    }
  }

  private void center(int k) {
    double low = boxes[k];
    double high = boxes[k + 3];
    boxes[k] = low > high ? 0 : (float) ((low + high) / 2);
    boxes[k + 3] = low > high ? EMPTY : Math.nextUp((float) Math.max(high - boxes[k], boxes[k] - low));
  }

  /** Node i has children 2i and 2i + 1; leaf k is node {@code leaves + k}. Least and greatest numbers; none, inside out. */
  private float[] bounds(float... corners) {
    float[] b = new float[2 * leaves * WIDTH];
    for (int leaf = 0; leaf < leaves; leaf++) {
      for (int k = 0; k < 3; k++) {
        float least = Float.POSITIVE_INFINITY;
        float most = Float.NEGATIVE_INFINITY;
        for (int i = starts[leaf]; i < starts[leaf + 1]; i++) {
          for (int at = 9 * slots[i] + k; at < 9 * (slots[i] + 1); at += 3) {
            least = Extremes.less(corners[at], least);
            most = Extremes.greater(corners[at], most);
          }
        }
        b[WIDTH * (leaves + leaf) + k] = least;
        b[WIDTH * (leaves + leaf) + 3 + k] = most;
      }
    }
    for (int i = leaves - 1; i > 0; i--) {
      for (int k = WIDTH * i, down = 2 * k; k < WIDTH * i + 3; k++, down++) {
        b[k] = Extremes.less(b[down], b[down + WIDTH]);
        b[k + 3] = Extremes.greater(b[down + 3], b[down + WIDTH + 3]);
      }
    }
    return b;
  }

  /** The first leaf's node; nodes below it in number have children. */
  int leaves() {
    return leaves;
  }

  /** Where a leaf's facets begin. */
  int first(int leaf) {
    return starts[leaf - leaves];
  }

  /** Where those of the next one begin. */
  int end(int leaf) {
    return starts[leaf - leaves + 1];
  }

  /** The slot of a facet by its place in the tree. */
  int slot(int place) {
    return slots[place];
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

  /** A number not below the product of any place in a node's box and a vector. */
  double mostAlong(int node, double ax, double ay, double az) {
    int o = WIDTH * node;
    return boxes[o] * ax + boxes[o + 1] * ay + boxes[o + 2] * az
        + boxes[o + 3] * Math.abs(ax) + boxes[o + 4] * Math.abs(ay) + boxes[o + 5] * Math.abs(az);
  }
}
