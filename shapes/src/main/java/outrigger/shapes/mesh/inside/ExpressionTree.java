package outrigger.shapes.mesh.inside;

import java.util.ArrayList;
import java.util.List;

/** An expression over operands: nodes numbered, parts before wholes. An operand may stand at several nodes. */
public final class ExpressionTree {
  /** What a node of an expression does with its parts. */
  public enum Kind { OPERAND, UNION, COMMON, CUT }

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

  /** How many parts a node has. */
  int parts(int node) {
    return parts.get(node);
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
