package outrigger.presets;

/** A hexagon nut for one thread size (name), largest sizes, mm. */
public record Nut(String name, String standard, double acrossFlats, double height, double acrossCorners)
    implements Item {
  public Nut {
    Checks.text("name", name);
    Checks.text("standard", standard);
    Checks.positive("across-flats", acrossFlats);
    Checks.positive("height", height);
    Checks.positive("across-corners", acrossCorners);
    Checks.below("across-flats", acrossFlats, "across-corners", acrossCorners);
  }
}
