package outrigger.shapes.print.tree;

import java.util.List;
import java.util.function.IntPredicate;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.facet.Cones;
import outrigger.shapes.print.facet.Extremes;

/**
 * Finds where facets stand against each other nearer than a width, through the solid or through the air: nowhere else can
 * a ball narrower than that be held.
 *
 * <p>What holds a ball hardly pulls it, so of the two to four spokes that matter two have a product of -1/3 or less, as in a
 * tetrahedron, or their sum would be longer. On a facet the spoke is its normal; on an edge or a corner it is a sum of the
 * normals there ({@link Cones}), so two facets' normals have a product that is -1/3 or less times the reaches of both. Both
 * touch the ball, so they are no farther apart than it is wide, and each lies on that side of the other on which the ball
 * does. Nodes of the tree are paired from the root down, both one level at a time, each pair once; pairs far from each
 * other, with all normals alike or of which neither lies before the other are dropped. All near a small node is taken once
 * one of its facets stands against another, so that a finer mesh of the same thin place costs little more. On a part
 * without thin places nearly all pairs end high up.
 */
public final class Facing {
  /** Facets whose normals' product is no less stand at most square; more than normals are rounded by. */
  static final double SQUARE = -0.02;
  /** Less than a third, by more than normals are rounded by. */
  static final double AGAINST = 0.32;
  /** Subtrees that are given to threads. */
  private static final int PIECES = 64;
  /**
   * A ball is held where its distance from the surface grows by less, mm a mm of way: sin(12.5 degrees). Sharper edges are
   * knife edges, thin indeed; blunter ones occur in good parts, as 30 and 45.
   */
  public static final double HELD = 0.21644;
  /** Far more than normals are rounded by. */
  private static final double MORE = 0.0035;
  /** So many nodes are worth asking for slabs, and whether a ball is held there at all: own choice, by trial. */
  private static final int MANY = 8;
  /** So many leaves left are worth asking how their edges and corners reach: own choice, by trial. */
  private static final int CROWDED = 32;
  private static final int AXES = 3;
  /** Nodes no larger are taken whole, mm: own choice, smaller ones save little. */
  private static final double SMALL = 2;

  private final FacetTree tree;
  private final float side;
  private final double width;
  private final double margin;
  private final float[] regions;
  private final Cones cones;
  private final FacingNodes nodes;
  private final OpenNodes open;

  private Facing(FacetTree tree, Cones cones, boolean inward, double width, double margin) {
    this.tree = tree;
    this.cones = cones;
    nodes = new FacingNodes(tree, cones, inward, width);
    side = inward ? -1 : 1;
    this.width = width;
    this.margin = margin;
    regions = NearRegions.empty(tree.size());
    open = new OpenNodes(tree, width, HELD + MORE);
  }

  /**
   * The regions near both of two facets that stand against each other.
   *
   * @param cones of the facets' edges and corners, on the same side
   * @param inward whether through the solid, not the air
   * @param width how far apart they may be, mm
   * @param margin how far from each of both a region reaches, mm, at least the width
   */
  public static NearRegions of(FacetTree tree, Cones cones, boolean inward, double width, double margin, Workers workers) {
    Facing facing = new Facing(tree, cones, inward, width, margin);
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
    FacingNodes.Bounds bounds = nodes.bounds(node);
    int count = 0;
    for (int other = node; other < 2 * first; other++) {
      if (bounds.mayFace(other)) {
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
      pair(node, others, count < CROWDED ? count : keep(others, count, nodes.bounds(node)::mayStandAgainst));
      return;
    }
    int[] next = new int[2 * count];
    for (int child = 2 * node; child <= 2 * node + 1; child++) {
      FacingNodes.Bounds bounds = nodes.bounds(child);
      int kept = 0;
      for (int i = 0; i < count; i++) {
        for (int other = 2 * others[i]; other <= 2 * others[i] + 1; other++) {
          if (other >= child && bounds.mayFace(other) && (count < MANY || bounds.mayStillReach(other))) {
            next[kept++] = other;
          }
        }
      }
      if (!open.isPast(child) || !takesWhole(child, next, kept)) {
        descend(child, next, shut(child, next, kept));
      }
    }
  }

  /** Drops the nodes about which no ball is held where many are left, and returns how many then are. */
  private int shut(int node, int[] others, int count) {
    if (count < MANY || !open.asks(node)) {
      return count;
    }
    return open.isOpen(node) ? 0 : keep(others, count, other -> !open.isOpen(other));
  }

  /** Drops what is not wanted, and returns how many are left. */
  private static int keep(int[] nodes, int count, IntPredicate wanted) {
    int kept = 0;
    for (int i = 0; i < count; i++) {
      nodes[kept] = nodes[i];
      kept += wanted.test(nodes[i]) ? 1 : 0;
    }
    return kept;
  }

  /** Takes all that is near a small node, if one of its facets stands against another. */
  private boolean takesWhole(int node, int[] others, int count) {
    if (!isSmall(node)) {
      return false;
    }
    int middle = middleSlot(node);
    for (int i = 0; i < count; i++) {
      if (standAgainst(middle, middleSlot(others[i]))) {
        takeNode(node);
        return true;
      }
    }
    return false;
  }

  private void takeNode(int node) {
    NearRegions.addNode(regions, tree, firstSlot(node), node, margin);
  }

  private boolean isSmall(int node) {
    return tree.high(node, 0) - tree.low(node, 0) <= SMALL && tree.high(node, 1) - tree.low(node, 1) <= SMALL
        && tree.high(node, 2) - tree.low(node, 2) <= SMALL;
  }

  /** The slot whose region takes what is near all of a node. */
  private int firstSlot(int node) {
    int first = node;
    while (first < tree.leaves()) {
      first *= 2;
    }
    return tree.firstSlot(first);
  }

  /** A slot in the middle of a node that holds some. */
  private int middleSlot(int node) {
    int from = node;
    int to = node;
    while (from < tree.leaves()) {
      from *= 2;
      to = 2 * to + 1;
    }
    return (tree.firstSlot(from) + tree.endSlot(to) - 1) / 2;
  }

  private void pair(int leaf, int[] others, int count) {
    boolean isSmall = isSmall(leaf);
    int end = tree.endSlot(leaf);
    for (int slot = tree.firstSlot(leaf); slot < end; slot++) {
      for (int i = 0; i < count; i++) {
        if ((isSmall || !NearRegions.holds(regions, tree, slot, others[i], margin)) && pairSlot(slot, others[i], isSmall)) {
          takeNode(leaf);
          return;
        }
      }
    }
  }

  /** Pairs a facet with those of a leaf; where the first that it stands against is enough, tells whether there is one. */
  private boolean pairSlot(int slot, int leaf, boolean firstIsEnough) {
    int end = tree.endSlot(leaf);
    for (int other = Math.max(tree.firstSlot(leaf), slot + 1); other < end; other++) {
      if (standAgainst(slot, other)) {
        if (firstIsEnough) {
          return true;
        }
        NearRegions.add(regions, tree, slot, other, margin);
      }
    }
    return false;
  }

  private boolean standAgainst(int a, int b) {
    double product = tree.alongNormal(b, tree.normalX(a), tree.normalY(a), tree.normalZ(a));
    return product < SQUARE && isNear(a, b) && reaches(a, b) && reaches(b, a)
        && (product < -AGAINST || -product * cones.reach(tree.facet(a)) * cones.reach(tree.facet(b)) > AGAINST);
  }

  private boolean isNear(int a, int b) {
    double gap = 0;
    for (int k = 0; k < AXES; k++) {
      double d = Extremes.greater(tree.least(a, k) - tree.most(b, k), tree.least(b, k) - tree.most(a, k));
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
      low = Extremes.less(low, height);
      high = Extremes.greater(high, height);
    }
    return high > 0 && low < width;
  }
}
