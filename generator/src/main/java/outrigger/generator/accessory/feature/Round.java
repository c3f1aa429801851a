package outrigger.generator.accessory.feature;

import outrigger.shapes.profile.Profile;

/** How many sides a circle gets. */
final class Round {
  private Round() {}

  /**
   * Sides of a circumscribed polygon that keeps the chord error: a multiple of 4.
   *
   * @param diameter of the true circle, mm
   */
  static int sides(double diameter) {
    int n = 8;
    while (diameter / 2 * (1 / StrictMath.cos(StrictMath.PI / n) - 1) > Profile.CHORD_ERROR) {
      n += 4;
    }
    return n;
  }
}
