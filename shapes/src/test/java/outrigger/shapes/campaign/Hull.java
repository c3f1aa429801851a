package outrigger.shapes.campaign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.Grid;
import outrigger.shapes.solid.Faceted;

/** The convex hull of random points on a ball, no four of one plane: each three that have all others on one side. */
final class Hull {
  private final int[] xyz;
  private final List<int[]> facets = new ArrayList<>();

  private Hull(Random random, int points, double radius) {
    xyz = new int[3 * points];
    for (int i = 0; i < points; i++) {
      double z = 2 * random.nextDouble() - 1;
      double angle = 2 * Math.PI * random.nextDouble();
      double across = Math.sqrt(1 - z * z);
      xyz[3 * i] = (int) Grid.fromMm(radius * across * StrictMath.cos(angle));
      xyz[3 * i + 1] = (int) Grid.fromMm(radius * across * StrictMath.sin(angle));
      xyz[3 * i + 2] = (int) Grid.fromMm(radius * z);
    }
  }

  /** Draws points until all of them are corners. */
  static Faceted of(Random random, int points, double radius) {
    Hull hull = new Hull(random, points, radius);
    while (!hull.hasAllCorners()) {
      hull = new Hull(random, points, radius);
    }
    return Faceted.of(hull.xyz, hull.facets.stream().flatMapToInt(Arrays::stream).toArray());
  }

  /** A hull of n corners and nothing but triangles has 2 n - 4 of them. */
  private boolean hasAllCorners() {
    int n = xyz.length / 3;
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        for (int c = b + 1; c < n; c++) {
          add(a, b, c, side(a, b, c));
        }
      }
    }
    return facets.size() == 2 * n - 4;
  }

  private void add(int a, int b, int c, int side) {
    if (side != 0) {
      facets.add(side < 0 ? new int[] {a, b, c} : new int[] {a, c, b});
    }
  }

  /** The side all other points lie on; 0 where they do not lie on one. */
  private int side(int a, int b, int c) {
    int side = 0;
    for (int d = 0; d < xyz.length / 3; d++) {
      int its = Sign.side(xyz, a, b, c, d);
      if (d == a || d == b || d == c) {
        continue;
      }
      if (its == 0 || its * side < 0) {
        return 0;
      }
      side = its;
    }
    return side;
  }
}
