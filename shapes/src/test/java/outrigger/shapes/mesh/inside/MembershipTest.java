package outrigger.shapes.mesh.inside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The running state of an expression against the expression written out. */
class MembershipTest {

  @Test
  void inside_randomChanges_equalsTheExpression() {
    ExpressionTree tree = new ExpressionTree();
    int a = tree.operand();
    int b = tree.operand();
    int c = tree.operand();
    int d = tree.operand();
    int e = tree.operand();
    int cut = tree.node(ExpressionTree.Kind.CUT, List.of(a, b, c));
    int common = tree.node(ExpressionTree.Kind.COMMON, List.of(d, e));
    tree.node(ExpressionTree.Kind.UNION, List.of(cut, common));
    Membership membership = new Membership(tree);
    int[] w = new int[5];
    Random random = new Random(3);
    for (int i = 0; i < 5000; i++) {
      int operand = random.nextInt(5);
      int change = random.nextInt(5) - 2;
      w[operand] += change;
      membership.add(operand, change);
      boolean expected = w[0] > 0 && w[1] <= 0 && w[2] <= 0 || w[3] > 0 && w[4] > 0;
      assertEquals(expected, membership.inside(), "step " + i);
    }
  }

  @Test
  void inside_operandAtSeveralPlaces_holdsAtAllOfThem() {
    ExpressionTree tree = new ExpressionTree();
    int a = tree.operand();
    int b = tree.operand();
    int c = tree.operand();
    int cut = tree.node(ExpressionTree.Kind.CUT, List.of(a, b));
    int common = tree.node(ExpressionTree.Kind.COMMON, List.of(tree.again(0), c, tree.again(0)));
    tree.node(ExpressionTree.Kind.UNION, List.of(cut, common, tree.again(1)));
    Membership membership = new Membership(tree);
    int[] w = new int[3];
    Random random = new Random(4);
    for (int i = 0; i < 5000; i++) {
      int operand = random.nextInt(3);
      int change = random.nextInt(5) - 2;
      w[operand] += change;
      membership.add(operand, change);
      boolean expected = w[0] > 0 && w[1] <= 0 || w[0] > 0 && w[2] > 0 || w[1] > 0;
      assertEquals(expected, membership.inside(), "step " + i);
    }
  }
}
