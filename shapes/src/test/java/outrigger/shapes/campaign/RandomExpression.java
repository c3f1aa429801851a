package outrigger.shapes.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import outrigger.shapes.campaign.Expression.Leaf;
import outrigger.shapes.campaign.Expression.Node;
import outrigger.shapes.campaign.Expression.Op;
import outrigger.shapes.solid.Solid;

/**
 * Random expressions, each of two halves A and B and what is done with them, so that the laws between union, common part
 * and cut can be held against it.
 *
 * @param operands number of operands in both halves
 */
record RandomExpression(Expression a, Expression b, Op op, int operands) {

  /** An expression of 2 to 12 operands, nested at random. */
  static RandomExpression small(long seed) {
    Random random = new Random(seed);
    int n = 2 + random.nextInt(11);
    List<Expression> leaves = leaves(random, n, 4, 1);
    int k = 1 + random.nextInt(n - 1);
    return new RandomExpression(nested(random, leaves.subList(0, k)), nested(random, leaves.subList(k, n)),
        Op.values()[random.nextInt(3)], n);
  }

  /**
   * 100 to 300 operands: two thirds joined, the others cut away, or met with them one time in four. One place in five is
   * on whole millimetres, so that some faces and edges fall together without every result touching itself.
   */
  static RandomExpression large(long seed) {
    Random random = new Random(seed);
    int n = 100 + random.nextInt(201);
    List<Expression> leaves = leaves(random, n, 16, 5);
    int k = 2 * n / 3;
    return new RandomExpression(new Node(Op.UNION, leaves.subList(0, k)), new Node(Op.UNION, leaves.subList(k, n)),
        random.nextInt(4) == 0 ? Op.COMMON : Op.CUT, n);
  }

  /** 2 to 8 operands of one family of {@link OddOperand}, nested at random; the family goes by the seed. */
  static RandomExpression odd(long seed) {
    Random random = new Random(seed);
    int n = 2 + random.nextInt(7);
    OddOperand draw = new OddOperand(random, (int) Math.floorMod(seed, (long) OddOperand.FAMILIES));
    return drawn(random, n, draw::draw);
  }

  /** 2 to 4 operands of {@link CloseOperand}, nested at random. */
  static RandomExpression close(long seed) {
    Random random = new Random(seed);
    int n = 2 + random.nextInt(3);
    CloseOperand draw = new CloseOperand(random);
    return drawn(random, n, draw::draw);
  }

  /** 2 or 3 operands of {@link TangentFacets}, nested at random. */
  static RandomExpression facets(long seed) {
    Random random = new Random(seed);
    int n = 2 + random.nextInt(2);
    TangentFacets draw = new TangentFacets(random);
    return drawn(random, n, draw::draw);
  }

  private static RandomExpression drawn(Random random, int n, Supplier<Solid> draw) {
    List<Expression> leaves = new ArrayList<>();
    while (leaves.size() < n) {
      leaves.add(new Leaf(draw.get()));
    }
    int k = 1 + random.nextInt(n - 1);
    return new RandomExpression(nested(random, leaves.subList(0, k)), nested(random, leaves.subList(k, n)),
        Op.values()[random.nextInt(3)], n);
  }

  /** The whole. */
  Expression whole() {
    return with(op);
  }

  /** The same halves with something else done to them. */
  Expression with(Op other) {
    return Expression.of(other, a, b);
  }

  private static List<Expression> leaves(Random random, int n, int reach, int flush) {
    RandomOperand draw = new RandomOperand(random, reach, flush);
    List<Expression> leaves = new ArrayList<>();
    Solid before = null;
    while (leaves.size() < n) {
      List<Solid> next = before != null && random.nextInt(8 * flush * flush) == 0 ? List.of(draw.beside(before)) : draw.draw();
      next.forEach(s -> leaves.add(new Leaf(s)));
      before = next.get(0);
    }
    return leaves.subList(0, n);
  }

  private static Expression nested(Random random, List<Expression> leaves) {
    List<Expression> left = new ArrayList<>(leaves);
    while (left.size() > 1) {
      List<Expression> some = left.subList(0, Math.min(left.size(), 2 + random.nextInt(3)));
      int draw = random.nextInt(7);
      Expression part = new Node(draw < 4 ? Op.UNION : draw < 6 ? Op.CUT : Op.COMMON, some);
      some.clear();
      left.add(random.nextBoolean() ? 0 : left.size(), part);
    }
    return left.get(0);
  }
}
