package outrigger.presets;

/** A brass insert melted into a hole, such as {@code M3-short}; mm. */
public record HeatSetInsert(String name, String size, double outsideDiameter, double length, double hole,
    double depth, double wall) implements Item {
  public HeatSetInsert {
    Checks.text("name", name);
    Checks.text("size", size);
    Checks.positive("outside-diameter", outsideDiameter);
    Checks.positive("length", length);
    Checks.positive("hole", hole);
    Checks.positive("depth", depth);
    Checks.positive("wall", wall);
    Checks.below("hole", hole, "outside-diameter", outsideDiameter);
  }
}
