package outrigger.shapes.print.tree;

import java.util.function.IntConsumer;

/** Asks a tree of facets what lies farthest along a direction; looks only at nodes that reach as far. */
public final class FarSide {
  private final FacetTree tree;
  private final double ax;
  private final double ay;
  private final double az;
  private double most = Double.NEGATIVE_INFINITY;

  private FarSide(FacetTree tree, double ax, double ay, double az) {
    this.tree = tree;
    this.ax = ax;
    this.ay = ay;
    this.az = az;
  }

  /** The greatest product of any corner and a vector. */
  public static double most(FacetTree tree, double ax, double ay, double az) {
    FarSide side = new FarSide(tree, ax, ay, az);
    side.seek(1);
    return side.most;
  }

  private void seek(int node) {
    if (node >= tree.leaves()) {
      int from = tree.firstSlot(node);
      for (int slot = from; slot < tree.endSlot(node); slot++) {
        most = Math.max(most, most(slot));
      }
      return;
    }
    double a = reach(2 * node);
    double b = reach(2 * node + 1);
    int first = b > a ? 2 * node + 1 : 2 * node;
    if (Math.max(a, b) > most) {
      seek(first);
    }
    if (Math.min(a, b) > most) {
      seek(first ^ 1);
    }
  }

  private double most(int slot) {
    return Math.max(tree.along(slot, 0, ax, ay, az), Math.max(tree.along(slot, 1, ax, ay, az),
        tree.along(slot, 2, ax, ay, az)));
  }

  /** How far a node may reach: an empty one nowhere. */
  private double reach(int node) {
    return tree.low(node, 0) > tree.high(node, 0) ? Double.NEGATIVE_INFINITY : tree.mostAlong(node, ax, ay, az);
  }

  /** Gives each slot with a corner whose product with a vector is no less than a level. */
  public static void forEach(FacetTree tree, double[] along, double level, IntConsumer consumer) {
    new FarSide(tree, along[0], along[1], along[2]).give(1, level, consumer);
  }

  private void give(int node, double level, IntConsumer consumer) {
    if (reach(node) < level) {
      return;
    }
    if (node < tree.leaves()) {
      give(2 * node, level, consumer);
      give(2 * node + 1, level, consumer);
      return;
    }
    int from = tree.firstSlot(node);
    for (int slot = from; slot < tree.endSlot(node); slot++) {
      if (most(slot) >= level) {
        consumer.accept(slot);
      }
    }
  }
}
