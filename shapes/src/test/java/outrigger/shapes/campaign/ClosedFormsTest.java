package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Round solids against closed forms, which facets approach with the square of their count: twice as many sides, a
 * quarter of the error.
 */
class ClosedFormsTest {
  private static final double R = 8;

  private static double volume(Solid solid) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(solid));
    assertEquals(List.of(), verdict.findings());
    return verdict.proven().orElseThrow().measures().volume();
  }

  private static void assertSecondOrder(double exact, IntFunction<Solid> bySides) {
    double coarse = volume(bySides.apply(24)) - exact;
    double middle = volume(bySides.apply(48)) - exact;
    double fine = volume(bySides.apply(96)) - exact;
    assertEquals(4, coarse / middle, 1, "errors " + coarse + " and " + middle);
    assertEquals(4, middle / fine, 0.5, "errors " + middle + " and " + fine);
    assertTrue(Math.abs(fine) < 0.01 * exact, "error " + fine + " of " + exact);
  }

  private static Solid ball(int sides) {
    return Revolution.sphere(2 * R, sides);
  }

  /** Two round bars through each other at right angles: 16 r^3 / 3, known to Archimedes (The Method, preface). */
  @Test
  void common_crossedCylinders_approachesArchimedes() {
    assertSecondOrder(16 * R * R * R / 3, n -> {
      Solid bar = Prism.of(Profile.post(2 * R, R * (1 - Math.cos(Math.PI / n)) * 1.0001), -10, 10);
      return Solid.common(bar, bar.turn(Axis.X, 90));
    });
  }

  /** Cap of height h of a ball: pi h^2 (3 R - h) / 3 (Kern and Bland, Solid Mensuration). */
  private static double cap(double h) {
    return Math.PI * h * h * (3 * R - h) / 3;
  }

  /** Two equal balls share two caps. */
  @Test
  void common_twoBalls_approachesTwoCaps() {
    double d = 7;
    assertSecondOrder(2 * cap(R - d / 2), n -> Solid.common(ball(n), ball(n).move(d, 0, 0)));
  }

  @Test
  void cut_ballLessBall_approachesBallLessTwoCaps() {
    double d = 9;
    assertSecondOrder(4 * Math.PI * R * R * R / 3 - 2 * cap(R - d / 2), n -> ball(n).cut(ball(n).move(0, 0, d)));
  }

  private static Solid[] tetrahedron(int sides) {
    double h = R / Math.sqrt(3);
    return new Solid[] {ball(sides), ball(sides).move(R, 0, 0), ball(sides).move(R / 2, h * 1.5, 0),
        ball(sides).move(R / 2, h / 2, R * Math.sqrt(2.0 / 3))};
  }

  /**
   * Four balls about the corners of a regular tetrahedron as wide as their radius s have
   * s^3 (3 sqrt 2 - 49 pi + 162 atan sqrt 2) / 12 in common: the Reuleaux tetrahedron (Weisstein, Concise Encyclopedia of
   * Mathematics).
   */
  @Test
  void common_fourBalls_approachesReuleaux() {
    double exact = R * R * R * (3 * Math.sqrt(2) - 49 * Math.PI + 162 * Math.atan(Math.sqrt(2))) / 12;
    assertSecondOrder(exact, n -> Solid.common(tetrahedron(n)));
  }

  /** Inclusion and exclusion over four balls, each term evaluated by itself, within what rounding can do. */
  @Test
  void union_fourBalls_isInclusionLessExclusion() {
    Solid[] balls = tetrahedron(32);
    double sum = 0;
    for (int set = 1; set < 16; set++) {
      int chosen = set;
      Solid[] some = java.util.stream.IntStream.range(0, 4).filter(i -> (chosen >> i & 1) == 1).mapToObj(i -> balls[i])
          .toArray(Solid[]::new);
      sum += (some.length % 2 == 1 ? 1 : -1) * volume(Solid.common(some));
    }
    double area = 4 * Math.PI * R * R;
    assertEquals(sum, volume(Solid.union(balls)), 15 * area * 0x1p-15);
  }
}
