package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Vec;

/** A plumb line through a part, above one place of the bed, and what of it lies there. */
public final class Plumb {
  private final FacetTree tree;
  private final double x;
  private final double y;
  private final double from;
  private final double to;
  /** Facets above that face up, less those that face down. */
  private int above;

  private Plumb(FacetTree tree, double x, double y, double from, double to) {
    this.tree = tree;
    this.x = x;
    this.y = y;
    this.from = from;
    this.to = to;
  }

  /** Whether a facet lies over a place of the bed, mm. */
  public static boolean isCovered(FacetTree tree, double x, double y) {
    return tree.size() > 0 && new Plumb(tree, x, y, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY).meetsBetween(1);
  }

  /** Whether a part is solid at a place all the way from one height up to another, all mm. */
  public static boolean isSolid(FacetTree tree, double x, double y, double from, double to) {
    Plumb plumb = new Plumb(tree, x, y, from, to);
    return tree.size() > 0 && !plumb.meetsBetween(1) && plumb.above > 0;
  }

  /** Whether a facet lies between the heights; counts those above. */
  private boolean meetsBetween(int node) {
    if (!(tree.low(node, 0) <= x && tree.high(node, 0) >= x && tree.low(node, 1) <= y && tree.high(node, 1) >= y
        && tree.high(node, 2) >= from)) {
      return false;
    }
    if (node < tree.leaves()) {
      return meetsBetween(2 * node) || meetsBetween(2 * node + 1);
    }
    for (int slot = tree.firstSlot(node); slot < tree.endSlot(node); slot++) {
      int side = side(slot);
      double height = side == 0 ? Double.NEGATIVE_INFINITY : height(slot);
      if (height > from && height < to) {
        return true;
      }
      above += height < to ? 0 : side;
    }
    return false;
  }

  /** 1 where a facet over the place faces up, -1 where it faces down, 0 where it does not lie over it. */
  private int side(int slot) {
    double a = side(slot, 0);
    double b = side(slot, 1);
    double c = side(slot, 2);
    return a >= 0 && b >= 0 && c >= 0 && a + b + c > 0 ? 1 : a <= 0 && b <= 0 && c <= 0 && a + b + c < 0 ? -1 : 0;
  }

  private double side(int slot, int k) {
    float[] p = tree.corners();
    int a = 9 * slot + 3 * k;
    int b = 9 * slot + 3 * ((k + 1) % 3);
    return ((double) p[b] - p[a]) * (y - p[a + 1]) - ((double) p[b + 1] - p[a + 1]) * (x - p[a]);
  }

  /** Height of a facet's plane at the place. */
  private double height(int slot) {
    Vec corner = tree.corner(slot, 0);
    Vec normal = tree.normal(slot);
    return corner.z() - ((x - corner.x()) * normal.x() + (y - corner.y()) * normal.y()) / normal.z();
  }
}
