package outrigger.presets;

/**
 * A printer as set up; mm, and degrees from the vertical.
 *
 * @param overhang steepest overhang printed without support, degrees from the vertical
 * @param holeAllowance added to the diameter of every hole, since printed holes come out small
 * @param outerAllowance taken off every outer size that must fit into something, per side
 */
public record Printer(String name, double nozzle, double extrusionWidth, double layer, double firstLayer, double bedX,
    double bedY, double bedZ, double minimumWall, double overhang, double bridge, double holeAllowance,
    double outerAllowance) implements Item {}
