package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Extremes;

/** Whether something of one node may lie before something of another, told by their {@link Slabs}. */
final class FacingSlabs {
  private static final int AXES = 3;
  private static final int WIDTH = TreeBounds.WIDTH;

  private final Slabs slabs;
  private final float[] boxes;
  private final float[] normals;
  private final float side;
  private final double width;

  /**
   * Of a tree.
   *
   * @param side 1 for the air before facets, -1 for the solid behind them
   * @param width how far apart facets may be, mm
   */
  FacingSlabs(FacetTree tree, float side, double width) {
    slabs = tree.slabs();
    boxes = tree.boxes();
    normals = tree.normalBounds();
    this.side = side;
    this.width = width;
  }

  /**
   * Whether a place below a node may lie on the side measured of the plane of a facet below another, no farther than the
   * width.
   *
   * <p>Along the middle of the normals here a place there has the height that it has along the middle there, turned round,
   * and what these middles differ by. No normal here differs from its middle by more than half the bounds' size.
   */
  boolean mayReach(int from, int to) {
    float other = 0;
    float spread = 0;
    for (int k = 0; k < AXES; k++) {
      int f = WIDTH * from + k;
      int t = WIDTH * to + k;
      float differ = slabs.middle(from, k) + slabs.middle(to, k);
      other += (boxes[t] + boxes[t + AXES]) * differ;
      spread += (boxes[t + AXES] - boxes[t]) * (differ < 0 ? -differ : differ);
      float farthest = Extremes.greater(boxes[t + AXES] - boxes[f], boxes[f + AXES] - boxes[t]);
      spread += farthest * (normals[f + AXES] - normals[f]);
    }
    float least = (other - spread) / 2 - slabs.most(to) - slabs.most(from);
    float most = (other + spread) / 2 - slabs.least(to) - slabs.least(from);
    float low = side > 0 ? least : -most;
    float high = side > 0 ? most : -least;
    return high > -FacingNodes.ROUNDING && low < width + FacingNodes.ROUNDING;
  }
}
