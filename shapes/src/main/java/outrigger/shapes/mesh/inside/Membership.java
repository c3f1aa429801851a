package outrigger.shapes.mesh.inside;

/**
 * Whether a place belongs to the result, kept up to date while walking across the operands' surfaces.
 *
 * <p>Each operand has a winding number here; it is inside where that is positive. A change climbs the expression only
 * as far as it matters, so a step costs the depth of the tree, not the number of operands; for one that stands at several
 * places of the expression, once each.
 */
public final class Membership {
  /** Of each node what the tree says of it. */
  private final ExpressionTree.Kind[] kind;
  private final int[] parent;
  private final int[] parts;
  private final boolean[] first;
  private final int[] other;
  /** Of each operand its first node. */
  private final int[] leaf;
  private final Windings windings;
  private long changes;
  /** Of each node how many of its parts hold, of a cut only of those that are cut away. */
  private final int[] holding;
  /** Of a cut whether the part it is taken from holds. */
  private final boolean[] base;
  /** Of each node whether it holds. */
  private final boolean[] on;

  /** For an expression, with no operand holding yet. */
  public Membership(ExpressionTree tree) {
    int n = tree.nodeCount();
    kind = new ExpressionTree.Kind[n];
    parent = new int[n];
    parts = new int[n];
    first = new boolean[n];
    other = new int[n];
    for (int i = 0; i < n; i++) {
      kind[i] = tree.kind(i);
      parent[i] = tree.parent(i);
      parts[i] = tree.parts(i);
      first[i] = tree.isFirst(i);
      other[i] = tree.other(i);
    }
    leaf = new int[tree.operandCount()];
    for (int k = 0; k < leaf.length; k++) {
      leaf[k] = tree.leaf(k);
    }
    windings = new Windings(leaf.length);
    holding = new int[n];
    base = new boolean[n];
    on = new boolean[n];
  }

  /** Changes the winding number of an operand. */
  public void add(int operand, int change) {
    int before = windings.of(operand);
    windings.add(operand, change);
    changes++;
    if (before > 0 != before + change > 0) {
      for (int node = leaf[operand]; node >= 0; node = other[node]) {
        climb(node, before <= 0);
      }
    }
  }

  /** All winding numbers that are not 0: operand, number, operand, number, ... */
  public int[] numbers() {
    int[] numbers = new int[2 * windings.count()];
    for (int i = 0; i < windings.count(); i++) {
      numbers[2 * i] = windings.operand(i);
      numbers[2 * i + 1] = windings.of(numbers[2 * i]);
    }
    return numbers;
  }

  /** Sets all winding numbers to what {@link #numbers} gave. */
  public void set(int[] numbers) {
    clear();
    for (int i = 0; i < numbers.length; i += 2) {
      add(numbers[i], numbers[i + 1]);
    }
  }

  /** Sets all winding numbers to 0. */
  public void clear() {
    while (windings.count() > 0) {
      int last = windings.operand(windings.count() - 1);
      add(last, -windings.of(last));
    }
  }

  /** How often a winding number was changed so far: as long as it stays the same, so does the place. */
  public long changes() {
    return changes;
  }

  /** Winding number of an operand here. */
  public int winding(int operand) {
    return windings.of(operand);
  }

  /** Whether this place belongs to the result. */
  public boolean inside() {
    return on[on.length - 1];
  }

  /** A node holds from now on, or no longer: so may nodes above it, one after the other. */
  private void climb(int node, boolean now) {
    while (true) {
      on[node] = now;
      int p = parent[node];
      if (p < 0) {
        return;
      }
      if (first[node]) {
        base[p] = now;
      } else {
        holding[p] += now ? 1 : -1;
      }
      boolean next = switch (kind[p]) {
        case UNION -> holding[p] > 0;
        case COMMON -> holding[p] == parts[p];
        case CUT -> base[p] && holding[p] == 0;
        case OPERAND -> throw new AssertionError(p);
      };
      if (next == on[p]) {
        return;
      }
      node = p;
      now = next;
    }
  }
}
