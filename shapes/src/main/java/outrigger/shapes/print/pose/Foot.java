package outrigger.shapes.print.pose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** The outline a part stands on: the convex hull of the points that touch the bed, mm. */
final class Foot {
  /** Directions in which the farthest points are kept: the four between the axes. */
  private static final int WAYS = 4;

  private double[] xy = new double[64];
  private int count;
  private final double[] most = new double[WAYS];
  private final int[] farthest = new int[WAYS];

  /** Adds a point. */
  void add(double x, double y) {
    if (2 * count == xy.length) {
      xy = Arrays.copyOf(xy, 2 * xy.length);
    }
    xy[2 * count] = x;
    xy[2 * count + 1] = y;
    reach(0, x + y);
    reach(1, x - y);
    reach(2, -x - y);
    reach(3, y - x);
    count++;
  }

  private void reach(int way, double far) {
    if (count == 0 || far > most[way]) {
      most[way] = far;
      farthest[way] = count;
    }
  }

  /** How far a point lies inside the hull, mm; 0 or less if it does not, or if there is no area. */
  double margin(double px, double py) {
    List<double[]> hull = hull(outer());
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

  /**
   * All points but those well inside: a place that has one of the four farthest points in each quadrant about it is in
   * their hull.
   */
  private List<double[]> outer() {
    double right = Math.min(x(0), x(1));
    double left = Math.max(x(2), x(3));
    double back = Math.min(y(0), y(3));
    double front = Math.max(y(1), y(2));
    List<double[]> outer = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double px = xy[2 * i];
      double py = xy[2 * i + 1];
      if (!(px > left && px < right && py > front && py < back)) {
        outer.add(new double[] {px, py});
      }
    }
    return outer;
  }

  private double x(int way) {
    return xy[2 * farthest[way]];
  }

  private double y(int way) {
    return xy[2 * farthest[way] + 1];
  }

  /** Counter-clockwise, by the chain method. */
  private static List<double[]> hull(List<double[]> points) {
    points.sort((p, q) -> p[0] < q[0] ? -1 : p[0] > q[0] ? 1 : Double.compare(p[1], q[1]));
    List<double[]> lower = chain(points);
    Collections.reverse(points);
    List<double[]> upper = chain(points);
    if (!lower.isEmpty()) {
      lower.remove(lower.size() - 1);
      upper.remove(upper.size() - 1);
    }
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
