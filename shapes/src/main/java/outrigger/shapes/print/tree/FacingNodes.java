package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Cones;

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

  /**
   * The bounds of a node, read once to be held against those of many others.
   *
   * <p>All numbers are doubled: the middle of two bounds is their sum, and a half of what they span their difference. A
   * product of two numbers within bounds lies no farther from that of their middles than each middle times the other's half
   * and the product of the halves. Numbers of an empty node are not comparable, so nothing may face it.
   */
  final class Bounds {
    private final int node;
    private final float atX;
    private final float atY;
    private final float atZ;
    private final float sizeX;
    private final float sizeY;
    private final float sizeZ;
    private final float normalX;
    private final float normalY;
    private final float normalZ;
    private final float playX;
    private final float playY;
    private final float playZ;

    private Bounds(int node) {
      this.node = node;
      int o = FacetTree.WIDTH * node;
      atX = boxes[o] + boxes[o + 3];
      atY = boxes[o + 1] + boxes[o + 4];
      atZ = boxes[o + 2] + boxes[o + 5];
      sizeX = boxes[o + 3] - boxes[o];
      sizeY = boxes[o + 4] - boxes[o + 1];
      sizeZ = boxes[o + 5] - boxes[o + 2];
      normalX = normals[o] + normals[o + 3];
      normalY = normals[o + 1] + normals[o + 4];
      normalZ = normals[o + 2] + normals[o + 5];
      playX = normals[o + 3] - normals[o];
      playY = normals[o + 4] - normals[o + 1];
      playZ = normals[o + 5] - normals[o + 2];
    }

    /** Whether facets of this node and another may stand against each other; none does with those of an empty one. */
    boolean mayFace(int other) {
      int o = FacetTree.WIDTH * other;
      float wayX = boxes[o] + boxes[o + 3] - atX;
      float wayY = boxes[o + 1] + boxes[o + 4] - atY;
      float wayZ = boxes[o + 2] + boxes[o + 5] - atZ;
      float bothX = boxes[o + 3] - boxes[o] + sizeX;
      float bothY = boxes[o + 4] - boxes[o + 1] + sizeY;
      float bothZ = boxes[o + 5] - boxes[o + 2] + sizeZ;
      float gapX = gap(Math.abs(wayX) - bothX);
      float gapY = gap(Math.abs(wayY) - bothY);
      float gapZ = gap(Math.abs(wayZ) - bothZ);
      // each gap is four times as long
      if (!(gapX * gapX + gapY * gapY + gapZ * gapZ <= 16 * reach2) || !(leastProduct(o) < Facing.SQUARE)) {
        return false;
      }
      return isBefore(normalX, normalY, normalZ, playX, playY, playZ, side, wayX, wayY, wayZ, bothX, bothY, bothZ)
          && isBefore(normals[o] + normals[o + 3], normals[o + 1] + normals[o + 4], normals[o + 2] + normals[o + 5],
          normals[o + 3] - normals[o], normals[o + 4] - normals[o + 1], normals[o + 5] - normals[o + 2], -side, wayX, wayY,
          wayZ, bothX, bothY, bothZ);
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

    /** No more than the product of any two normals, one below each node. */
    private float leastProduct(int o) {
      float otherX = normals[o] + normals[o + 3];
      float otherY = normals[o + 1] + normals[o + 4];
      float otherZ = normals[o + 2] + normals[o + 5];
      float otherPlayX = normals[o + 3] - normals[o];
      float otherPlayY = normals[o + 4] - normals[o + 1];
      float otherPlayZ = normals[o + 5] - normals[o + 2];
      float product = normalX * otherX + normalY * otherY + normalZ * otherZ;
      float play = (Math.abs(normalX) + playX) * otherPlayX + playX * Math.abs(otherX)
          + (Math.abs(normalY) + playY) * otherPlayY + playY * Math.abs(otherY)
          + (Math.abs(normalZ) + playZ) * otherPlayZ + playZ * Math.abs(otherZ);
      return (product - play) / 4;
    }
  }

  /** Twice a number above 0; 0 for others. */
  private static float gap(float number) {
    return number + Math.abs(number);
  }

  /** Whether a way within bounds may lead along a normal within bounds, no farther than the width; all numbers doubled. */
  private boolean isBefore(float normalX, float normalY, float normalZ, float playX, float playY, float playZ, float along,
      float wayX, float wayY, float wayZ, float bothX, float bothY, float bothZ) {
    float height = along * (wayX * normalX + wayY * normalY + wayZ * normalZ);
    float play = (Math.abs(wayX) + bothX) * playX + bothX * Math.abs(normalX)
        + (Math.abs(wayY) + bothY) * playY + bothY * Math.abs(normalY)
        + (Math.abs(wayZ) + bothZ) * playZ + bothZ * Math.abs(normalZ);
    return height + play > -4 * ROUNDING && height - play < 4 * (width + ROUNDING);
  }
}
