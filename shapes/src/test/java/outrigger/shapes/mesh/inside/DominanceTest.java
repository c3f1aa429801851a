package outrigger.shapes.mesh.inside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Which operands settle an expression, against the expression tried out. */
class DominanceTest {
  private static final int OPERANDS = 7;

  @Test
  void dominates_operandsAtSeveralPlaces_onlyWhereTheOtherCannotMatter() {
    int found = 0;
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      ExpressionTree tree = new ExpressionTree();
      List<Integer> open = new ArrayList<>();
      for (int i = 0; i < OPERANDS; i++) {
        open.add(tree.operand());
      }
      for (int i = 0; i < 4; i++) {
        open.add(tree.again(random.nextInt(OPERANDS)));
      }
      whole(tree, open, random);
      Dominance dominance = new Dominance(tree);
      for (int state = 0; state < 1 << OPERANDS; state++) {
        for (int a = 0; a < OPERANDS; a++) {
          boolean matters = inside(tree, state) != inside(tree, state ^ 1 << a);
          for (int k = 0; k < OPERANDS; k++) {
            boolean holds = (state >> k & 1) > 0;
            boolean over = holds ? dominance.dominatesInside(k, a) : dominance.dominatesOutside(k, a);
            assertTrue(!over || !matters, "seed " + seed + ", " + k + " over " + a + ", " + holds);
            found += over ? 1 : 0;
          }
        }
      }
    }
    assertTrue(found > 1000, "only " + found);
  }

  @Test
  void dominates_randomExpressions_isSoWhereTheOtherCannotMatter() {
    int found = 0;
    int outside = 0;
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      ExpressionTree tree = tree(random);
      Dominance dominance = new Dominance(tree);
      boolean[][] matters = new boolean[OPERANDS][OPERANDS];
      boolean[][] mattersOutside = new boolean[OPERANDS][OPERANDS];
      for (int state = 0; state < 1 << OPERANDS; state++) {
        for (int a = 0; a < OPERANDS; a++) {
          if (inside(tree, state) != inside(tree, state ^ 1 << a)) {
            for (int k = 0; k < OPERANDS; k++) {
              matters[k][a] |= (state >> k & 1) > 0;
              mattersOutside[k][a] |= (state >> k & 1) == 0;
            }
          }
        }
      }
      for (int k = 0; k < OPERANDS; k++) {
        for (int a = 0; a < OPERANDS; a++) {
          assertEquals(k != a && !matters[k][a], dominance.dominatesInside(k, a), "seed " + seed + ", " + k + " over " + a);
          assertEquals(k != a && !mattersOutside[k][a], dominance.dominatesOutside(k, a), "seed " + seed + ", outside " + k
              + " over " + a);
          found += dominance.dominatesInside(k, a) ? 1 : 0;
          outside += dominance.dominatesOutside(k, a) ? 1 : 0;
        }
      }
    }
    assertTrue(found > 1000, "only " + found);
    assertTrue(outside > 1000, "only " + outside + " outside");
  }

  /** Parts gathered at random until one is left; kinds differ from part to whole, so that each operand can matter. */
  private static ExpressionTree tree(Random random) {
    ExpressionTree tree = new ExpressionTree();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < OPERANDS; i++) {
      open.add(tree.operand());
    }
    whole(tree, open, random);
    return tree;
  }

  private static void whole(ExpressionTree tree, List<Integer> open, Random random) {
    while (open.size() > 1) {
      List<Integer> parts = new ArrayList<>();
      int count = Math.min(open.size(), 2 + random.nextInt(3));
      for (int i = 0; i < count; i++) {
        parts.add(open.remove(random.nextInt(open.size())));
      }
      ExpressionTree.Kind[] kinds = {ExpressionTree.Kind.UNION, ExpressionTree.Kind.COMMON, ExpressionTree.Kind.CUT};
      open.add(tree.node(kinds[random.nextInt(3)], parts));
    }
  }

  private static boolean inside(ExpressionTree tree, int state) {
    Membership membership = new Membership(tree);
    for (int k = 0; k < OPERANDS; k++) {
      membership.add(k, state >> k & 1);
    }
    return membership.inside();
  }
}
