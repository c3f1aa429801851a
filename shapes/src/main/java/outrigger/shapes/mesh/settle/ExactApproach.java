package outrigger.shapes.mesh.settle;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import outrigger.shapes.mesh.frame.Rounded;

/** Measures pairs that are too near each other for doubles: all that is compared is whole numbers. */
final class ExactApproach {
  private final Places places;
  private final Approach told;

  /** Tells what it measures to another, which has the corners. */
  ExactApproach(Places places, Approach told) {
    this.places = places;
    this.told = told;
  }

  /** Measures from the first corner to the facet of the others. */
  void toFacet() {
    BigInteger[] ab = vector(1, 2);
    BigInteger[] ac = vector(1, 3);
    BigInteger[] av = vector(1, 0);
    BigInteger[] n = cross(ab, ac);
    BigInteger square = dot(n, n);
    BigInteger toB = dot(cross(av, ac), n);
    BigInteger toC = dot(cross(ab, av), n);
    told.share[0] = 1;
    if (square.signum() > 0 && toB.signum() >= 0 && toC.signum() >= 0 && toB.add(toC).compareTo(square) <= 0) {
      told.shares(ratio(toB.add(toC).subtract(square), square), -ratio(toB, square), -ratio(toC, square));
      tell(times(n, dot(av, n)), square);
    } else {
      told.distance = Double.POSITIVE_INFINITY;
      toEdge(1, 2);
      toEdge(2, 3);
      toEdge(1, 3);
    }
  }

  private void toEdge(int first, int second) {
    BigInteger[] ab = vector(first, second);
    BigInteger[] av = vector(first, 0);
    BigInteger square = dot(ab, ab);
    BigInteger along = dot(ab, av).max(BigInteger.ZERO).min(square);
    double before = told.distance;
    double[] way = told.way.clone();
    tell(minus(times(av, square), times(ab, along)), square);
    if (told.distance < before) {
      told.shares(0, 0, 0);
      told.share[first] = ratio(along.subtract(square), square);
      told.share[second] = -ratio(along, square);
    } else {
      told.distance = before;
      Approach.set(told.way, way[0], way[1], way[2]);
    }
  }

  /** Measures between the insides of two edges; false where an end of one is nearer. */
  boolean betweenEdges() {
    BigInteger[] u = vector(0, 1);
    BigInteger[] v = vector(2, 3);
    BigInteger[] r = vector(2, 0);
    BigInteger uu = dot(u, u);
    BigInteger uv = dot(u, v);
    BigInteger vv = dot(v, v);
    BigInteger ur = dot(u, r);
    BigInteger vr = dot(v, r);
    BigInteger det = uu.multiply(vv).subtract(uv.multiply(uv));
    BigInteger s = uv.multiply(vr).subtract(vv.multiply(ur));
    BigInteger t = uu.multiply(vr).subtract(uv.multiply(ur));
    if (s.signum() <= 0 || s.compareTo(det) >= 0 || t.signum() <= 0 || t.compareTo(det) >= 0) {
      return false;
    }
    told.share[0] = ratio(det.subtract(s), det);
    told.shares(ratio(s, det), ratio(t.subtract(det), det), -ratio(t, det));
    tell(minus(plus(times(r, det), times(u, s)), times(v, t)), det);
    return true;
  }

  private void tell(BigInteger[] way, BigInteger over) {
    for (int k = 0; k < 3; k++) {
      told.way[k] = Math.scalb(ratio(way[k], over), -Rounded.BITS);
    }
    told.distance = Approach.length(told.way);
  }

  private BigInteger[] vector(int from, int to) {
    BigInteger[] vector = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      vector[k] = places.fixed(told.corner[to], k).subtract(places.fixed(told.corner[from], k));
    }
    return vector;
  }

  private static double ratio(BigInteger a, BigInteger b) {
    return new BigDecimal(a).divide(new BigDecimal(b), MathContext.DECIMAL64).doubleValue();
  }

  private static BigInteger[] cross(BigInteger[] a, BigInteger[] b) {
    BigInteger[] cross = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      int u = (k + 1) % 3;
      int w = (k + 2) % 3;
      cross[k] = a[u].multiply(b[w]).subtract(a[w].multiply(b[u]));
    }
    return cross;
  }

  private static BigInteger dot(BigInteger[] a, BigInteger[] b) {
    return a[0].multiply(b[0]).add(a[1].multiply(b[1])).add(a[2].multiply(b[2]));
  }

  private static BigInteger[] times(BigInteger[] a, BigInteger by) {
    return new BigInteger[] {a[0].multiply(by), a[1].multiply(by), a[2].multiply(by)};
  }

  private static BigInteger[] plus(BigInteger[] a, BigInteger[] b) {
    return new BigInteger[] {a[0].add(b[0]), a[1].add(b[1]), a[2].add(b[2])};
  }

  private static BigInteger[] minus(BigInteger[] a, BigInteger[] b) {
    return new BigInteger[] {a[0].subtract(b[0]), a[1].subtract(b[1]), a[2].subtract(b[2])};
  }
}
