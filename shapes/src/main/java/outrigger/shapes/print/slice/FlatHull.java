package outrigger.shapes.print.slice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The convex hull of flat points, counter-clockwise; mm. */
public final class FlatHull {
  /** Ways between the axes: right and back, right and front, left and back, left and front. */
  private static final int WAYS = 4;

  private final double[][] points;

  private FlatHull(double[][] points) {
    this.points = points;
  }

  /** Around loops of x, y (Andrew's monotone chain, n log n). */
  public static FlatHull around(List<double[]> loops) {
    double[][] all = outer(loops).toArray(new double[0][]);
    Arrays.sort(all, (a, b) -> a[0] != b[0] ? Double.compare(a[0], b[0]) : Double.compare(a[1], b[1]));
    return new FlatHull(chain(all));
  }

  /**
   * All points but those well inside: a place that has one of the points farthest along the four ways between the axes in
   * each quadrant about it is in their hull. Of a plate full of holes next to none are left to be sorted.
   */
  private static List<double[]> outer(List<double[]> loops) {
    double[] most = new double[WAYS];
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    double[][] far = new double[WAYS][2];
    for (double[] loop : loops) {
      for (int i = 0; i < loop.length; i += 2) {
        for (int way = 0; way < WAYS; way++) {
          double reach = (way < 2 ? loop[i] : -loop[i]) + (way % 2 == 0 ? loop[i + 1] : -loop[i + 1]);
          if (reach > most[way]) {
            most[way] = reach;
            far[way] = new double[] {loop[i], loop[i + 1]};
          }
        }
      }
    }
    double right = Math.min(far[0][0], far[1][0]);
    double left = Math.max(far[2][0], far[3][0]);
    double back = Math.min(far[0][1], far[2][1]);
    double front = Math.max(far[1][1], far[3][1]);
    List<double[]> outer = new ArrayList<>();
    for (double[] loop : loops) {
      for (int i = 0; i < loop.length; i += 2) {
        if (!(loop[i] > left && loop[i] < right && loop[i + 1] > front && loop[i + 1] < back)) {
          outer.add(new double[] {loop[i], loop[i + 1]});
        }
      }
    }
    return outer;
  }

  private static double[][] chain(double[][] sorted) {
    double[][] hull = new double[2 * sorted.length + 1][];
    int m = 0;
    for (int i = 0; i < sorted.length; i++) {
      m = add(hull, m, 0, sorted[i]);
    }
    int half = Math.max(0, m - 1);
    for (int i = sorted.length - 2; i >= 0; i--) {
      m = add(hull, m, half, sorted[i]);
    }
    return Arrays.copyOf(hull, Math.max(Math.min(m, 1), m - 1));
  }

  private static int add(double[][] hull, int count, int from, double[] p) {
    int m = count;
    while (m >= from + 2 && turn(hull[m - 2], hull[m - 1], p) <= 0) {
      m--;
    }
    hull[m] = p;
    return m + 1;
  }

  private static double turn(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }

  /** Whether it encloses an area. */
  public boolean isArea() {
    return points.length >= 3;
  }

  /** Distance of a point inside from the nearest edge; negative outside, by how far it lies beyond an edge's line. */
  public double inside(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.length; i++) {
      double[] a = points[i];
      double[] b = points[(i + 1) % points.length];
      least = Math.min(least, far(a, b, new double[] {x, y}));
    }
    return least;
  }

  /** Greatest distance between two of its corners. */
  public double diameter() {
    double most = 0;
    for (int i = 0; i < points.length; i++) {
      for (int j = 0; j < i; j++) {
        most = Math.max(most, Math.hypot(points[i][0] - points[j][0], points[i][1] - points[j][1]));
      }
    }
    return most;
  }

  /** Least width, between two parallel lines that touch it on either side. */
  public double width() {
    double least = Double.POSITIVE_INFINITY;
    int n = points.length;
    for (int i = 0, far = 1; i < n; i++) {
      double[] a = points[i];
      double[] b = points[(i + 1) % n];
      // The farthest corner moves on round the hull as the edge does.
      while (far(a, b, points[(far + 1) % n]) > far(a, b, points[far % n])) {
        far++;
      }
      least = Math.min(least, far(a, b, points[far % n]));
    }
    return least;
  }

  private static double far(double[] a, double[] b, double[] p) {
    return turn(a, b, p) / Math.hypot(b[0] - a[0], b[1] - a[1]);
  }

  /** Middle of the box round it; the origin if there is no point. */
  public double[] middle() {
    double[] x = Arrays.stream(points).mapToDouble(p -> p[0]).sorted().toArray();
    double[] y = Arrays.stream(points).mapToDouble(p -> p[1]).sorted().toArray();
    return points.length == 0 ? new double[2]
        : new double[] {(x[0] + x[x.length - 1]) / 2, (y[0] + y[y.length - 1]) / 2};
  }

  /** Sizes along X and Y after a turn by degrees. */
  public double[] sizes(double degrees) {
    double c = StrictMath.cos(StrictMath.toRadians(degrees));
    double s = StrictMath.sin(StrictMath.toRadians(degrees));
    double[] at = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY};
    for (double[] p : points) {
      double x = p[0] * c - p[1] * s;
      double y = p[0] * s + p[1] * c;
      at[0] = Math.min(at[0], x);
      at[1] = Math.max(at[1], x);
      at[2] = Math.min(at[2], y);
      at[3] = Math.max(at[3], y);
    }
    return new double[] {at[1] - at[0], at[3] - at[2]};
  }
}
