package outrigger.generator.magnet;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Integrals by 16-point Gauss-Legendre quadrature, on panels that widen threefold away from where a function is steep.
 */
final class Panels {
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16);
  private static final double WIDENING = 3;

  private Panels() {}

  /** The integral from {@code from} to {@code to}, the first panel next to {@code from}, {@code first} wide. */
  static double rising(UnivariateFunction f, double from, double to, double first) {
    double sum = 0;
    double reach = first;
    for (double a = from; a < to; reach *= WIDENING) {
      double b = Math.min(from + reach, to);
      // A panel too narrow for the spacing of doubles at its place has no width to integrate over.
      sum += b > a ? panel(f, a, b) : 0;
      a = b;
    }
    return sum;
  }

  /** The same with the first panel next to {@code to}. */
  static double falling(UnivariateFunction f, double from, double to, double first) {
    return rising(x -> f.value(from + to - x), from, to, first);
  }

  private static double panel(UnivariateFunction f, double a, double b) {
    double half = (b - a) / 2;
    double middle = (a + b) / 2;
    return half * RULE.integrate(x -> f.value(middle + half * x));
  }
}
