package outrigger.shapes.campaign;

import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import outrigger.shapes.campaign.Expression.Leaf;
import outrigger.shapes.campaign.Expression.Node;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;

/**
 * Holds a result against its operands point by point: it must wind round a point exactly where the operands' own windings
 * and the expression say that there is matter.
 */
final class Points {
  private static final int COUNT = 20;

  private Points() {}

  /**
   * A point that the mesh holds and the expression does not, or the other way round, as words; nothing if none was found.
   */
  static String differing(Expression expression, Mesh mesh, Random random) {
    Predicate<double[]> holds = holds(expression);
    for (int i = 0; i < COUNT; i++) {
      double[] p = near(mesh, random.nextInt(mesh.vertexCount()), random);
      if (holds.test(p) != Winding.of(mesh, p) > 0
          && isClear(expression.leaves().stream().map(Mesher::mesh).toList(), p)) {
        return p[0] + " " + p[1] + " " + p[2];
      }
    }
    return "";
  }

  /** A point within half a millimetre of a vertex, one time in two within a twentieth of that. */
  private static double[] near(Mesh mesh, int v, Random random) {
    double reach = Grid.fromMm(1) * Math.pow(10, -2 * random.nextDouble());
    return new double[] {mesh.x(v) + (random.nextDouble() - 0.5) * reach, mesh.y(v) + (random.nextDouble() - 0.5) * reach,
        mesh.z(v) + (random.nextDouble() - 0.5) * reach};
  }

  private static Predicate<double[]> holds(Expression expression) {
    if (expression instanceof Leaf leaf) {
      Mesh mesh = Mesher.mesh(leaf.solid());
      return p -> Winding.of(mesh, p) > 0;
    }
    Node node = (Node) expression;
    List<Predicate<double[]>> parts = node.parts().stream().map(Points::holds).toList();
    return switch (node.op()) {
      case UNION -> p -> parts.stream().anyMatch(part -> part.test(p));
      case COMMON -> p -> parts.stream().allMatch(part -> part.test(p));
      case CUT -> p -> parts.get(0).test(p) && parts.stream().skip(1).noneMatch(part -> part.test(p));
    };
  }

  /** Whether a point is farther than rounding can reach from the surface of every operand, along the axes at least. */
  private static boolean isClear(List<Mesh> operands, double[] p) {
    for (Mesh operand : operands) {
      int here = Winding.of(operand, p);
      for (int k = 0; k < 3; k++) {
        for (int step = -2; step <= 2; step += 4) {
          double[] q = p.clone();
          q[k] += step;
          if (Winding.of(operand, q) != here) {
            return false;
          }
        }
      }
    }
    return true;
  }
}
