package outrigger.presets;

/** Clearance holes for one thread size (name), mm. */
public record ClearanceHole(String name, double fine, double medium, double coarse) implements Item {
  public ClearanceHole {
    Checks.text("name", name);
    Checks.positive("fine", fine);
    Checks.positive("medium", medium);
    Checks.positive("coarse", coarse);
    Checks.notAbove("fine", fine, "medium", medium);
    Checks.notAbove("medium", medium, "coarse", coarse);
  }
}
