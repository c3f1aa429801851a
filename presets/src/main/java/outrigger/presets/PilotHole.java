package outrigger.presets;

/**
 * A hole for a screw that cuts or forms its own thread in plastic, by size and method, such as {@code M3-machine}; mm.
 */
public record PilotHole(String name, String size, String method, double hole, double bossDiameter, double engagement,
    double depth) implements Item {}
