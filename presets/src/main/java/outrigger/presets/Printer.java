package outrigger.presets;

/**
 * A printer as set up; mm, and degrees from the vertical.
 *
 * @param overhang steepest overhang printed without support, degrees from the vertical
 * @param holeAllowance added to the diameter of every hole, since printed holes come out small
 * @param outerAllowance how far outer sizes come out large, per side; no part takes it yet
 */
public record Printer(String name, double nozzle, double extrusionWidth, double layer, double firstLayer, double bedX,
    double bedY, double bedZ, double minimumWall, double overhang, double bridge, double holeAllowance,
    double outerAllowance) implements Item {
  public Printer {
    Checks.text("name", name);
    Checks.positive("nozzle", nozzle);
    Checks.positive("extrusion-width", extrusionWidth);
    Checks.positive("layer", layer);
    Checks.positive("first-layer", firstLayer);
    Checks.positive("bed-x", bedX);
    Checks.positive("bed-y", bedY);
    Checks.positive("bed-z", bedZ);
    Checks.positive("minimum-wall", minimumWall);
    Checks.positive("overhang", overhang);
    Checks.positive("bridge", bridge);
    Checks.zeroOrMore("hole-allowance", holeAllowance);
    Checks.zeroOrMore("outer-allowance", outerAllowance);
    Checks.notAbove("layer", layer, "nozzle", nozzle);
    Checks.notAbove("first-layer", firstLayer, "nozzle", nozzle);
    if (overhang >= 90) {
      throw new IllegalArgumentException("overhang is " + Datum.print(overhang) + " degrees. Use less than 90.");
    }
  }
}
