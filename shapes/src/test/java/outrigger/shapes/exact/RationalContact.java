package outrigger.shapes.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * A second opinion on {@link FacetContact}, slow and by another way: it lists every point that can be a corner of the
 * two facets' common part, as fractions, keeps those inside both, and compares them with the common corners.
 */
final class RationalContact {
  /** A point x/w, y/w, z/w with w above 0. */
  private record Point(BigInteger x, BigInteger y, BigInteger z, BigInteger w) {
    static Point of(int[] p, int v) {
      return new Point(BigInteger.valueOf(p[3 * v]), BigInteger.valueOf(p[3 * v + 1]),
          BigInteger.valueOf(p[3 * v + 2]), BigInteger.ONE);
    }

    Point minus(Point o) {
      return new Point(x.multiply(o.w).subtract(o.x.multiply(w)), y.multiply(o.w).subtract(o.y.multiply(w)),
          z.multiply(o.w).subtract(o.z.multiply(w)), w.multiply(o.w));
    }

    Point cross(Point o) {
      return new Point(y.multiply(o.z).subtract(z.multiply(o.y)), z.multiply(o.x).subtract(x.multiply(o.z)),
          x.multiply(o.y).subtract(y.multiply(o.x)), w.multiply(o.w));
    }

    BigInteger dot(Point o) {
      return x.multiply(o.x).add(y.multiply(o.y)).add(z.multiply(o.z));
    }

    boolean isZero() {
      return x.signum() == 0 && y.signum() == 0 && z.signum() == 0;
    }

    /** (this * s + o * t) / (s + t) for whole points, s + t not 0. */
    Point blend(BigInteger s, Point o, BigInteger t) {
      Point q = new Point(x.multiply(s).add(o.x.multiply(t)), y.multiply(s).add(o.y.multiply(t)),
          z.multiply(s).add(o.z.multiply(t)), s.add(t));
      return q.w.signum() > 0 ? q : new Point(q.x.negate(), q.y.negate(), q.z.negate(), q.w.negate());
    }
  }

  private RationalContact() {}

  static boolean improper(int[] p, int a0, int a1, int a2, int b0, int b1, int b2) {
    Point[] a = {Point.of(p, a0), Point.of(p, a1), Point.of(p, a2)};
    Point[] b = {Point.of(p, b0), Point.of(p, b1), Point.of(p, b2)};
    List<Point> shared = new ArrayList<>();
    for (Point q : a) {
      for (Point r : b) {
        if (q.minus(r).isZero()) {
          shared.add(q);
        }
      }
    }
    return shared.size() == 3 || candidates(a, b).stream().filter(q -> inside(q, a) && inside(q, b))
        .anyMatch(q -> shared.stream().noneMatch(s -> s.minus(q).isZero()));
  }

  private static List<Point> candidates(Point[] a, Point[] b) {
    List<Point> points = new ArrayList<>(List.of(a));
    points.addAll(List.of(b));
    for (int i = 0; i < 3; i++) {
      addPiercing(points, a[i], a[(i + 1) % 3], b);
      addPiercing(points, b[i], b[(i + 1) % 3], a);
      for (int j = 0; j < 3; j++) {
        addCrossing(points, a[i], a[(i + 1) % 3], b[j], b[(j + 1) % 3]);
      }
    }
    return points;
  }

  private static void addPiercing(List<Point> points, Point q, Point r, Point[] t) {
    Point n = t[1].minus(t[0]).cross(t[2].minus(t[0]));
    BigInteger dq = n.dot(q.minus(t[0]));
    BigInteger dr = n.dot(r.minus(t[0]));
    if (!dq.equals(dr)) {
      points.add(q.blend(dr, r, dq.negate()));
    }
  }

  /** Where two lines of one plane cross. */
  private static void addCrossing(List<Point> points, Point q, Point r, Point s, Point t) {
    Point n = r.minus(q).cross(t.minus(s));
    if (!n.isZero() && n.dot(s.minus(q)).signum() == 0) {
      Point across = n.cross(t.minus(s));
      points.add(q.blend(across.dot(r.minus(s)), r, across.dot(q.minus(s)).negate()));
    }
  }

  private static boolean inside(Point q, Point[] t) {
    Point n = t[1].minus(t[0]).cross(t[2].minus(t[0]));
    if (n.dot(q.minus(t[0])).signum() != 0) {
      return false;
    }
    for (int i = 0; i < 3; i++) {
      if (t[(i + 1) % 3].minus(t[i]).cross(q.minus(t[i])).dot(n).signum() < 0) {
        return false;
      }
    }
    return true;
  }
}
