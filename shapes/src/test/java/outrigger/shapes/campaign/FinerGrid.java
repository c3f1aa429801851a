package outrigger.shapes.campaign;

import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.solid.Solid;

/**
 * The same operands on a grid many times finer: tells a touch that is there from one that rounding made.
 *
 * <p>Operands stand on the grid exactly, so those that touch do so on any finer grid as well; where only rounding closed
 * a gap, a finer grid keeps it open.
 */
final class FinerGrid {
  /** So many times finer; operands of the campaign lie within 32 mm, the grid reaches to 1024. */
  private static final int TIMES = 32;

  private FinerGrid() {}

  /** Whether an expression touches itself there just the same. */
  static boolean touches(Expression expression) {
    Outcome.Cause cause = Outcome.of(expression.map(FinerGrid::scaled).solid()).refusal();
    return cause == Outcome.Cause.LINE || cause == Outcome.Cause.TOUCH;
  }

  private static Solid scaled(Solid leaf) {
    Mesh mesh = Mesher.mesh(leaf);
    int[] xyz = new int[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      xyz[3 * v] = TIMES * mesh.x(v);
      xyz[3 * v + 1] = TIMES * mesh.y(v);
      xyz[3 * v + 2] = TIMES * mesh.z(v);
    }
    int[] corners = new int[3 * mesh.facetCount()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
    return Proof.judge(Mesh.of(xyz, corners)).proven().orElseThrow().solid();
  }
}
