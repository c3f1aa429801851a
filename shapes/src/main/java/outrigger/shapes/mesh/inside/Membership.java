package outrigger.shapes.mesh.inside;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a place belongs to the result, kept up to date while walking across the operands' surfaces.
 *
 * <p>Each operand has a winding number here; it is inside where that is positive. A change climbs the expression only
 * as far as it matters, so a step costs the depth of the tree, not the number of operands; for one that stands at several
 * places of the expression, once each.
 */
public final class Membership {
  /** What a node of an expression does with its parts. */
  public enum Kind { OPERAND, UNION, COMMON, CUT }

  /** The fixed shape of an expression: nodes numbered, parts before wholes. */
  public static final class Tree {
    private final List<Kind> kinds = new ArrayList<>();
    private final List<Integer> parents = new ArrayList<>();
    private final List<Integer> parts = new ArrayList<>();
    /** Whether a node is the first part of a cut, the one the others are taken from. */
    private final List<Boolean> firsts = new ArrayList<>();
    private final List<Integer> nodeOfOperand = new ArrayList<>();
    /** Of each node another one of the same operand; -1 where there is none. */
    private final List<Integer> others = new ArrayList<>();

    /** Adds the next operand and returns its node. */
    public int operand() {
      nodeOfOperand.add(kinds.size());
      return node(Kind.OPERAND, List.of());
    }

    /** Adds one more node of an operand that is there already and returns it. */
    public int again(int operand) {
      int node = node(Kind.OPERAND, List.of());
      others.set(node, others.get(leaf(operand)));
      others.set(leaf(operand), node);
      return node;
    }

    /** Adds an inner node over parts, the first of which a cut cuts from. */
    public int node(Kind kind, List<Integer> of) {
      int id = kinds.size();
      kinds.add(kind);
      parents.add(-1);
      parts.add(of.size());
      firsts.add(false);
      others.add(-1);
      for (int part : of) {
        parents.set(part, id);
      }
      if (kind == Kind.CUT) {
        firsts.set(of.get(0), true);
      }
      return id;
    }

    int nodeCount() {
      return kinds.size();
    }

    int operandCount() {
      return nodeOfOperand.size();
    }

    Kind kind(int node) {
      return kinds.get(node);
    }

    /** The node that a node is part of; -1 for the whole. */
    int parent(int node) {
      return parents.get(node);
    }

    /** Whether a node is the first part of a cut. */
    boolean isFirst(int node) {
      return firsts.get(node);
    }

    /** Node of an operand, the first of them. */
    int leaf(int operand) {
      return nodeOfOperand.get(operand);
    }

    /** The next node of the same operand after one; -1 after the last. */
    int other(int node) {
      return others.get(node);
    }
  }

  /** Of each node what the tree says of it. */
  private final Kind[] kind;
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
  public Membership(Tree tree) {
    int n = tree.kinds.size();
    kind = tree.kinds.toArray(new Kind[0]);
    parent = array(tree.parents);
    parts = array(tree.parts);
    first = new boolean[n];
    for (int i = 0; i < n; i++) {
      first[i] = tree.firsts.get(i);
    }
    leaf = array(tree.nodeOfOperand);
    other = array(tree.others);
    windings = new Windings(leaf.length);
    holding = new int[n];
    base = new boolean[n];
    on = new boolean[n];
  }

  private static int[] array(List<Integer> list) {
    int[] array = new int[list.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = list.get(i);
    }
    return array;
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
