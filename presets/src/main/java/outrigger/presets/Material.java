package outrigger.presets;

/** A filament; g/cm^3 and degrees Celsius. */
public record Material(String name, double density, double softening, String note) implements Item {}
