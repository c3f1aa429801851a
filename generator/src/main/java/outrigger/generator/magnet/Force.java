package outrigger.generator.magnet;

/**
 * A force within what the grade allows, N.
 *
 * @param least of the weakest magnets of the grade
 * @param middle of ordinary ones
 * @param greatest of the strongest
 */
public record Force(double least, double middle, double greatest) {
  static Force of(double perSquareTesla, Strength one, Strength other) {
    return new Force(perSquareTesla * one.least() * other.least(), perSquareTesla * one.middle() * other.middle(),
        perSquareTesla * one.greatest() * other.greatest());
  }
}
