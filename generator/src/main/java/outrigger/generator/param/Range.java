package outrigger.generator.param;

/**
 * The least and the greatest value of a number, both allowed.
 *
 * @param min least value, in the unit
 * @param max greatest value, in the unit
 */
record Range(Unit unit, double min, double max) {
  Range {
    if (!(min <= max)) {
      throw new IllegalArgumentException("a range from " + min + " to " + max);
    }
  }

  /** Refuses what lies outside, not-a-number included. */
  void check(double value) throws BadText {
    if (value >= min && value <= max) {
      return;
    }
    boolean below = value < min;
    String bound = Texts.number(below ? min : max, unit);
    throw new BadText(Texts.number(value, unit), (below ? "below the minimum of " : "above the maximum of ") + bound,
        (below ? "at least " : "at most ") + bound, "Use " + bound + (below ? " or more." : " or less."));
  }

  String words() {
    return Texts.number(min) + " to " + Texts.number(max, unit);
  }
}
