package outrigger.shapes.campaign;

import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.solid.Solid;

/**
 * The same operands on grids many times finer, as far as the operands stay within their range: tells a touch that is there
 * from one that rounding made.
 *
 * <p>Operands stand on the grid exactly, so those that touch do so on any finer grid as well; where only rounding closed
 * a gap, a finer grid keeps it open. Where rounding makes facets meet beside a touch, cutting them anew may open it: so
 * several grids are asked, and one that shows it is enough.
 */
final class FinerGrid {
  /** So many times finer at least: gaps of a fifth of a step are too wide there for rounding to close. */
  private static final int LEAST = 8;
  /** So many times finer at most. */
  private static final int MOST = 32;

  private FinerGrid() {}

  /** Whether an expression touches itself there just the same. */
  static boolean touches(Expression expression) {
    int reach = expression.leaves().stream().mapToInt(leaf -> reach(Mesher.mesh(leaf))).max().orElseThrow();
    int most = Math.min(MOST, Grid.LIMIT / reach);
    for (int times = most; times == most || times >= LEAST; times /= 2) {
      if (touches(expression, times)) {
        return true;
      }
    }
    return false;
  }

  private static boolean touches(Expression expression, int times) {
    Outcome.Cause cause = Outcome.of(expression.map(leaf -> scaled(leaf, times)).solid()).refusal();
    return cause == Outcome.Cause.LINE || cause == Outcome.Cause.TOUCH;
  }

  private static int reach(Mesh mesh) {
    int reach = 1;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      reach = Math.max(reach, Math.max(Math.abs(mesh.x(v)), Math.max(Math.abs(mesh.y(v)), Math.abs(mesh.z(v)))));
    }
    return reach;
  }

  private static Solid scaled(Solid leaf, int times) {
    Mesh mesh = Mesher.mesh(leaf);
    int[] xyz = new int[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      xyz[3 * v] = times * mesh.x(v);
      xyz[3 * v + 1] = times * mesh.y(v);
      xyz[3 * v + 2] = times * mesh.z(v);
    }
    int[] corners = new int[3 * mesh.facetCount()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
    return Proof.judge(Mesh.of(xyz, corners)).proven().orElseThrow().solid();
  }
}
