package outrigger.shapes.check;

import java.util.Arrays;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.Sign;

/**
 * Closed loops of half-edges seen along an axis: which way each runs, and whether no two edges meet but at common corners.
 *
 * <p>A loop that turns one way only, and once round in all, is convex and meets itself nowhere. Any other is compared with
 * itself by a tree over its edges. Two loops are compared where edges of the wider one, such as an outer loop, meet the
 * box of the other.
 */
final class Loops {
  private final Surface surface;
  private final HalfEdges edges;
  private final int u;
  private final int v;
  private final int[] halves;
  private final int[] starts;
  private final int[] boxes;
  private final BoxTree[] trees;

  /**
   * Loops one after the other.
   *
   * @param axis 0 to 2, the axis they are seen along, from its far end
   * @param halves half-edges, each starting where the one before it ends, but for the first of a loop
   * @param starts places in {@code halves} at which the loops start, and the end of the last
   */
  Loops(Surface surface, HalfEdges edges, int axis, int[] halves, int[] starts) {
    this.surface = surface;
    this.edges = edges;
    u = (axis + 1) % 3;
    v = (axis + 2) % 3;
    this.halves = halves;
    this.starts = starts;
    boxes = new int[6 * count()];
    trees = new BoxTree[count()];
  }

  private int count() {
    return starts.length - 1;
  }

  /** Whether one loop alone runs counter-clockwise ({@code facing} 1) or clockwise (-1), and no two edges meet. */
  boolean areSimple(int facing) {
    int along = 0;
    for (int i = 0; i < count(); i++) {
      int way = wayIfConvex(i);
      if (way == 0) {
        way = Long.signum(doubledArea(i));
        if (way == 0 || !keepsApart(i)) {
          return false;
        }
      }
      along += way == facing ? 1 : 0;
    }
    return along == 1 && (count() == 1 || keepApart());
  }

  /** Sums of products may wrap: a simple loop's area is below 2^52, so that the last one is right. */
  private long doubledArea(int loop) {
    int[] p = surface.xyz();
    long sum = 0;
    int o = 3 * edges.from(halves[starts[loop]]);
    for (int i = starts[loop]; i < starts[loop + 1]; i++) {
      int a = 3 * edges.from(halves[i]);
      int b = 3 * edges.to(halves[i]);
      sum += (long) (p[a + u] - p[o + u]) * (p[b + v] - p[o + v])
          - (long) (p[a + v] - p[o + v]) * (p[b + u] - p[o + u]);
    }
    return sum;
  }

  /** Which way a convex loop runs: 1 counter-clockwise, -1 clockwise; 0 for any that is not convex. */
  private int wayIfConvex(int loop) {
    int[] p = surface.xyz();
    int last = halves[starts[loop + 1] - 1];
    long dx = p[3 * edges.to(last) + u] - p[3 * edges.from(last) + u];
    long dy = p[3 * edges.to(last) + v] - p[3 * edges.from(last) + v];
    boolean wasUpward = isUpward(dx, dy);
    int rounds = 0;
    int way = 0;
    for (int i = starts[loop]; i < starts[loop + 1]; i++) {
      int a = 3 * edges.from(halves[i]);
      int b = 3 * edges.to(halves[i]);
      long ex = p[b + u] - p[a + u];
      long ey = p[b + v] - p[a + v];
      int turn = Long.signum(dx * ey - dy * ex);
      if (turn == 0 ? dx * ex + dy * ey < 0 : turn == -way) {
        return 0;
      }
      way = turn == 0 ? way : turn;
      boolean upward = isUpward(ex, ey);
      rounds += upward && !wasUpward ? 1 : 0;
      wasUpward = upward;
      dx = ex;
      dy = ey;
    }
    return rounds == 1 ? way : 0;
  }

  /** One half of all directions. */
  private static boolean isUpward(long dx, long dy) {
    return dy > 0 || dy == 0 && dx > 0;
  }

  private boolean keepsApart(int loop) {
    int from = starts[loop];
    return tree(loop).selfPairs((i, j) -> keepApart(halves[from + i], halves[from + j]));
  }

  /** The edges of a loop, in their order round it. */
  private BoxTree tree(int loop) {
    if (trees[loop] == null) {
      int from = starts[loop];
      int[] b = new int[6 * (starts[loop + 1] - from)];
      for (int i = from; i < starts[loop + 1]; i++) {
        enclose(b, i - from, i, i + 1);
      }
      trees[loop] = BoxTree.inOrder(b);
    }
    return trees[loop];
  }

  /** Box of the edges at places from one up to before another. */
  private void enclose(int[] to, int box, int start, int end) {
    int[] p = surface.xyz();
    int o = 6 * box;
    Arrays.fill(to, o, o + 2, Integer.MAX_VALUE);
    Arrays.fill(to, o + 3, o + 5, Integer.MIN_VALUE);
    for (int i = start; i < end; i++) {
      int a = 3 * edges.from(halves[i]);
      int b = 3 * edges.to(halves[i]);
      to[o] = Math.min(to[o], Math.min(p[a + u], p[b + u]));
      to[o + 1] = Math.min(to[o + 1], Math.min(p[a + v], p[b + v]));
      to[o + 3] = Math.max(to[o + 3], Math.max(p[a + u], p[b + u]));
      to[o + 4] = Math.max(to[o + 4], Math.max(p[a + v], p[b + v]));
    }
  }

  /** Whether no loop meets another. */
  private boolean keepApart() {
    for (int i = 0; i < count(); i++) {
      enclose(boxes, i, starts[i], starts[i + 1]);
    }
    return BoxTree.of(boxes)
        .selfPairs((i, j) -> breadth(i) < breadth(j) ? loopsKeepApart(j, i) : loopsKeepApart(i, j));
  }

  private long breadth(int loop) {
    return (long) boxes[6 * loop + 3] - boxes[6 * loop] + boxes[6 * loop + 4] - boxes[6 * loop + 1];
  }

  private boolean loopsKeepApart(int wider, int other) {
    boolean[] meet = new boolean[1];
    int o = 6 * other;
    tree(wider).forEachOverlap(boxes[o], boxes[o + 1], 0, boxes[o + 3], boxes[o + 4], 0, i -> {
      for (int j = starts[other]; j < starts[other + 1] && !meet[0]; j++) {
        meet[0] = !keepApart(halves[starts[wider] + i], halves[j]);
      }
    });
    return !meet[0];
  }

  /** Whether two edges have at most a common end in common. */
  private boolean keepApart(int g, int h) {
    int a = edges.from(g);
    int b = edges.to(g);
    int c = edges.from(h);
    int d = edges.to(h);
    if (b == c) {
      return !folds(a, b, d);
    }
    if (d == a) {
      return !folds(c, a, b);
    }
    return boxesKeepApart(3 * a, 3 * b, 3 * c, 3 * d, u) || boxesKeepApart(3 * a, 3 * b, 3 * c, 3 * d, v)
        || turn(a, b, c) * turn(a, b, d) > 0 || turn(c, d, a) * turn(c, d, b) > 0;
  }

  private boolean boxesKeepApart(int a, int b, int c, int d, int k) {
    int[] p = surface.xyz();
    return Math.max(p[a + k], p[b + k]) < Math.min(p[c + k], p[d + k])
        || Math.max(p[c + k], p[d + k]) < Math.min(p[a + k], p[b + k]);
  }

  /** Whether the way from a to b goes back over itself to c. */
  private boolean folds(int a, int b, int c) {
    if (turn(a, b, c) != 0) {
      return false;
    }
    int[] p = surface.xyz();
    return (long) (p[3 * a + u] - p[3 * b + u]) * (p[3 * c + u] - p[3 * b + u])
        + (long) (p[3 * a + v] - p[3 * b + v]) * (p[3 * c + v] - p[3 * b + v]) > 0;
  }

  private int turn(int a, int b, int c) {
    int[] p = surface.xyz();
    return Sign.turn(p[3 * a + u], p[3 * a + v], p[3 * b + u], p[3 * b + v], p[3 * c + u], p[3 * c + v]);
  }
}
