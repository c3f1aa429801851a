package outrigger.shapes.mesh.inside;

import java.util.function.Predicate;
import outrigger.shapes.exact.ExactPoint;

/** Looks from inside a triangle that nothing passes through: from one point after the other, until none is in the way. */
public final class InnerLook {
  /** So near to one corner that even in a triangle as large as the grid it is at most six units away on each axis. */
  private static final int AT_CORNER = 1 << 24;
  /**
   * Weights of the corners for a point in the triangle; others, any will do, are tried where the first lies on a face or is
   * barred. Few things are at a corner.
   */
  private static final int[][] WEIGHTS = {{1, 1, 1}, {1, 2, 4}, {3, 1, 2}, {5, 7, 3}, {11, 4, 9}, {13, 29, 17},
      {97, 89, 31}, {AT_CORNER, 1, 1}, {1, AT_CORNER, 2}, {2, 1, AT_CORNER}};

  private InnerLook() {}

  /**
   * What holds at a plane inside a triangle of it.
   *
   * @param a one of its corners; the other two may be one
   * @param isBarred whether a point is not to be looked from
   */
  public static WindingCount of(Locator locator, ExactPoint a, ExactPoint b, ExactPoint c, int plane,
      Predicate<ExactPoint> isBarred) {
    for (int[] weight : WEIGHTS) {
      ExactPoint q = ExactPoint.mean(a, weight[0], b, weight[1], c, weight[2]);
      if (isBarred.test(q)) {
        continue;
      }
      try {
        return locator.look(q, plane);
      } catch (Locator.OnFace chance) {
        // the next weights give another point of the same triangle
      }
    }
    throw new IllegalStateException("every point tried in a triangle lies on a face");
  }
}
