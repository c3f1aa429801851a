package outrigger.generator.magnet;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Field of a disc on its axis, outside a face, for a remanence of 1 T (Furlani 2001, Permanent Magnet and
 * Electromechanical Devices).
 */
final class AxisField {
  private static final double NEAREST_MM = 1e-9;
  private static final int MOST_STEPS = 200;
  /** Distance from a face at which toy rules take the field for the flux index, mm (16 CFR 1262, ASTM F963). */
  private static final double INDEX_DISTANCE = 0.38;
  /** (1 kG)^2 in T^2. */
  private static final double SQUARE_KILOGAUSS = 0.01;

  private final Disc disc;

  AxisField(Disc disc) {
    this.disc = disc;
  }

  /** Field at a distance of {@code z} mm from the face, as a share of the remanence. */
  double at(double z) {
    return (along(z + disc.thickness()) - along(z)) / 2;
  }

  private double along(double z) {
    return z / Math.hypot(z, disc.radius());
  }

  /** Distance from the face where the field has fallen to a share of the remanence, mm; 0 where it is weaker there. */
  double reach(double share) {
    if (at(0) <= share) {
      return 0;
    }
    double far = disc.diameter();
    while (at(far) > share) {
      far *= 2;
    }
    return new BrentSolver(NEAREST_MM).solve(MOST_STEPS, z -> at(z) - share, 0, far);
  }

  /** Flux index of toy rules by the field on the axis, kG^2 mm^2; rules take the strongest field, so an estimate. */
  double fluxIndex(double remanence) {
    double field = remanence * at(INDEX_DISTANCE);
    return field * field / SQUARE_KILOGAUSS * disc.area();
  }

  /** Field that enters thick, wide, soft steel, mean over an area as large as the face, as a share of the remanence. */
  double intoSteel(double gap) {
    double r = disc.radius();
    return 2 * (FaceTerm.of(r, r, gap) - FaceTerm.of(r, r, gap + disc.thickness())) / disc.area();
  }
}
