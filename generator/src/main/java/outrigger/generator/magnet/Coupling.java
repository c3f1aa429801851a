package outrigger.generator.magnet;

import java.util.function.DoubleUnaryOperator;

/**
 * Two discs on one axis that attract each other; for steel the second is the mirror image of the first.
 *
 * @param facing what the first disc looks at
 * @param disc one disc
 * @param other the other, the same as the first where it looks at steel
 */
public record Coupling(Facing facing, Disc disc, Disc other) {
  /** Magnetic constant, T m/A; as exact as its definition of before 2019, from which it differs by less than 1e-9. */
  private static final double MU0 = 4e-7 * Math.PI;
  private static final double SQUARE_METRES = 1e-6;
  /** Nearest distance of the faces the sideways pull is worked out at, mm: at 0 its integrand has no finite value. */
  private static final double CLOSEST = 1e-3;

  public Coupling {
    if (facing == Facing.STEEL && !disc.equals(other)) {
      throw new IllegalArgumentException("an image of another size than its magnet");
    }
  }

  /** Two magnets. */
  public static Coupling pair(Disc disc, Disc other) {
    return new Coupling(Facing.MAGNET, disc, other);
  }

  /** A magnet and its image in thick, wide, soft steel. */
  public static Coupling steel(Disc disc) {
    return new Coupling(Facing.STEEL, disc, disc);
  }

  /**
   * Pull along the axis for remanences of 1 T, N/T^2.
   *
   * @param gap between the faces, mm, 0 or more; of steel, to its surface
   */
  public double pull(double gap) {
    return sum(distance(gap), z -> FaceTerm.of(disc.radius(), other.radius(), z));
  }

  /** Pull along the axes when they lie {@code offset} mm apart, N/T^2; of steel the same wherever the magnet is. */
  public double pullAside(double gap, double offset) {
    if (facing == Facing.STEEL) {
      return pull(gap);
    }
    return sum(Math.max(gap, CLOSEST), z -> OffsetTerm.of(disc.radius(), other.radius(), z, offset).along());
  }

  /** Pull back toward one axis when the axes lie {@code offset} mm apart, N/T^2; steel has none. */
  public double centring(double gap, double offset) {
    if (facing == Facing.STEEL) {
      return 0;
    }
    return sum(Math.max(gap, CLOSEST), z -> OffsetTerm.of(disc.radius(), other.radius(), z, offset).back());
  }

  private double distance(double gap) {
    if (!(gap >= 0)) {
      throw new IllegalArgumentException("a gap of " + gap + " mm");
    }
    return facing == Facing.STEEL ? 2 * gap : gap;
  }

  /** Both faces of one disc with both of the other; like poles push, so two terms count against. */
  private double sum(double d, DoubleUnaryOperator term) {
    double far = d + disc.thickness() + other.thickness();
    return (term.applyAsDouble(d) - term.applyAsDouble(d + disc.thickness())
        - term.applyAsDouble(d + other.thickness()) + term.applyAsDouble(far)) / MU0 * SQUARE_METRES;
  }
}
