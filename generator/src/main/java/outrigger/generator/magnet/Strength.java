package outrigger.generator.magnet;

import outrigger.presets.MagnetGrade;

/**
 * Remanence of a magnet at its temperature, T.
 *
 * @param least of the weakest magnet of its grade
 * @param middle of an ordinary one
 * @param greatest of the strongest
 */
record Strength(double least, double middle, double greatest) {
  /** Temperature that tables of grades are for, degrees C. */
  private static final double TABLE_TEMPERATURE = 20;
  private static final double PERCENT = 100;

  /** The strength of a grade when it is warm or cold; the change is the one that goes back. */
  static Strength of(MagnetGrade grade, double temperature) {
    double factor = 1 - grade.loss() / PERCENT * (temperature - TABLE_TEMPERATURE);
    return new Strength(factor * grade.remanenceMin(), factor * (grade.remanenceMin() + grade.remanenceMax()) / 2,
        factor * grade.remanenceMax());
  }
}
