package outrigger.shapes.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Exact points and planes against plain fractions of whole numbers, near and exact zeros included. */
class ExactPointPropertyTest {
  private static final int SEED = 20261125;

  /** A fraction for each coordinate, with nothing clever. */
  private record Naive(BigInteger x, BigInteger y, BigInteger z, BigInteger w) {
    BigInteger get(int axis) {
      return axis == 0 ? x : axis == 1 ? y : z;
    }
  }

  @Test
  void crossing_randomLinesAndPlanes_liesInPlaneAndOnLine() {
    Random random = new Random(SEED);
    for (int i = 0; i < 20_000; i++) {
      int range = i % 3 == 0 ? 6 : i % 3 == 1 ? 40_000 : 1 << 24;
      long[] p = point(random, range);
      long[] q = point(random, range);
      Plane plane = plane(random, range);
      if (plane == null || plane.side(p[0], p[1], p[2]) * plane.side(q[0], q[1], q[2]) >= 0) {
        continue;
      }
      ExactPoint at = ExactPoint.crossing(p[0], p[1], p[2], q[0], q[1], q[2], plane);
      String message = "seed " + SEED + ", try " + i;
      assertEquals(0, at.side(plane), message);
      for (int u = 0; u < 3; u++) {
        assertEquals(0, ExactPoint.turn(of(p), of(q), at, u, (u + 1) % 3), message);
      }
      assertEquals(at, ExactPoint.crossing(q[0], q[1], q[2], p[0], p[1], p[2], plane), message);
      assertTrue(Math.abs(at.grid(0) - at.rough(0)) <= 0.5 + 1e-6, message);
    }
  }

  @Test
  void meeting_threePlanes_liesInAllThreeInAnyOrder() {
    Random random = new Random(SEED + 1);
    for (int i = 0; i < 5_000; i++) {
      int range = i % 2 == 0 ? 8 : 1 << 20;
      Plane p = plane(random, range);
      Plane q = plane(random, range);
      Plane r = plane(random, range);
      if (p == null || q == null || r == null || determinant(p, q, r).signum() == 0) {
        continue;
      }
      ExactPoint at;
      try {
        at = ExactPoint.meeting(p, q, r);
      } catch (ArithmeticException beyond) {
        continue; // the planes meet farther away than a long can say
      }
      assertEquals(at, ExactPoint.meeting(r, p, q));
      for (Plane each : new Plane[] {p, q, r}) {
        BigInteger zero = naiveSide(naive(at, p, q, r), each);
        assertEquals(0, zero.signum(), "seed " + SEED + ", try " + i);
      }
    }
  }

  /** A filter that took half of an odd offset for the whole once called a point below a plane one above it. */
  @Test
  void side_fractionJustBelowPlaneAtOddOffset_isBelow() {
    Plane plane = Plane.through(0, 49153, 0, 1, 49153, 0, 0, 49153, 1);
    ExactPoint q = ExactPoint.mean(ExactPoint.of(0, 49152, 0), 1, ExactPoint.of(3, 49152, 1), 1,
        ExactPoint.of(0, 49153, 5), 1);
    assertEquals(-plane.normal(1), q.side(plane));
  }

  @Test
  void side_randomFractions_agreesWithFractions() {
    Random random = new Random(SEED + 2);
    for (int i = 0; i < 50_000; i++) {
      int range = i % 3 == 0 ? 6 : i % 3 == 1 ? 40_000 : 1 << 24;
      long[] a = point(random, range);
      long[] b = point(random, range);
      long[] c = point(random, range);
      Plane plane = plane(random, range);
      if (plane == null) {
        continue;
      }
      ExactPoint q = ExactPoint.mean(of(a), 1, of(b), 2, of(c), 4);
      BigInteger[] n = new BigInteger[3];
      for (int k = 0; k < 3; k++) {
        n[k] = BigInteger.valueOf(a[k] + 2 * b[k] + 4 * c[k]);
      }
      Naive naive = new Naive(n[0], n[1], n[2], BigInteger.valueOf(7));
      assertEquals(naiveSide(naive, plane).signum(), q.side(plane), "seed " + SEED + ", try " + i);
    }
  }

  @Test
  void turnAndCompare_randomFractions_agreeWithFractions() {
    Random random = new Random(SEED + 3);
    for (int i = 0; i < 50_000; i++) {
      int range = i % 2 == 0 ? 4 : 1 << 24;
      ExactPoint[] at = new ExactPoint[3];
      Naive[] naive = new Naive[3];
      for (int k = 0; k < 3; k++) {
        long[] a = point(random, range);
        long[] b = point(random, range);
        long w = 1 + random.nextInt(4);
        at[k] = ExactPoint.mean(of(a), w, of(b), 1, of(b), 1);
        naive[k] = new Naive(sum(a, b, w, 0), sum(a, b, w, 1), sum(a, b, w, 2), BigInteger.valueOf(w + 2));
      }
      String message = "seed " + SEED + ", try " + i;
      assertEquals(naiveTurn(naive, 0, 1).signum(), ExactPoint.turn(at[0], at[1], at[2], 0, 1), message);
      assertEquals(naive[0].z.multiply(naive[1].w).compareTo(naive[1].z.multiply(naive[0].w)),
          ExactPoint.compare(at[0], at[1], 2), message);
    }
  }

  private static BigInteger sum(long[] a, long[] b, long w, int k) {
    return BigInteger.valueOf(w * a[k] + 2 * b[k]);
  }

  private static BigInteger naiveTurn(Naive[] p, int u, int v) {
    BigInteger det = BigInteger.ZERO;
    for (int k = 0; k < 3; k++) {
      Naive a = p[k];
      Naive b = p[(k + 1) % 3];
      Naive c = p[(k + 2) % 3];
      det = det.add(a.w.multiply(b.get(u).multiply(c.get(v)).subtract(b.get(v).multiply(c.get(u)))));
    }
    return det;
  }

  private static Naive naive(ExactPoint at, Plane p, Plane q, Plane r) {
    BigInteger w = determinant(p, q, r);
    BigInteger[] n = new BigInteger[3];
    for (int k = 0; k < 3; k++) {
      BigInteger[][] m = rows(p, q, r);
      m[0][k] = p.bigD();
      m[1][k] = q.bigD();
      m[2][k] = r.bigD();
      n[k] = determinant(m);
      double value = n[k].doubleValue() / w.doubleValue();
      assertEquals(value, at.rough(k), 1e-3 + Math.abs(value) * 1e-12);
    }
    return new Naive(n[0], n[1], n[2], w);
  }

  private static BigInteger naiveSide(Naive q, Plane plane) {
    BigInteger s = plane.bigD().multiply(q.w).negate();
    for (int k = 0; k < 3; k++) {
      s = s.add(plane.bigNormal(k).multiply(q.get(k)));
    }
    return s;
  }

  private static BigInteger[][] rows(Plane... planes) {
    BigInteger[][] m = new BigInteger[3][3];
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        m[i][k] = planes[i].bigNormal(k);
      }
    }
    return m;
  }

  private static BigInteger determinant(Plane... planes) {
    return determinant(rows(planes));
  }

  private static BigInteger determinant(BigInteger[][] m) {
    return m[0][0].multiply(m[1][1].multiply(m[2][2]).subtract(m[1][2].multiply(m[2][1])))
        .subtract(m[0][1].multiply(m[1][0].multiply(m[2][2]).subtract(m[1][2].multiply(m[2][0]))))
        .add(m[0][2].multiply(m[1][0].multiply(m[2][1]).subtract(m[1][1].multiply(m[2][0]))));
  }

  private static ExactPoint of(long[] p) {
    return ExactPoint.of(p[0], p[1], p[2]);
  }

  private static long[] point(Random random, int range) {
    long[] p = new long[3];
    for (int k = 0; k < 3; k++) {
      p[k] = random.nextInt(2 * range + 1) - range;
    }
    return p;
  }

  private static Plane plane(Random random, int range) {
    long[] a = point(random, range);
    long[] b = point(random, range);
    long[] c = point(random, range);
    return Plane.through(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]);
  }
}
