package outrigger.generator.load;

import outrigger.generator.truck.Point;

/**
 * Something that weighs.
 *
 * @param grams 0 or more
 * @param at its centre of gravity in truck axes
 */
public record Mass(String name, double grams, Point at) {
  public Mass {
    if (!(grams >= 0 && grams < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " weighs " + grams + " g");
    }
  }
}
