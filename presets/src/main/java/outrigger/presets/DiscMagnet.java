package outrigger.presets;

/** A disc magnet magnetised through its thickness, such as {@code 6x2}; mm. */
public record DiscMagnet(String name, double diameter, double thickness, String grade) implements Item {
  public DiscMagnet {
    Checks.text("name", name);
    Checks.text("grade", grade);
    Checks.positive("diameter", diameter);
    Checks.positive("thickness", thickness);
  }
}
