package outrigger.shapes.print;

import java.util.List;

/**
 * Finds where facets stand against each other nearer than a width, through the solid or through the air: nowhere else can
 * a ball narrower than that be held.
 *
 * <p>What holds a ball pulls it no way, so of its spokes two stand more than square to each other, and so do two of the
 * facets they rest on. Both touch the ball, so they are no farther apart than it is wide, and each lies on that side of
 * the other on which the ball does. Nodes of the tree are paired from the root down, both one level at a time, each pair
 * once; pairs far from each other or with all normals alike are dropped, and small ones whose facets all stand against
 * each other are taken whole, so that a finer mesh of the same thin place costs little more. On a part without thin
 * places nearly all pairs end high up.
 */
final class Facing {
  /** Facets whose normals' product is no less stand at most square; more than normals are rounded by. */
  private static final double SQUARE = -0.02;
  /** Subtrees that are given to threads. */
  private static final int PIECES = 64;
  private static final int AXES = 3;
  /** Nodes no larger than this part of the width are taken whole. */
  private static final double SMALL = 0.25;

  private final FacetTree tree;
  private final double side;
  private final double width;
  private final double margin;
  private final float[] regions;

  private Facing(FacetTree tree, boolean inward, double width, double margin) {
    this.tree = tree;
    side = inward ? -1 : 1;
    this.width = width;
    this.margin = margin;
    regions = NearRegions.empty(tree.size());
  }

  /**
   * The regions near both of two facets that stand against each other.
   *
   * @param inward whether through the solid, not the air
   * @param width how far apart they may be, mm
   * @param margin how far from each of both a region reaches, mm, at least the width
   */
  static NearRegions of(FacetTree tree, boolean inward, double width, double margin, Workers workers) {
    Facing facing = new Facing(tree, inward, width, margin);
    int first = Math.min(tree.leaves(), PIECES);
    workers.each(first, i -> {
      facing.start(first + i, first);
      return List.of();
    });
    return new NearRegions(tree, facing.regions);
  }

  /** Pairs a node with all of its level. */
  private void start(int node, int first) {
    int[] others = new int[first];
    int count = 0;
    for (int other = node; other < 2 * first; other++) {
      if (mayFace(node, other)) {
        others[count++] = other;
      }
    }
    descend(node, others, count);
  }

  /** Facets below a node lie in slots of their own, so threads do not meet. */
  private void descend(int node, int[] others, int count) {
    if (count == 0) {
      return;
    }
    if (node >= tree.leaves()) {
      pair(node, others, count);
      return;
    }
    int[] next = new int[2 * count];
    for (int child = 2 * node; child <= 2 * node + 1; child++) {
      int kept = 0;
      for (int i = 0; i < count; i++) {
        for (int other = 2 * others[i]; other <= 2 * others[i] + 1; other++) {
          if (other >= child && mayFace(child, other)) {
            next[kept] = other;
            kept += takesWhole(child, other) ? 0 : 1;
          }
        }
      }
      descend(child, next, kept);
    }
  }

  private boolean mayFace(int a, int b) {
    double gap = 0;
    for (int k = 0; k < AXES; k++) {
      double d = Math.max(tree.low(a, k) - tree.high(b, k), tree.low(b, k) - tree.high(a, k));
      gap += d > 0 ? d * d : 0;
    }
    // nothing is below an empty node: its distance is infinite
    return gap <= width * width && leastProduct(a, b) < SQUARE && mayReach(a, b) && mayReach(b, a);
  }

  /** Takes a pair of small nodes whose facets all stand against each other. */
  private boolean takesWhole(int a, int b) {
    double size = SMALL * width;
    double far = 0;
    for (int k = 0; k < AXES; k++) {
      if (tree.high(a, k) - tree.low(a, k) > size || tree.high(b, k) - tree.low(b, k) > size) {
        return false;
      }
      double d = Math.max(tree.high(a, k) - tree.low(b, k), tree.high(b, k) - tree.low(a, k));
      far += d * d;
    }
    if (far > width * width || mostProduct(a, b) >= SQUARE) {
      return false;
    }
    int first = a;
    while (first < tree.leaves()) {
      first *= 2;
    }
    NearRegions.addNodes(regions, tree, tree.firstSlot(first), a, b, margin);
    return true;
  }

  /** A number not below the product of any normal below a node and any below another. */
  private double mostProduct(int a, int b) {
    double product = 0;
    for (int k = 0; k < AXES; k++) {
      double low = tree.leastNormal(b, k);
      double high = tree.mostNormal(b, k);
      product -= Math.min(least(-tree.leastNormal(a, k), low, high), least(-tree.mostNormal(a, k), low, high));
    }
    return product;
  }

  /** A number not above the product of any normal below a node and any below another. */
  private double leastProduct(int a, int b) {
    double product = 0;
    for (int k = 0; k < AXES; k++) {
      double low = tree.leastNormal(b, k);
      double high = tree.mostNormal(b, k);
      product += Math.min(least(tree.leastNormal(a, k), low, high), least(tree.mostNormal(a, k), low, high));
    }
    return product;
  }

  /** Whether something below a node may lie before something below another, no farther than the width. */
  private boolean mayReach(int of, int to) {
    double low = 0;
    double high = 0;
    for (int k = 0; k < AXES; k++) {
      double from = side * (tree.low(to, k) - tree.high(of, k));
      double most = side * (tree.high(to, k) - tree.low(of, k));
      double least = tree.leastNormal(of, k);
      double greatest = tree.mostNormal(of, k);
      low += Math.min(least(from, least, greatest), least(most, least, greatest));
      high -= Math.min(least(-from, least, greatest), least(-most, least, greatest));
    }
    return high > 0 && low < width;
  }

  private static double least(double factor, double low, double high) {
    return factor * (factor > 0 ? low : high);
  }

  private void pair(int leaf, int[] others, int count) {
    int from = tree.firstSlot(leaf);
    int to = Math.min(from + FacetTree.PER_LEAF, tree.size());
    double[] box = new double[2 * AXES];
    for (int slot = from; slot < to; slot++) {
      for (int k = 0; k < AXES; k++) {
        box[k] = tree.least(slot, k);
        box[k + AXES] = tree.most(slot, k);
      }
      for (int i = 0; i < count; i++) {
        if (isNear(box, others[i])) {
          pairSlot(slot, others[i]);
        }
      }
    }
  }

  private void pairSlot(int slot, int leaf) {
    int first = tree.firstSlot(leaf);
    int end = Math.min(first + FacetTree.PER_LEAF, tree.size());
    for (int other = Math.max(first, slot + 1); other < end; other++) {
      if (isNear(slot, other) && tree.alongNormal(slot, tree.normalX(other), tree.normalY(other),
          tree.normalZ(other)) < SQUARE && reaches(slot, other) && reaches(other, slot)) {
        NearRegions.add(regions, tree, slot, other, margin);
      }
    }
  }

  private boolean isNear(double[] box, int node) {
    double gap = 0;
    for (int k = 0; k < AXES; k++) {
      double d = Math.max(box[k] - tree.high(node, k), tree.low(node, k) - box[k + AXES]);
      gap += d > 0 ? d * d : 0;
    }
    return gap <= width * width;
  }

  private boolean isNear(int a, int b) {
    double gap = 0;
    for (int k = 0; k < AXES; k++) {
      double d = Math.max(tree.least(a, k) - tree.most(b, k), tree.least(b, k) - tree.most(a, k));
      gap += d > 0 ? d * d : 0;
    }
    return gap <= width * width;
  }

  /** Whether some of a facet lies before another, no farther than the width. */
  private boolean reaches(int of, int to) {
    double nx = side * tree.normalX(of);
    double ny = side * tree.normalY(of);
    double nz = side * tree.normalZ(of);
    double level = tree.along(of, 0, nx, ny, nz);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int corner = 0; corner < AXES; corner++) {
      double height = tree.along(to, corner, nx, ny, nz) - level;
      low = Math.min(low, height);
      high = Math.max(high, height);
    }
    return high > 0 && low < width;
  }
}
