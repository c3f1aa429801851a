package outrigger.generator.magnet;

/**
 * The pull between two coaxial pole faces, each a disc of uniform pole strength, in mm^2: the force in newton is this
 * times the product of both remanences, over mu0, times 1e-6.
 *
 * <p>It is R1^2 R2^2 times the integral over th from 0 to pi of sin^2(th) / (s (s + z)), where s^2 = z^2 +
 * (R1 - R2)^2 + 4 R1 R2 sin^2(th / 2): the Bessel integral of Vokoun, Beleggia, Heller, Sittner 2009 (J. Magn. Magn.
 * Mater. 321, 3758) after Neumann's addition theorem. All of it is positive, so nothing cancels and no special function is
 * needed.
 */
final class FaceTerm {
  private FaceTerm() {}

  /**
   * The term.
   *
   * @param r1 radius of a face, mm
   * @param r2 radius of the other, mm
   * @param z distance of the faces, mm, 0 or more
   */
  static double of(double r1, double r2, double z) {
    double offset = r1 - r2;
    double nearest = Math.hypot(z, offset);
    if (nearest == 0) {
      return Math.PI * r1 * r1 / 2;
    }
    double product = r1 * r2;
    double integral = Panels.rising(th -> {
      double half = StrictMath.sin(th / 2);
      double sin = StrictMath.sin(th);
      double s = Math.sqrt(nearest * nearest + 4 * product * half * half);
      return sin * sin / (s * (s + z));
    }, 0, Math.PI, nearest / Math.sqrt(product));
    return product * product * integral;
  }
}
