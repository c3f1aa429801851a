package outrigger.generator.magnet;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;

/**
 * The pull between two parallel pole faces whose axes lie apart, in mm^2 as in {@link FaceTerm}.
 *
 * <p>All pairs of points of two discs are as many as their overlap area says for each shift, so the term is the field
 * of a flat charge spread like that overlap: rings, whose field is known in complete elliptic integrals, summed over
 * the radius.
 *
 * @param along pull along the axes
 * @param back pull sideways, toward alignment where the faces attract
 */
record OffsetTerm(double along, double back) {

  /**
   * The term.
   *
   * @param r1 radius of a face, mm
   * @param r2 radius of the other, mm
   * @param z distance of the faces, mm, above 0
   * @param x distance of the axes, mm, 0 or more
   */
  static OffsetTerm of(double r1, double r2, double z, double x) {
    Ring ring = new Ring(z, x);
    UnivariateFunction along = u -> u * overlap(r1, r2, u) * ring.along(u);
    UnivariateFunction back = u -> u * overlap(r1, r2, u) * ring.back(u);
    return new OffsetTerm(sum(along, r1, r2, z, x) / Math.PI, x == 0 ? 0 : sum(back, r1, r2, z, x) / (2 * Math.PI));
  }

  /** Panels break where the overlap begins to fall, and narrow toward the ring right above. */
  private static double sum(UnivariateFunction f, double r1, double r2, double z, double x) {
    double inner = Math.abs(r1 - r2);
    double outer = r1 + r2;
    return piece(f, 0, inner, z, x) + piece(f, inner, outer, z, x);
  }

  private static double piece(UnivariateFunction f, double from, double to, double z, double x) {
    double split = Math.max(from, Math.min(x, to));
    return Panels.falling(f, from, split, z) + Panels.rising(f, split, to, z);
  }

  /** Area that two discs share when their middles are {@code u} apart. */
  private static double overlap(double r1, double r2, double u) {
    if (u <= Math.abs(r1 - r2)) {
      double least = Math.min(r1, r2);
      return Math.PI * least * least;
    }
    if (u >= r1 + r2) {
      return 0;
    }
    double a = (u * u + r1 * r1 - r2 * r2) / (2 * u);
    return segment(r1, a) + segment(r2, u - a);
  }

  /** Area of the part of a disc beyond a chord at a distance from its middle. */
  private static double segment(double r, double distance) {
    double cos = Math.max(-1, Math.min(1, distance / r));
    return r * r * StrictMath.acos(cos) - distance * Math.sqrt(Math.max(0, r * r - distance * distance));
  }

  /** Field of a charged ring at height {@code z} and distance {@code x} from its axis, less constant factors. */
  private record Ring(double z, double x) {
    double along(double u) {
      return z * LegendreEllipticIntegral.bigE(parameter(u)) / (near(u) * Math.sqrt(far(u)));
    }

    double back(double u) {
      double m = parameter(u);
      double k = LegendreEllipticIntegral.bigK(m);
      double e = LegendreEllipticIntegral.bigE(m);
      return (k - (u * u - x * x + z * z) / near(u) * e) / (x * Math.sqrt(far(u)));
    }

    /** m, the square of the modulus. */
    private double parameter(double u) {
      return 4 * u * x / far(u);
    }

    private double near(double u) {
      return (u - x) * (u - x) + z * z;
    }

    private double far(double u) {
      return (u + x) * (u + x) + z * z;
    }
  }
}
