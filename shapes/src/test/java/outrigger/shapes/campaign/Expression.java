package outrigger.shapes.campaign;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import outrigger.shapes.solid.Cut;
import outrigger.shapes.solid.Solid;

/** An expression whose parts can be put in another order, grouped anew and placed one by one. */
sealed interface Expression permits Expression.Leaf, Expression.Node {

  /** What a node does with its parts. */
  enum Op { UNION, COMMON, CUT }

  /** One operand. */
  record Leaf(Solid solid) implements Expression {}

  /** A whole of two parts or more; a cut takes all others from the first. */
  record Node(Op op, List<Expression> parts) implements Expression {
    public Node {
      parts = List.copyOf(parts);
    }
  }

  static Expression of(Op op, Expression... parts) {
    return new Node(op, List.of(parts));
  }

  /** The same as a solid. */
  default Solid solid() {
    if (this instanceof Leaf leaf) {
      return leaf.solid;
    }
    Node node = (Node) this;
    List<Solid> solids = node.parts.stream().map(Expression::solid).toList();
    return switch (node.op) {
      case UNION -> Solid.union(solids);
      case COMMON -> Solid.common(solids.toArray(new Solid[0]));
      case CUT -> new Cut(solids.get(0), solids.subList(1, solids.size()));
    };
  }

  /** The operands from left to right. */
  default List<Solid> leaves() {
    List<Solid> leaves = new ArrayList<>();
    collect(leaves);
    return leaves;
  }

  private void collect(List<Solid> leaves) {
    if (this instanceof Leaf leaf) {
      leaves.add(leaf.solid);
    } else {
      ((Node) this).parts.forEach(p -> p.collect(leaves));
    }
  }

  /** The same with every operand changed. */
  default Expression map(UnaryOperator<Solid> change) {
    if (this instanceof Leaf leaf) {
      return new Leaf(change.apply(leaf.solid));
    }
    Node node = (Node) this;
    return new Node(node.op, node.parts.stream().map(p -> p.map(change)).toList());
  }

  /** The same result by other ways: parts in another order and grouped otherwise. */
  default Expression rearranged(Random random) {
    if (this instanceof Leaf) {
      return this;
    }
    Node node = (Node) this;
    List<Expression> parts = new ArrayList<>(node.parts.stream().map(p -> p.rearranged(random)).toList());
    if (node.op == Op.CUT) {
      Collections.shuffle(parts.subList(1, parts.size()), random);
      return cut(parts, random);
    }
    Collections.shuffle(parts, random);
    if (parts.size() < 3 || random.nextBoolean()) {
      return new Node(node.op, parts);
    }
    int k = 1 + random.nextInt(parts.size() - 1);
    List<Expression> outer = new ArrayList<>(parts.subList(0, k));
    outer.add(parts.size() - k == 1 ? parts.get(k) : new Node(node.op, parts.subList(k, parts.size())));
    return new Node(node.op, outer);
  }

  /** a - b - c as it is, as (a - b) - c, or as a - (b + c). */
  private static Expression cut(List<Expression> parts, Random random) {
    int n = parts.size();
    int way = n < 3 ? 0 : random.nextInt(3);
    return switch (way) {
      case 1 -> new Node(Op.CUT, List.of(new Node(Op.CUT, parts.subList(0, n - 1)), parts.get(n - 1)));
      case 2 -> new Node(Op.CUT, List.of(parts.get(0), new Node(Op.UNION, parts.subList(1, n))));
      default -> new Node(Op.CUT, parts);
    };
  }
}
