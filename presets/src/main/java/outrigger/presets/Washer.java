package outrigger.presets;

/** A plain washer, such as {@code M3-normal} or {@code M3-small}; mm. */
public record Washer(String name, String size, String standard, double hole, double outside, double thickness)
    implements Item {}
