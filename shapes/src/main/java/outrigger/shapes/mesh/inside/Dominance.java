package outrigger.shapes.mesh.inside;

/**
 * Which operands settle an expression for which others: inside the one, or outside of it, it cannot matter where the others
 * begin and end.
 *
 * <p>In a union any part that holds settles it for all the rest, in a cut any cutter does; in a common part one that does
 * not hold; and so on upwards as long as a part that holds, or one that does not, settles the whole. Each operand thus has a
 * highest node that it settles by holding, and one by not holding, and it dominates all other operands below that. One that
 * stands at several places has as many such nodes, and is dominated if it is below one of another's at all its places.
 */
final class Dominance {
  /** Of each operand its first node, and of each node the next one of the same operand; -1 after the last. */
  private final int[] leaf;
  private final int[] next;
  /** Nodes below a node n are numbered from {@code first[n]} to before {@code end[n]}, itself included. */
  private final int[] first;
  private final int[] end;
  /** Of each leaf the highest node that its operand settles by holding there, and by not holding. */
  private final int[] top;
  private final int[] topOutside;
  /** Of each operand whether it stands in a common part. */
  private final boolean[] inCommon;

  Dominance(ExpressionTree tree) {
    int n = tree.nodeCount();
    first = new int[n];
    end = new int[n];
    number(tree, n);
    next = new int[n];
    top = new int[n];
    topOutside = new int[n];
    leaf = new int[tree.operandCount()];
    inCommon = new boolean[leaf.length];
    for (int k = 0; k < leaf.length; k++) {
      leaf[k] = tree.leaf(k);
      for (int node = leaf[k]; node >= 0; node = tree.other(node)) {
        next[node] = tree.other(node);
        top[node] = top(tree, node, true);
        topOutside[node] = top(tree, node, false);
        inCommon[k] |= tree.parent(node) >= 0 && tree.kind(tree.parent(node)) == ExpressionTree.Kind.COMMON;
      }
    }
  }

  /** Numbers wholes before their parts, each one's in a row; in the tree wholes come after their parts. */
  private void number(ExpressionTree tree, int n) {
    int[] size = new int[n];
    for (int node = 0; node < n; node++) {
      size[node]++;
      if (tree.parent(node) >= 0) {
        size[tree.parent(node)] += size[node];
      }
    }
    int[] following = new int[n];
    int roots = 0;
    for (int node = n - 1; node >= 0; node--) {
      int parent = tree.parent(node);
      first[node] = parent < 0 ? roots : following[parent];
      end[node] = first[node] + size[node];
      following[node] = first[node] + 1;
      if (parent < 0) {
        roots = end[node];
      } else {
        following[parent] = end[node];
      }
    }
  }

  /** The highest node that a leaf settles by holding, or by not holding. */
  private static int top(ExpressionTree tree, int leaf, boolean byHolding) {
    int node = leaf;
    boolean holds = byHolding;
    while (tree.parent(node) >= 0) {
      int parent = tree.parent(node);
      boolean cutAway = tree.kind(parent) == ExpressionTree.Kind.CUT && !tree.isFirst(node);
      boolean settles = tree.kind(parent) == ExpressionTree.Kind.UNION || cutAway;
      if (holds != settles) {
        return node;
      }
      holds = tree.kind(parent) == ExpressionTree.Kind.UNION;
      node = parent;
    }
    return node;
  }

  /** Whether an operand dominates any other inside it. */
  boolean dominatesAnyInside(int operand) {
    for (int node = leaf[operand]; node >= 0; node = next[node]) {
      if (top[node] != node) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether an operand dominates any other outside of it, being part of a common part. What a cut is taken from dominates
   * its cutters so too, but to look for what of them reaches beyond it costs more than it saves.
   */
  boolean dominatesAnyOutside(int operand) {
    return inCommon[operand];
  }

  /** Whether strictly inside one operand another cannot matter. */
  boolean dominatesInside(int operand, int other) {
    return operand != other && isBelow(other, operand, top);
  }

  /** Whether outside of one operand another cannot matter. */
  boolean dominatesOutside(int operand, int other) {
    return operand != other && isBelow(other, operand, topOutside);
  }

  /** Whether all nodes of an operand are below nodes that another one settles. */
  private boolean isBelow(int operand, int other, int[] tops) {
    for (int node = leaf[operand]; node >= 0; node = next[node]) {
      if (!isBelowAny(first[node], leaf[other], tops)) {
        return false;
      }
    }
    return true;
  }

  private boolean isBelowAny(int number, int leafOfOther, int[] tops) {
    for (int node = leafOfOther; node >= 0; node = next[node]) {
      int settled = tops[node];
      if (first[settled] <= number && number < end[settled]) {
        return true;
      }
    }
    return false;
  }
}
