package outrigger.generator.accessory.feature;

import outrigger.shapes.profile.Circles;
import outrigger.shapes.profile.Profile;

/** How many sides a turned cutter gets. */
final class Round {
  private Round() {}

  /**
   * Sides of a circumscribed polygon that keeps the chord error, as a hole of the same diameter has.
   *
   * @param diameter of the true circle, mm
   */
  static int sides(double diameter) {
    return Circles.circumscribedSides(diameter / 2, Profile.CHORD_ERROR);
  }
}
