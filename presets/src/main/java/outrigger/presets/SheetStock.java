package outrigger.presets;

/**
 * Sheet of one thickness, such as {@code 40thou} or {@code 1mm}; mm.
 *
 * @param thickness by its name: an inch size is not rounded
 * @param label the metric figure it is usually sold under, which for inch sizes is rounded
 * @param tolerance how far it may be from its thickness either way, % of it
 */
public record SheetStock(String name, double thickness, double label, double tolerance) implements Item {
  public SheetStock {
    Checks.text("name", name);
    Checks.positive("thickness", thickness);
    Checks.positive("label", label);
    Checks.zeroOrMore("tolerance", tolerance);
  }
}
