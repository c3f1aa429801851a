package outrigger.shapes.print.tree;

import java.util.Arrays;
import outrigger.shapes.print.facet.Extremes;
import outrigger.shapes.print.facet.Vec;

/** A box for each facet of a tree, or none, and the boxes of its nodes over them: asked whether a place lies in any. */
public final class NearRegions {
  private static final int WIDTH = 6;
  /** What 32-bit floats round off within the grid's range, mm. */
  private static final double ROUNDING = 1e-4;

  private final FacetTree tree;
  private final float[] boxes;
  private final float[] nodes;

  /** @param boxes from {@link #empty}, what was added in it; not to be changed after */
  NearRegions(FacetTree tree, float[] boxes) {
    this.tree = tree;
    this.boxes = boxes;
    nodes = empty(2 * tree.leaves());
    for (int leaf = tree.leaves(); leaf < 2 * tree.leaves(); leaf++) {
      for (int slot = tree.firstSlot(leaf); slot < tree.endSlot(leaf); slot++) {
        enclose(leaf, boxes, slot);
      }
    }
    for (int i = 2 * tree.leaves() - 1; i > 1; i--) {
      enclose(i / 2, nodes, i);
    }
  }

  /** Boxes that hold nothing. */
  static float[] empty(int count) {
    float[] boxes = new float[WIDTH * count];
    for (int i = 0; i < boxes.length; i += WIDTH) {
      Arrays.fill(boxes, i, i + 3, Float.POSITIVE_INFINITY);
      Arrays.fill(boxes, i + 3, i + WIDTH, Float.NEGATIVE_INFINITY);
    }
    return boxes;
  }

  /** Widens a facet's box by what lies within a margin of it and of another. */
  static void add(float[] boxes, FacetTree tree, int slot, int other, double margin) {
    int o = WIDTH * slot;
    double more = margin + ROUNDING;
    for (int k = 0; k < 3; k++) {
      boxes[o + k] = (float) Extremes.less(boxes[o + k], Extremes.greater(tree.least(slot, k), tree.least(other, k)) - more);
      boxes[o + 3 + k] = (float) Extremes.greater(boxes[o + 3 + k],
          Extremes.less(tree.most(slot, k), tree.most(other, k)) + more);
    }
  }

  /** Whether a facet's box holds already all that may lie within a margin of it and of any facet below a node. */
  static boolean holds(float[] boxes, FacetTree tree, int slot, int node, double margin) {
    int o = WIDTH * slot;
    double more = margin + ROUNDING;
    for (int k = 0; k < 3; k++) {
      if (boxes[o + k] > (float) (Extremes.greater(tree.least(slot, k), tree.low(node, k)) - more)
          || boxes[o + 3 + k] < (float) (Extremes.less(tree.most(slot, k), tree.high(node, k)) + more)) {
        return false;
      }
    }
    return true;
  }

  /** Widens a facet's box by all that lies within a margin of a node. */
  static void addNode(float[] boxes, FacetTree tree, int slot, int node, double margin) {
    int o = WIDTH * slot;
    double more = margin + ROUNDING;
    for (int k = 0; k < 3; k++) {
      boxes[o + k] = (float) Extremes.less(boxes[o + k], tree.low(node, k) - more);
      boxes[o + 3 + k] = (float) Extremes.greater(boxes[o + 3 + k], tree.high(node, k) + more);
    }
  }

  /** Widens a node's box by another, which may hold nothing. */
  private void enclose(int node, float[] from, int at) {
    if (from[WIDTH * at] > from[WIDTH * at + 3]) {
      return;
    }
    for (int k = 0; k < 3; k++) {
      nodes[WIDTH * node + k] = Extremes.less(nodes[WIDTH * node + k], from[WIDTH * at + k]);
      nodes[WIDTH * node + 3 + k] = Extremes.greater(nodes[WIDTH * node + 3 + k], from[WIDTH * at + 3 + k]);
    }
  }

  /** Whether there is no box at all. */
  public boolean isEmpty() {
    return nodes[WIDTH] > nodes[WIDTH + 3];
  }

  /** Whether a facet's box meets one of these. */
  public boolean meets(int slot) {
    return meets(1, tree.least(slot, 0), tree.least(slot, 1), tree.least(slot, 2), tree.most(slot, 0),
        tree.most(slot, 1), tree.most(slot, 2));
  }

  /** Whether one of these boxes holds all of a facet's. */
  public boolean holdsAll(int slot) {
    return holdsAll(1, slot);
  }

  private boolean holdsAll(int node, int slot) {
    if (!holds(nodes, node, slot)) {
      return false;
    }
    if (node < tree.leaves()) {
      return holdsAll(2 * node, slot) || holdsAll(2 * node + 1, slot);
    }
    int to = tree.endSlot(node);
    for (int of = tree.firstSlot(node); of < to; of++) {
      if (holds(boxes, of, slot)) {
        return true;
      }
    }
    return false;
  }

  private boolean holds(float[] b, int at, int slot) {
    int o = WIDTH * at;
    for (int k = 0; k < 3; k++) {
      if (b[o + k] > tree.least(slot, k) || b[o + 3 + k] < tree.most(slot, k)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a place lies in one of these. */
  public boolean holds(Vec p) {
    return meets(1, p.x(), p.y(), p.z(), p.x(), p.y(), p.z());
  }

  private boolean meets(int node, double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
    if (!overlaps(nodes, node, minX, minY, minZ, maxX, maxY, maxZ)) {
      return false;
    }
    if (node < tree.leaves()) {
      return meets(2 * node, minX, minY, minZ, maxX, maxY, maxZ)
          || meets(2 * node + 1, minX, minY, minZ, maxX, maxY, maxZ);
    }
    int from = tree.firstSlot(node);
    int to = tree.endSlot(node);
    for (int slot = from; slot < to; slot++) {
      if (overlaps(boxes, slot, minX, minY, minZ, maxX, maxY, maxZ)) {
        return true;
      }
    }
    return false;
  }

  private static boolean overlaps(float[] b, int at, double minX, double minY, double minZ, double maxX, double maxY,
      double maxZ) {
    int o = WIDTH * at;
    return b[o] <= maxX && b[o + 1] <= maxY && b[o + 2] <= maxZ && b[o + 3] >= minX && b[o + 4] >= minY
        && b[o + 5] >= minZ;
  }
}
