package outrigger.presets;

/** A hexagon nut for one thread size (name), largest sizes, mm. */
public record Nut(String name, String standard, double acrossFlats, double height, double acrossCorners)
    implements Item {}
