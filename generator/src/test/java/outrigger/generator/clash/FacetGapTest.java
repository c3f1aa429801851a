package outrigger.generator.clash;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The distance of two facets against the same found by going to and fro between the two. */
class FacetGapTest {

  @Test
  void between_randomFacets_agreesWithAlternatingProjection() {
    Random random = new Random(7);
    FacetGap gap = new FacetGap();
    for (int i = 0; i < 400; i++) {
      double[] s = random.doubles(9, -1, 1).toArray();
      double[] t = random.doubles(9, -1, 1).toArray();
      t[0] += i % 3;
      t[3] += i % 3;
      t[6] += i % 3;
      assertEquals(toAndFro(s, t), gap.between(s, t), 2e-3, "pair " + i);
      assertEquals(gap.between(s, t), gap.between(t, s), 1e-12);
    }
  }

  @Test
  void between_pierced_isZero() {
    double[] flat = {-1, -1, 0, 1, -1, 0, 0, 1, 0};
    double[] upright = {0, 0, -1, 0, 0, 1, 5, 0, 0};
    assertEquals(0, new FacetGap().between(flat, upright), 1e-15);
  }

  @Test
  void between_cornerOverFace_isTheHeight() {
    double[] flat = {-1, -1, 0, 1, -1, 0, 0, 1, 0};
    double[] above = {0, 0, 0.25, 1, 0, 2, -1, 0, 2};
    FacetGap gap = new FacetGap();
    assertEquals(0.25, gap.between(flat, above));
    assertEquals(new Spot(0, 0, 0.125), gap.middle());
  }

  /** Two convex sets: the nearest point of one to the nearest point of the other, over and over, from three starts. */
  private static double toAndFro(double[] s, double[] t) {
    double[] p = {s[0], s[1], s[2]};
    double[] q = p;
    for (int i = 0; i < 20000; i++) {
      q = nearest(t, p);
      p = nearest(s, q);
    }
    return Math.sqrt(Math.pow(p[0] - q[0], 2) + Math.pow(p[1] - q[1], 2) + Math.pow(p[2] - q[2], 2));
  }

  /** By barycentric coordinates: within the face, or the best of three edges. */
  private static double[] nearest(double[] t, double[] p) {
    double[] best = null;
    double[] u = {t[3] - t[0], t[4] - t[1], t[5] - t[2]};
    double[] v = {t[6] - t[0], t[7] - t[1], t[8] - t[2]};
    double[] w = {p[0] - t[0], p[1] - t[1], p[2] - t[2]};
    double det = dot(u, u) * dot(v, v) - dot(u, v) * dot(u, v);
    double a = (dot(u, w) * dot(v, v) - dot(v, w) * dot(u, v)) / det;
    double b = (dot(v, w) * dot(u, u) - dot(u, w) * dot(u, v)) / det;
    if (a >= 0 && b >= 0 && a + b <= 1) {
      return new double[] {t[0] + a * u[0] + b * v[0], t[1] + a * u[1] + b * v[1], t[2] + a * u[2] + b * v[2]};
    }
    for (int e = 0; e < 9; e += 3) {
      int f = (e + 3) % 9;
      double[] d = {t[f] - t[e], t[f + 1] - t[e + 1], t[f + 2] - t[e + 2]};
      double[] from = {p[0] - t[e], p[1] - t[e + 1], p[2] - t[e + 2]};
      double k = Math.max(0, Math.min(1, dot(d, from) / dot(d, d)));
      double[] q = {t[e] + k * d[0], t[e + 1] + k * d[1], t[e + 2] + k * d[2]};
      if (best == null || far(q, p) < far(best, p)) {
        best = q;
      }
    }
    return best;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double far(double[] a, double[] b) {
    return Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2);
  }
}
