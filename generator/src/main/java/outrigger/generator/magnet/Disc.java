package outrigger.generator.magnet;

/**
 * A disc, or a stack of discs taken as one, magnetised along its axis.
 *
 * @param diameter mm, above 0
 * @param thickness of the whole stack, mm, above 0
 */
public record Disc(double diameter, double thickness) {
  public Disc {
    if (!(diameter > 0 && thickness > 0 && diameter + thickness <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("a disc of " + diameter + " x " + thickness + " mm");
    }
  }

  double radius() {
    return diameter / 2;
  }

  /** Area of one face, mm^2. */
  double area() {
    return Math.PI * radius() * radius();
  }
}
