package outrigger.presets;

/**
 * A hole for a screw that cuts or forms its own thread in plastic, by size and method, such as {@code M3-machine}; mm.
 */
public record PilotHole(String name, String size, String method, double hole, double bossDiameter, double engagement,
    double depth) implements Item {
  public PilotHole {
    Checks.text("name", name);
    Checks.text("size", size);
    Checks.text("method", method);
    Checks.positive("hole", hole);
    Checks.positive("boss-diameter", bossDiameter);
    Checks.positive("engagement", engagement);
    Checks.positive("depth", depth);
    Checks.below("hole", hole, "boss-diameter", bossDiameter);
  }
}
