package outrigger.presets;

/**
 * A plain washer, such as {@code M3-normal} or {@code M3-small}; mm.
 *
 * @param thicknessTolerance how far it may be from its thickness either way
 */
public record Washer(String name, String size, String standard, double hole, double outside, double thickness,
    double thicknessTolerance) implements Item {
  public Washer {
    Checks.text("name", name);
    Checks.text("size", size);
    Checks.text("standard", standard);
    Checks.positive("hole", hole);
    Checks.positive("outside", outside);
    Checks.positive("thickness", thickness);
    Checks.zeroOrMore("thickness-tolerance", thicknessTolerance);
    Checks.below("thickness-tolerance", thicknessTolerance, "thickness", thickness);
    Checks.below("hole", hole, "outside", outside);
  }
}
