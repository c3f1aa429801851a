package outrigger.generator.magnet;

/**
 * What steel must be for the image of a magnet in it to hold good, mm.
 *
 * @param thickness that carries the magnet's field without saturating
 * @param width that catches it
 */
public record Steel(double thickness, double width) {
  /** Field that soft steel carries before it resists, T; it saturates near 2.1, its permeability falls from 1.5 on. */
  private static final double WORKING_FIELD = 1.6;
  /** Width of a plate that counts as wide, as a multiple of the magnet's diameter; common practice says 2 to 3. */
  private static final double WIDE = 2;

  /** What a magnet needs at its nearest: the field entering under its face leaves through a ring of its own girth. */
  static Steel needed(Disc disc, double remanence, double gap) {
    double field = remanence * new AxisField(disc).intoSteel(gap);
    return new Steel(field * disc.diameter() / (4 * WORKING_FIELD), WIDE * disc.diameter());
  }

  /** Whether steel of a size is enough; a size of 0 is not told, and taken as enough. */
  boolean isMetBy(double givenThickness, double givenWidth) {
    return (givenThickness == 0 || givenThickness >= thickness) && (givenWidth == 0 || givenWidth >= width);
  }
}
