package outrigger.generator.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;

/** The pull by two forms that share nothing with {@link FaceTerm}: closed, and from current to current. */
class OtherFormsTest {
  private static final long SEED = 20_240_611;
  private static final double MU0 = 4e-7 * Math.PI;

  /** Robertson, Cazzolato, Zander 2011, IEEE Trans. Magn. 47(8), 2045: in K, E and Pi; for z above 0. */
  private static double closedForm(double r1, double r2, double z) {
    double a = Math.min(r1, r2);
    double m3squared = (r1 + r2) * (r1 + r2) + z * z;
    double m = 4 * r1 * r2 / m3squared;
    double m2 = 1 + (r1 - r2) * (r1 - r2) / (z * z);
    double bracket = LegendreEllipticIntegral.bigK(m) - LegendreEllipticIntegral.bigE(m) / m2;
    if (r1 != r2) {
      bracket += (z * z / m3squared - 1) * LegendreEllipticIntegral.bigPi(m / (1 - m2), m);
    }
    return Math.PI * a * a / 2 - z / 2 * m2 * Math.sqrt(m3squared) * bracket;
  }

  @Test
  void faceTerm_closedForm_isTheSame() {
    Random random = new Random(SEED);
    for (int i = 0; i < 300; i++) {
      double r1 = 1 + 9 * random.nextDouble();
      double r2 = i % 3 == 0 ? r1 : 1 + 9 * random.nextDouble();
      double z = 0.01 + 15 * random.nextDouble();
      double term = FaceTerm.of(r1, r2, z);
      assertEquals(closedForm(r1, r2, z), term, 1e-9 * term, "seed " + SEED + ": " + r1 + ", " + r2 + ", " + z);
    }
  }

  /** Pull of two coaxial loops of 1 A, N; Maxwell's, by the derivative of their mutual inductance. Metres. */
  private static double loops(double a, double b, double z) {
    double far = (a + b) * (a + b) + z * z;
    double near = (a - b) * (a - b) + z * z;
    double m = 4 * a * b / far;
    return MU0 * z / Math.sqrt(far)
        * ((a * a + b * b + z * z) / near * LegendreEllipticIntegral.bigE(m) - LegendreEllipticIntegral.bigK(m));
  }

  /** Both skins carry a current of remanence / mu0 per metre of height (Ampere). */
  private static double currents(Disc one, Disc other, double gap) {
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(30);
    double t1 = one.thickness() / 2000;
    double t2 = other.thickness() / 2000;
    double between = gap / 1000 + t1 + t2;
    double sum = rule.integrate(u -> rule.integrate(v ->
        loops(one.radius() / 1000, other.radius() / 1000, between + u * t1 + v * t2)));
    return sum * t1 * t2 / (MU0 * MU0);
  }

  @Test
  void pull_fromCurrentToCurrent_isTheSame() {
    double[][] cases = {{6, 2, 6, 2, 1}, {10, 2, 10, 2, 1.5}, {6, 2, 20, 5, 0.5}, {5, 2, 8, 3, 1}, {8, 4, 3, 9, 5}};
    for (double[] c : cases) {
      Disc one = new Disc(c[0], c[1]);
      Disc other = new Disc(c[2], c[3]);
      double pull = Coupling.pair(one, other).pull(c[4]);
      assertEquals(currents(one, other, c[4]), pull, 1e-9 * pull, one + ", " + other + ", " + c[4]);
    }
  }

  /** The sum over the overlap at no offset is a third way to the coaxial term. */
  @Test
  void offsetTerm_noOffset_isTheFaceTerm() {
    for (double[] c : new double[][] {{3, 3, 0.05}, {3, 5, 0.5}, {2, 9, 0.01}, {4, 1, 30}}) {
      double term = FaceTerm.of(c[0], c[1], c[2]);
      assertEquals(term, OffsetTerm.of(c[0], c[1], c[2], 0).along(), 1e-6 * term);
    }
  }

  /** Both pulls come from one energy, so each changes along the other's way alike. */
  @Test
  void offsetTerm_pulls_comeFromOneEnergy() {
    double h = 1e-3;
    for (double[] c : new double[][] {{3, 3, 1, 0.5}, {3, 5, 0.5, 2.5}, {4, 2, 2, 7}}) {
      double alongX = (OffsetTerm.of(c[0], c[1], c[2], c[3] + h).along()
          - OffsetTerm.of(c[0], c[1], c[2], c[3] - h).along()) / (2 * h);
      double backZ = (OffsetTerm.of(c[0], c[1], c[2] + h, c[3]).back()
          - OffsetTerm.of(c[0], c[1], c[2] - h, c[3]).back()) / (2 * h);
      assertEquals(alongX, backZ, 1e-4 * Math.abs(alongX));
    }
  }
}
