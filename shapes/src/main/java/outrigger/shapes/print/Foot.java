package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The outline a part stands on: the convex hull of the points that touch the bed. */
final class Foot {
  private Foot() {}

  /** How far a point lies inside the hull of others, mm; 0 or less if it does not, or if there is no area. */
  static double margin(List<double[]> points, double px, double py) {
    List<double[]> hull = hull(points);
    if (hull.size() < 3) {
      return 0;
    }
    double least = Double.MAX_VALUE;
    for (int i = 0; i < hull.size(); i++) {
      double[] a = hull.get(i);
      double[] b = hull.get((i + 1) % hull.size());
      double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      least = Math.min(least, ((b[0] - a[0]) * (py - a[1]) - (b[1] - a[1]) * (px - a[0])) / length);
    }
    return least;
  }

  /** Counter-clockwise, by the chain method. */
  private static List<double[]> hull(List<double[]> points) {
    List<double[]> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
    List<double[]> lower = chain(sorted);
    java.util.Collections.reverse(sorted);
    List<double[]> upper = chain(sorted);
    lower.remove(lower.size() - 1);
    upper.remove(upper.size() - 1);
    lower.addAll(upper);
    return lower;
  }

  private static List<double[]> chain(List<double[]> sorted) {
    List<double[]> chain = new ArrayList<>();
    for (double[] p : sorted) {
      while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p) <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(p);
    }
    return chain;
  }

  private static double turn(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }
}
