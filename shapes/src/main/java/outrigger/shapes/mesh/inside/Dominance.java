package outrigger.shapes.mesh.inside;

/**
 * Which operands settle an expression for which others: inside the one, it cannot matter where the others begin and end.
 *
 * <p>In a union any part that holds settles it for all the rest, in a cut any cutter does; and so on upwards as long as a
 * part that holds, or one that does not, settles the whole. Each operand thus has a highest node that it settles by
 * holding, and it dominates all other operands below that.
 */
final class Dominance {
  private final int[] leaf;
  /** Nodes below a node n are numbered from {@code first[n]} to before {@code end[n]}, itself included. */
  private final int[] first;
  private final int[] end;
  private final int[] top;

  Dominance(Membership.Tree tree) {
    int n = tree.nodeCount();
    first = new int[n];
    end = new int[n];
    number(tree, n);
    leaf = new int[tree.operandCount()];
    top = new int[leaf.length];
    for (int k = 0; k < leaf.length; k++) {
      leaf[k] = tree.leaf(k);
      top[k] = top(tree, leaf[k]);
    }
  }

  /** Numbers wholes before their parts, each one's in a row; in the tree wholes come after their parts. */
  private void number(Membership.Tree tree, int n) {
    int[] size = new int[n];
    for (int node = 0; node < n; node++) {
      size[node]++;
      if (tree.parent(node) >= 0) {
        size[tree.parent(node)] += size[node];
      }
    }
    int[] next = new int[n];
    int roots = 0;
    for (int node = n - 1; node >= 0; node--) {
      int parent = tree.parent(node);
      first[node] = parent < 0 ? roots : next[parent];
      end[node] = first[node] + size[node];
      next[node] = first[node] + 1;
      if (parent < 0) {
        roots = end[node];
      } else {
        next[parent] = end[node];
      }
    }
  }

  private static int top(Membership.Tree tree, int leaf) {
    int node = leaf;
    boolean holds = true;
    while (tree.parent(node) >= 0) {
      int parent = tree.parent(node);
      boolean cutAway = tree.kind(parent) == Membership.Kind.CUT && !tree.isFirst(node);
      boolean settles = tree.kind(parent) == Membership.Kind.UNION || cutAway;
      if (holds != settles) {
        return node;
      }
      holds = tree.kind(parent) == Membership.Kind.UNION;
      node = parent;
    }
    return node;
  }

  /** Whether an operand dominates any. */
  boolean isAny(int operand) {
    return top[operand] != leaf[operand];
  }

  /** Whether strictly inside one operand another cannot matter. */
  boolean over(int operand, int other) {
    int its = first[leaf[other]];
    return operand != other && first[top[operand]] <= its && its < end[top[operand]];
  }
}
