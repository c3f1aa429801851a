package outrigger.shapes.exact;

import java.util.Arrays;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;

/**
 * A bounding-volume tree over closed boxes with integer corners, which may be flat or single points.
 *
 * <p>Boxes are sorted along a space-filling curve through their centres (Morton order) and a perfect binary tree of
 * bounds is laid over them, four boxes a leaf: built in n log n, kept in two flat arrays, log n deep whatever the
 * boxes are. How much of it a query visits depends on how far boxes reach beyond their neighbours; no bound is
 * promised for that.
 *
 * <p>Same boxes in the same order, same order of answers. A built tree may be read by several threads.
 */
public final class BoxTree {
  /** Boxes a leaf. Any number would do; it weighs the tree's height against boxes compared in vain. */
  static final int PER_LEAF = 4;
  static final int WIDTH = 6;
  /** Leaves that are worth a thread. */
  private static final int AT_ONCE = 1 << 12;
  /** Branches, a power of 2, that a large tree is built in by several threads. Any such number would do. */
  private static final int BRANCHES = 16;
  /** Levels of the tree at which a search is divided for threads, into a hundred parts and more. */
  private static final int LEVELS = 6;

  /** Takes a pair of boxes that overlap or touch. */
  @FunctionalInterface
  public interface PairVisitor {
    /**
     * Takes one pair, {@code first < second}.
     *
     * @return whether to go on; false ends the search
     */
    boolean visit(int first, int second);
  }

  /** Knows which groups of boxes need not be compared. */
  @FunctionalInterface
  public interface GroupPairs {
    /** Whether no pair from two different groups is wanted, {@code first < second}. May be asked more than once. */
    boolean areClear(int first, int second);
  }

  /** Takes the pairs of one part of a search after the other. */
  public interface PartVisitor<R> extends PairVisitor {
    /** What came of the pairs since this was asked last. */
    R take();
  }

  private final int count;
  private final int leaves;
  private final int[] order;
  private final int[] boxes;
  private final int[] nodes;

  /** Over boxes in the order of their keys. */
  private BoxTree(int[] given, long[] keys, Workers workers) {
    count = keys.length;
    order = new int[count];
    boxes = new int[given.length];
    int needed = Math.max(1, (count + PER_LEAF - 1) / PER_LEAF);
    leaves = Integer.highestOneBit(2 * needed - 1);
    nodes = new int[2 * leaves * WIDTH];
    int branches = workers.threads() == 1 ? 1 : Math.max(1, Math.min(BRANCHES, leaves / AT_ONCE));
    workers.each(branches, i -> {
      fill(given, keys, leaves / branches * i, leaves / branches * (i + 1));
      return i;
    });
    for (int i = branches - 1; i > 0; i--) {
      enclose(i);
    }
  }

  /**
   * A tree over boxes.
   *
   * @param boxes least x, y, z and greatest x, y, z of each box; numbered from 0. Copied, and not changed
   */
  public static BoxTree of(int[] boxes) {
    return of(boxes, Workers.of(1));
  }

  /** The same, built by some threads. */
  public static BoxTree of(int[] boxes, Workers workers) {
    return new BoxTree(boxes, BoxOrder.keys(boxes, workers), workers);
  }

  /** A tree over boxes that come in a good order already: each near those before and after it, as along a loop. */
  public static BoxTree inOrder(int[] boxes) {
    long[] keys = new long[boxes.length / WIDTH];
    Arrays.setAll(keys, i -> i);
    return new BoxTree(boxes, keys, Workers.of(1));
  }

  /**
   * A tree over the boxes of facets.
   *
   * @param xyz x, y, z of each vertex
   * @param corners three vertex numbers a facet; box i is that of facet i
   */
  public static BoxTree ofFacets(int[] xyz, int[] corners) {
    return of(boxesOfFacets(xyz, corners));
  }

  /** The boxes of facets, as a tree over them takes them; arguments as above. */
  public static int[] boxesOfFacets(int[] xyz, int[] corners) {
    return boxesOfFacets(xyz, corners, Workers.of(1));
  }

  /** The same by some threads. */
  public static int[] boxesOfFacets(int[] xyz, int[] corners, Workers workers) {
    int[] boxes = new int[2 * corners.length];
    workers.split(corners.length / 3, PER_LEAF * AT_ONCE, (from, to) -> {
      for (int i = from; i < to; i++) {
        int a = 3 * corners[3 * i];
        int b = 3 * corners[3 * i + 1];
        int c = 3 * corners[3 * i + 2];
        for (int k = 0; k < 3; k++) {
          boxes[WIDTH * i + k] = Math.min(xyz[a + k], Math.min(xyz[b + k], xyz[c + k]));
          boxes[WIDTH * i + 3 + k] = Math.max(xyz[a + k], Math.max(xyz[b + k], xyz[c + k]));
        }
      }
    });
    return boxes;
  }

  /** Puts the boxes of the leaves of one branch in order and bounds all its nodes, from the leaves up. */
  private void fill(int[] given, long[] keys, int fromLeaf, int toLeaf) {
    for (int i = fromLeaf * PER_LEAF; i < Math.min(count, toLeaf * PER_LEAF); i++) {
      order[i] = BoxOrder.number(keys[i], count);
      System.arraycopy(given, WIDTH * order[i], boxes, WIDTH * i, WIDTH);
    }
    for (int leaf = fromLeaf; leaf < toLeaf; leaf++) {
      clear(nodes, leaves + leaf);
      for (int i = leaf * PER_LEAF; i < Math.min(count, (leaf + 1) * PER_LEAF); i++) {
        enclose(nodes, leaves + leaf, boxes, i);
      }
    }
    int from = leaves + fromLeaf;
    for (int width = (toLeaf - fromLeaf) / 2; width > 0; width /= 2) {
      from /= 2;
      for (int i = from; i < from + width; i++) {
        enclose(i);
      }
    }
  }

  /** Bounds a node by its children, 2i and 2i + 1; leaf k is node {@code leaves + k}. */
  private void enclose(int i) {
    System.arraycopy(nodes, 2 * i * WIDTH, nodes, i * WIDTH, WIDTH);
    enclose(nodes, i, nodes, 2 * i + 1);
  }

  /** Turns one of some boxes inside out, as that of nothing. */
  public static void clear(int[] boxes, int box) {
    Arrays.fill(boxes, WIDTH * box, WIDTH * box + 3, Integer.MAX_VALUE);
    Arrays.fill(boxes, WIDTH * box + 3, WIDTH * box + 6, Integer.MIN_VALUE);
  }

  private static void enclose(int[] to, int node, int[] from, int box) {
    for (int k = 0; k < 3; k++) {
      to[WIDTH * node + k] = Math.min(to[WIDTH * node + k], from[WIDTH * box + k]);
      to[WIDTH * node + 3 + k] = Math.max(to[WIDTH * node + 3 + k], from[WIDTH * box + 3 + k]);
    }
  }

  /** Number of boxes. */
  public int size() {
    return count;
  }

  /** Gives each box that overlaps or touches the closed box asked for, once. */
  public void forEachOverlap(long minX, long minY, long minZ, long maxX, long maxY, long maxZ, IntConsumer consumer) {
    for (int node = 1; node != 0;) {
      boolean in = overlaps(nodes, node, minX, minY, minZ, maxX, maxY, maxZ);
      if (in && node < leaves) {
        node = 2 * node;
        continue;
      }
      if (in) {
        int from = (node - leaves) * PER_LEAF;
        for (int i = from; i < Math.min(from + PER_LEAF, count); i++) {
          if (overlaps(boxes, i, minX, minY, minZ, maxX, maxY, maxZ)) {
            consumer.accept(order[i]);
          }
        }
      }
      node = following(node);
    }
  }

  /** The same for one of many boxes, its bounds found beside those of others. */
  public void forEachOverlap(int[] boxes, int box, IntConsumer consumer) {
    int o = WIDTH * box;
    forEachOverlap(boxes[o], boxes[o + 1], boxes[o + 2], boxes[o + 3], boxes[o + 4], boxes[o + 5], consumer);
  }

  /** The next node in depth-first order that is not below this one; 0 if there is none. */
  private static int following(int node) {
    int n = node >> Integer.numberOfTrailingZeros(~node);
    return n == 0 ? 0 : n + 1;
  }

  private static boolean overlaps(int[] b, int i, long minX, long minY, long minZ, long maxX, long maxY, long maxZ) {
    int o = WIDTH * i;
    return b[o] <= maxX && b[o + 3] >= minX && b[o + 1] <= maxY && b[o + 4] >= minY && b[o + 2] <= maxZ
        && b[o + 5] >= minZ;
  }

  /**
   * Gives each box that a ray parallel to an axis meets, once, in no order along the ray.
   *
   * @param axis the axis it runs along
   * @param u where it runs on the next axis (X, Y, Z, X, ...), in box units; need not be whole
   * @param v where it runs on the axis after that
   * @param from where it starts on its own axis
   * @param upward whether it runs towards greater coordinates
   */
  public void forEachAlong(Axis axis, double u, double v, double from, boolean upward, IntConsumer consumer) {
    long[] min = new long[3];
    long[] max = new long[3];
    int a = axis.ordinal();
    min[a] = upward ? (long) Math.ceil(from) : Long.MIN_VALUE;
    max[a] = upward ? Long.MAX_VALUE : (long) Math.floor(from);
    // A box with whole corners holds u exactly if it reaches down to floor(u) and up to ceil(u).
    min[(a + 1) % 3] = (long) Math.ceil(u);
    max[(a + 1) % 3] = (long) Math.floor(u);
    min[(a + 2) % 3] = (long) Math.ceil(v);
    max[(a + 2) % 3] = (long) Math.floor(v);
    forEachOverlap(min[0], min[1], min[2], max[0], max[1], max[2], consumer);
  }

  /**
   * Gives each pair of different boxes that overlap or touch, once.
   *
   * @return whether the search ran to its end, not stopped by the visitor
   */
  public boolean selfPairs(PairVisitor visitor) {
    return new BoxPairs(boxes, order, nodes, leaves, new int[0], (a, b) -> false, visitor).within(1);
  }

  /**
   * Gives each pair of boxes that overlap or touch and are not of one group, once. Where a group's boxes lie together, the
   * pairs within it cost nothing.
   *
   * @param groups group of each box, 0 or more; -1 for a box of no group
   * @param clear whose pairs may be left out as well; they may come all the same
   * @return whether the search ran to its end, not stopped by the visitor
   */
  public boolean pairsAcross(int[] groups, GroupPairs clear, PairVisitor visitor) {
    return new BoxPairs(boxes, order, nodes, leaves, groups, clear, visitor).within(1);
  }

  /**
   * The same on several threads: the search is divided into parts, and what comes of them is taken in their order. One after
   * the other they give the pairs as one search does. With one thread there is one part.
   *
   * @param clear may be asked by several threads
   * @param maker gives each thread a visitor; if one ends its part, others do not learn of it
   */
  public <R> void pairsAcross(int[] groups, GroupPairs clear, Workers workers,
      Supplier<? extends PartVisitor<R>> maker, Consumer<R> taker) {
    BoxPairs pairs = new BoxPairs(boxes, order, nodes, leaves, groups, clear, (i, j) -> true);
    BoxPairs.Parts parts = pairs.parts(workers.threads() == 1 ? 0 : LEVELS);
    workers.eachInOrder(parts.count(), () -> {
      PartVisitor<R> visitor = maker.get();
      BoxPairs search = pairs.by(visitor);
      return part -> {
        search.part(parts.one(part), parts.other(part));
        return visitor.take();
      };
    }, taker);
  }
}
