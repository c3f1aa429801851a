package outrigger.presets;

/** A filament; g/cm^3 and degrees Celsius. */
public record Material(String name, double density, double softening, String note) implements Item {
  public Material {
    Checks.text("name", name);
    Checks.text("note", note);
    Checks.positive("density", density);
    Checks.positive("softening", softening);
  }
}
