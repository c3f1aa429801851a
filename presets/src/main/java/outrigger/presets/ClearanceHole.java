package outrigger.presets;

/** Clearance holes for one thread size (name), mm. */
public record ClearanceHole(String name, double fine, double medium, double coarse) implements Item {}
