package outrigger.presets;

/** A brass insert melted into a hole, such as {@code M3-short}; mm. */
public record HeatSetInsert(String name, String size, double outsideDiameter, double length, double hole,
    double depth, double wall) implements Item {}
