package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Cones;
import outrigger.shapes.print.facet.Extremes;

/** Whether any facets below two nodes of a tree may stand against each other, told by the bounds of the nodes alone. */
final class FacingNodes {
  /** Far more than rounding to 32 bits puts places off, mm. */
  static final double ROUNDING = 1e-3;

  private final float[] boxes;
  private final float[] normals;
  private final FacingSlabs slabs;
  private final LeafReaches reaches;
  private final float side;
  private final double width;
  private final double reach2;

  /**
   * Of a tree.
   *
   * @param cones of the facets' edges and corners, on the same side
   * @param inward whether through the solid, not the air
   * @param width how far apart facets may be, mm
   */
  FacingNodes(FacetTree tree, Cones cones, boolean inward, double width) {
    boxes = tree.boxes();
    normals = tree.normalBounds();
    reaches = new LeafReaches(tree, cones);
    side = inward ? -1 : 1;
    this.width = width;
    slabs = new FacingSlabs(tree, side, width);
    reach2 = (width + ROUNDING) * (width + ROUNDING);
  }

  /** The bounds of a node. */
  Bounds bounds(int node) {
    return new Bounds(node);
  }

  /** The bounds of a node, read once to be held against those of many others. */
  final class Bounds {
    private final int node;
    private final float lowX;
    private final float lowY;
    private final float lowZ;
    private final float highX;
    private final float highY;
    private final float highZ;
    private final float leastX;
    private final float leastY;
    private final float leastZ;
    private final float mostX;
    private final float mostY;
    private final float mostZ;

    private Bounds(int node) {
      this.node = node;
      int o = FacetTree.WIDTH * node;
      lowX = boxes[o];
      lowY = boxes[o + 1];
      lowZ = boxes[o + 2];
      highX = boxes[o + 3];
      highY = boxes[o + 4];
      highZ = boxes[o + 5];
      leastX = normals[o];
      leastY = normals[o + 1];
      leastZ = normals[o + 2];
      mostX = normals[o + 3];
      mostY = normals[o + 4];
      mostZ = normals[o + 5];
    }

    /** Whether facets of this node and another may stand against each other; none does with those of an empty one. */
    boolean mayFace(int other) {
      int o = FacetTree.WIDTH * other;
      float dx = Extremes.greater(0, Extremes.greater(lowX - boxes[o + 3], boxes[o] - highX));
      float dy = Extremes.greater(0, Extremes.greater(lowY - boxes[o + 4], boxes[o + 1] - highY));
      float dz = Extremes.greater(0, Extremes.greater(lowZ - boxes[o + 5], boxes[o + 2] - highZ));
      return dx * dx + dy * dy + dz * dz <= reach2 && leastProduct(o) < Facing.SQUARE && mayReach(o);
    }

    /** The same by slabs: worth its time where many would be left. */
    boolean mayStillReach(int other) {
      return slabs.mayReach(node, other) && slabs.mayReach(other, node);
    }

    /** Of two leaves, whether the reaches of edges and corners let facets of both stand against each other. */
    boolean mayStandAgainst(int leaf) {
      float product = leastProduct(FacetTree.WIDTH * leaf);
      return product < -Facing.AGAINST || -product * reaches.of(node) * reaches.of(leaf) > Facing.AGAINST;
    }

    private float leastProduct(int o) {
      return product(leastX, mostX, normals[o], normals[o + 3]) + product(leastY, mostY, normals[o + 1], normals[o + 4])
          + product(leastZ, mostZ, normals[o + 2], normals[o + 5]);
    }

    /** Whether something of each may lie before something of the other, no farther than the width. */
    private boolean mayReach(int o) {
      float fromX = side * (boxes[o] - highX);
      float fromY = side * (boxes[o + 1] - highY);
      float fromZ = side * (boxes[o + 2] - highZ);
      float toX = side * (boxes[o + 3] - lowX);
      float toY = side * (boxes[o + 4] - lowY);
      float toZ = side * (boxes[o + 5] - lowZ);
      float low = product(fromX, toX, leastX, mostX) + product(fromY, toY, leastY, mostY)
          + product(fromZ, toZ, leastZ, mostZ);
      float high = -product(-toX, -fromX, leastX, mostX) - product(-toY, -fromY, leastY, mostY)
          - product(-toZ, -fromZ, leastZ, mostZ);
      if (!(high > -ROUNDING && low < width + ROUNDING)) {
        return false;
      }
      float back = product(-toX, -fromX, normals[o], normals[o + 3]) + product(-toY, -fromY, normals[o + 1], normals[o + 4])
          + product(-toZ, -fromZ, normals[o + 2], normals[o + 5]);
      float far = -product(fromX, toX, normals[o], normals[o + 3]) - product(fromY, toY, normals[o + 1], normals[o + 4])
          - product(fromZ, toZ, normals[o + 2], normals[o + 5]);
      return far > -ROUNDING && back < width + ROUNDING;
    }
  }

  /** The least product of two numbers, each between bounds in either order. */
  private static float product(float a, float b, float c, float d) {
    return Extremes.less(Extremes.less(a * c, a * d), Extremes.less(b * c, b * d));
  }
}
