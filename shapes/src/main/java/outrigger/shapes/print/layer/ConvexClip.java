package outrigger.shapes.print.layer;

import java.util.Arrays;
import java.util.List;

/**
 * How much of an area lies within a convex outline, and its middle; mm.
 *
 * <p>Loops are clipped by one edge after another (I. E. Sutherland, G. W. Hodgman, Reentrant polygon clipping, 1974). A loop
 * that falls apart keeps its pieces joined by edges there and back along the outline, which add nothing to the area.
 *
 * @param area mm^2
 * @param x of the middle; of no meaning without area
 * @param y of the middle
 */
record ConvexClip(double area, double x, double y) {
  /**
   * Clips an area.
   *
   * @param loops x, y of its outlines' corners, the area to their left
   * @param outline x, y of the convex outline's corners, counter-clockwise
   */
  static ConvexClip of(List<double[]> loops, double... outline) {
    double[] sums = new double[3];
    for (double[] loop : loops) {
      double[] left = loop;
      for (int a = 0; a < outline.length && left.length > 0; a += 2) {
        int b = a + 2 == outline.length ? 0 : a + 2;
        left = leftOf(outline[a], outline[a + 1], outline[b], outline[b + 1], left);
      }
      add(left, outline[0], outline[1], sums);
    }
    return new ConvexClip(sums[0] / 2, outline[0] + sums[1] / sums[0] / 3, outline[1] + sums[2] / sums[0] / 3);
  }

  /** What of a loop lies left of a line from a to b. */
  private static double[] leftOf(double ax, double ay, double bx, double by, double... loop) {
    // each corner adds itself and a place before it at most
    double[] kept = new double[2 * loop.length];
    int n = 0;
    int last = loop.length - 2;
    double before = side(ax, ay, bx, by, loop[last], loop[last + 1]);
    for (int i = 0; i < loop.length; i += 2) {
      double here = side(ax, ay, bx, by, loop[i], loop[i + 1]);
      if (before > 0 && here < 0 || before < 0 && here > 0) {
        double t = before / (before - here);
        kept[n++] = loop[last] + t * (loop[i] - loop[last]);
        kept[n++] = loop[last + 1] + t * (loop[i + 1] - loop[last + 1]);
      }
      if (here >= 0) {
        kept[n++] = loop[i];
        kept[n++] = loop[i + 1];
      }
      before = here;
      last = i;
    }
    return Arrays.copyOf(kept, n);
  }

  private static double side(double ax, double ay, double bx, double by, double x, double y) {
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  }

  /** Adds twice the area of a loop, and six times its moments about a place. */
  private static void add(double[] loop, double atX, double atY, double... sums) {
    int last = loop.length - 2;
    for (int i = 0; i < loop.length; i += 2) {
      double x0 = loop[last] - atX;
      double y0 = loop[last + 1] - atY;
      double x1 = loop[i] - atX;
      double y1 = loop[i + 1] - atY;
      double doubled = x0 * y1 - x1 * y0;
      sums[0] += doubled;
      sums[1] += doubled * (x0 + x1);
      sums[2] += doubled * (y0 + y1);
      last = i;
    }
  }
}
