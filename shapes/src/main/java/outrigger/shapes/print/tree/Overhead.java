package outrigger.shapes.print.tree;

/** Looks straight up from the bed. */
public final class Overhead {
  private Overhead() {}

  /** Whether a facet lies over a place of the bed, mm. */
  public static boolean isCovered(FacetTree tree, double x, double y) {
    return tree.size() > 0 && isCovered(tree, 1, x, y);
  }

  private static boolean isCovered(FacetTree tree, int node, double x, double y) {
    if (!(tree.low(node, 0) <= x && tree.high(node, 0) >= x && tree.low(node, 1) <= y && tree.high(node, 1) >= y)) {
      return false;
    }
    if (node < tree.leaves()) {
      return isCovered(tree, 2 * node, x, y) || isCovered(tree, 2 * node + 1, x, y);
    }
    int from = tree.firstSlot(node);
    for (int slot = from; slot < tree.endSlot(node); slot++) {
      if (side(tree, slot, x, y) != 0) {
        return true;
      }
    }
    return false;
  }

  /** 1 where a facet over a place faces up, -1 where it faces down, 0 where it does not lie over it. */
  static int side(FacetTree tree, int slot, double x, double y) {
    double a = side(tree, slot, 0, x, y);
    double b = side(tree, slot, 1, x, y);
    double c = side(tree, slot, 2, x, y);
    return a >= 0 && b >= 0 && c >= 0 && a + b + c > 0 ? 1 : a <= 0 && b <= 0 && c <= 0 && a + b + c < 0 ? -1 : 0;
  }

  private static double side(FacetTree tree, int slot, int k, double x, double y) {
    float[] p = tree.corners();
    int a = 9 * slot + 3 * k;
    int b = 9 * slot + 3 * ((k + 1) % 3);
    return ((double) p[b] - p[a]) * (y - p[a + 1]) - ((double) p[b + 1] - p[a + 1]) * (x - p[a]);
  }
}
