package outrigger.generator.clash;

import outrigger.generator.accessory.Words;

/**
 * One piece of what two elements have in common.
 *
 * @param volume mm^3, above 0
 * @param centre of its volume
 * @param size of the box round it along X, Y and Z, mm
 */
public record Overlap(double volume, Spot centre, Spot size) {

  /** Its size and place, such as {@code 2 x 1 x 0.5 mm at (10, 3, 4) mm}. */
  public String words() {
    return Words.number(size.x()) + " x " + Words.number(size.y()) + " x " + Words.mm(size.z()) + " at "
        + centre.words();
  }
}
