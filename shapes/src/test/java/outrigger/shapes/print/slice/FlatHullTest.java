package outrigger.shapes.print.slice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A hull is as far along each direction as the points it is around, and holds them all: its definition. */
class FlatHullTest {
  private static final long SEED = 77;

  private static double[] cloud(Random random, int count) {
    double[] xy = new double[2 * count];
    double round = random.nextInt(3);
    for (int i = 0; i < count; i++) {
      double x = random.nextDouble() - 0.5;
      double y = random.nextDouble() - 0.5;
      boolean kept = round == 0 || Math.hypot(x, y) < 0.5;
      xy[2 * i] = kept ? 40 * x + 7 : 7;
      xy[2 * i + 1] = kept ? 10 * round * y - 3 : -3;
    }
    return xy;
  }

  @Test
  void around_randomPoints_reachesAsFarAndHoldsThem() {
    for (int n = 3; n < 120; n++) {
      Random random = new Random(SEED + n);
      double[] a = cloud(random, n);
      double[] b = cloud(random, 1 + n / 3);
      FlatHull hull = FlatHull.around(List.of(a, b));
      String told = "seed " + (SEED + n);
      for (int degrees = 0; degrees < 180; degrees += 15) {
        double[] sizes = hull.sizes(degrees);
        assertEquals(extent(degrees, a, b), sizes[0], 1e-9, told);
        assertEquals(extent(degrees - 90, a, b), sizes[1], 1e-9, told);
      }
      for (int i = 0; hull.isArea() && i < a.length; i += 2) {
        assertTrue(hull.inside(a[i], a[i + 1]) > -1e-9, told);
      }
    }
  }

  @Test
  void around_noPoints_isNoArea() {
    assertTrue(!FlatHull.around(List.of()).isArea());
    assertTrue(!FlatHull.around(List.of(new double[] {1, 2, 3, 4})).isArea());
  }

  /** Size along X after a turn by degrees. */
  private static double extent(double degrees, double[]... loops) {
    double c = StrictMath.cos(StrictMath.toRadians(degrees));
    double s = StrictMath.sin(StrictMath.toRadians(degrees));
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] xy : loops) {
      for (int i = 0; i < xy.length; i += 2) {
        low = Math.min(low, xy[i] * c - xy[i + 1] * s);
        high = Math.max(high, xy[i] * c - xy[i + 1] * s);
      }
    }
    return high - low;
  }
}
