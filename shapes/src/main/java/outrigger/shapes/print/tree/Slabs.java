package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Extremes;

/**
 * How far what lies below each node of a {@link FacetTree} reaches along the middle of its normals: a leaning patch fills
 * little of its box, but lies in a thin slab.
 *
 * <p>A node's own slab is known at the leaves. Above, a child's is turned to the parent's middle: that moves no place in the
 * child's box by more than the box's half sizes times the difference of the middles. Whatever is smaller is taken, that or
 * what the box alone says.
 */
final class Slabs {
  private static final int AXES = 3;
  private static final int WIDTH = TreeBounds.WIDTH;

  private final float[] boxes;
  private final float[] normals;
  private final float[] least;
  private final float[] most;

  /**
   * Of a tree's nodes.
   *
   * @param corners nine numbers a slot, mm
   * @param boxes of all nodes, mm
   * @param normals bounds of the normals below them
   * @param starts first slot of each leaf, and the end
   */
  Slabs(float[] corners, float[] boxes, float[] normals, int... starts) {
    this.boxes = boxes;
    this.normals = normals;
    int leaves = starts.length - 1;
    least = new float[2 * leaves];
    most = new float[2 * leaves];
    for (int leaf = leaves; leaf < 2 * leaves; leaf++) {
      lay(leaf, corners, starts[leaf - leaves], starts[leaf - leaves + 1]);
    }
    for (int node = leaves - 1; node > 0; node--) {
      gather(node);
    }
  }

  /** The middle of the normals below a node along an axis. */
  float middle(int node, int axis) {
    return (normals[WIDTH * node + axis] + normals[WIDTH * node + AXES + axis]) / 2;
  }

  /** No more than the product of that and any place below the node, but for rounding. */
  float least(int node) {
    return least[node];
  }

  /** No less than it. */
  float most(int node) {
    return most[node];
  }

  private void lay(int leaf, float[] corners, int from, int to) {
    float x = middle(leaf, 0);
    float y = middle(leaf, 1);
    float z = middle(leaf, 2);
    float low = Float.POSITIVE_INFINITY;
    float high = Float.NEGATIVE_INFINITY;
    for (int o = 9 * from; o < 9 * to; o += AXES) {
      float along = corners[o] * x + corners[o + 1] * y + corners[o + 2] * z;
      low = Extremes.less(low, along);
      high = Extremes.greater(high, along);
    }
    least[leaf] = low;
    most[leaf] = high;
  }

  private void gather(int node) {
    least[node] = Float.POSITIVE_INFINITY;
    most[node] = Float.NEGATIVE_INFINITY;
    for (int child = 2 * node; child <= 2 * node + 1; child++) {
      if (least[child] <= most[child]) {
        take(node, child);
      }
    }
  }

  private void take(int node, int child) {
    float turned = 0;
    float spread = 0;
    float box = 0;
    float boxSpread = 0;
    for (int k = 0; k < AXES; k++) {
      int o = WIDTH * child + k;
      float place = (boxes[o] + boxes[o + AXES]) / 2;
      float half = (boxes[o + AXES] - boxes[o]) / 2;
      float own = middle(node, k);
      float turn = own - middle(child, k);
      turned += place * turn;
      spread += half * Math.abs(turn);
      box += place * own;
      boxSpread += half * Math.abs(own);
    }
    least[node] = Extremes.less(least[node], Extremes.greater(least[child] + turned - spread, box - boxSpread));
    most[node] = Extremes.greater(most[node], Extremes.less(most[child] + turned + spread, box + boxSpread));
  }
}
