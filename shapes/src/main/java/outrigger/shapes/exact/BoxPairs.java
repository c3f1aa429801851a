package outrigger.shapes.exact;

import java.util.Arrays;

/** One search of a box tree for pairs that overlap or touch, those within a group left out. */
final class BoxPairs {
  /** Marks a node whose boxes are not all of one group; as a box's group it means none. */
  private static final int MIXED = -1;
  /** Marks a node without boxes. */
  private static final int NONE = -2;

  /** Pairs of nodes. */
  static final class Parts {
    private int[] nodes = new int[64];
    private int count;

    private void add(int a, int b) {
      if (2 * count == nodes.length) {
        nodes = Arrays.copyOf(nodes, 2 * nodes.length);
      }
      nodes[2 * count] = a;
      nodes[2 * count++ + 1] = b;
    }

    int count() {
      return count;
    }

    int one(int part) {
      return nodes[2 * part];
    }

    int other(int part) {
      return nodes[2 * part + 1];
    }
  }

  private final int[] boxes;
  private final int[] order;
  private final int[] nodes;
  private final int leaves;
  private final int[] groups;
  private final int[] nodeGroups;
  private final BoxTree.GroupPairs clear;
  private final BoxTree.PairVisitor visitor;

  /**
   * Prepares a search.
   *
   * @param groups group of each box, or nothing at all for a search without groups
   */
  BoxPairs(int[] boxes, int[] order, int[] nodes, int leaves, int[] groups, BoxTree.GroupPairs clear,
      BoxTree.PairVisitor visitor) {
    this.boxes = boxes;
    this.order = order;
    this.nodes = nodes;
    this.leaves = leaves;
    this.clear = clear;
    this.visitor = visitor;
    this.groups = new int[order.length];
    nodeGroups = new int[2 * leaves];
    if (groups.length == 0) {
      Arrays.fill(this.groups, MIXED);
      Arrays.fill(nodeGroups, MIXED);
    } else {
      spread(groups);
    }
  }

  /** The same search for another visitor. */
  private BoxPairs(BoxPairs like, BoxTree.PairVisitor visitor) {
    boxes = like.boxes;
    order = like.order;
    nodes = like.nodes;
    leaves = like.leaves;
    groups = like.groups;
    nodeGroups = like.nodeGroups;
    clear = like.clear;
    this.visitor = visitor;
  }

  BoxPairs by(BoxTree.PairVisitor other) {
    return new BoxPairs(this, other);
  }

  private void spread(int[] given) {
    Arrays.fill(nodeGroups, NONE);
    for (int i = 0; i < order.length; i++) {
      groups[i] = given[order[i]];
      mix(leaves + i / BoxTree.PER_LEAF, groups[i]);
    }
    for (int node = 2 * leaves - 1; node > 1; node--) {
      mix(node / 2, nodeGroups[node]);
    }
  }

  private void mix(int node, int group) {
    if (group != NONE) {
      nodeGroups[node] = nodeGroups[node] == NONE || nodeGroups[node] == group ? group : MIXED;
    }
  }

  private static boolean isOne(int group, int other) {
    return group >= 0 && group == other;
  }

  private boolean areClear(int group, int other) {
    return group >= 0 && other >= 0 && clear.areClear(Math.min(group, other), Math.max(group, other));
  }

  /**
   * Divides the search into parts, pairs of nodes, which done in their order are all of it.
   *
   * @param levels how far down the tree
   */
  Parts parts(int levels) {
    Parts parts = new Parts();
    divide(1, 1, levels, parts);
    return parts;
  }

  private void divide(int a, int b, int levels, Parts parts) {
    if (a != b && (isOne(nodeGroups[a], nodeGroups[b]) || !overlap(nodes, a, nodes, b))) {
      return;
    }
    if (levels == 0 || a >= leaves) {
      parts.add(a, b);
    } else if (a == b) {
      divide(2 * a, 2 * a, levels - 1, parts);
      divide(2 * a + 1, 2 * a + 1, levels - 1, parts);
      divide(2 * a, 2 * a + 1, levels - 1, parts);
    } else {
      divide(2 * a, 2 * b, levels - 1, parts);
      divide(2 * a, 2 * b + 1, levels - 1, parts);
      divide(2 * a + 1, 2 * b, levels - 1, parts);
      divide(2 * a + 1, 2 * b + 1, levels - 1, parts);
    }
  }

  /** Does one part; false if the visitor ended it. */
  boolean part(int a, int b) {
    return a == b ? within(a) : between(a, b);
  }

  boolean within(int node) {
    if (nodeGroups[node] >= 0) {
      return true;
    }
    if (node < leaves) {
      return within(2 * node) && within(2 * node + 1) && between(2 * node, 2 * node + 1);
    }
    int to = end(node);
    for (int i = start(node); i < to; i++) {
      if (!pairs(i, i + 1, to)) {
        return false;
      }
    }
    return true;
  }

  private int start(int leaf) {
    return (leaf - leaves) * BoxTree.PER_LEAF;
  }

  private int end(int leaf) {
    return Math.min(start(leaf) + BoxTree.PER_LEAF, order.length);
  }

  /** Both nodes stand on the same level, the tree being perfect. */
  private boolean between(int a, int b) {
    if (isOne(nodeGroups[a], nodeGroups[b]) || !overlap(nodes, a, nodes, b) || areClear(nodeGroups[a], nodeGroups[b])) {
      return true;
    }
    if (a < leaves) {
      return between(2 * a, 2 * b) && between(2 * a, 2 * b + 1) && between(2 * a + 1, 2 * b)
          && between(2 * a + 1, 2 * b + 1);
    }
    for (int i = start(a); i < end(a); i++) {
      if (overlap(boxes, i, nodes, b) && !pairs(i, start(b), end(b))) {
        return false;
      }
    }
    return true;
  }

  private boolean pairs(int i, int from, int to) {
    for (int j = from; j < to; j++) {
      if (!isOne(groups[i], groups[j]) && overlap(boxes, i, boxes, j)
          && !visitor.visit(Math.min(order[i], order[j]), Math.max(order[i], order[j]))) {
        return false;
      }
    }
    return true;
  }

  private static boolean overlap(int[] a, int i, int[] b, int j) {
    int p = BoxTree.WIDTH * i;
    int q = BoxTree.WIDTH * j;
    return a[p] <= b[q + 3] && a[p + 3] >= b[q] && a[p + 1] <= b[q + 4] && a[p + 4] >= b[q + 1]
        && a[p + 2] <= b[q + 5] && a[p + 5] >= b[q + 2];
  }
}
