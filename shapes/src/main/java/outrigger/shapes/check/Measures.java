package outrigger.shapes.check;

/**
 * What a mesh measures; lengths mm, area mm^2, volume mm^3.
 *
 * @param genus handles summed over all shells
 * @param shells closed surfaces, outer and void
 */
public record Measures(int facets, int vertices, double volume, double area, double centroidX, double centroidY,
    double centroidZ, double minX, double minY, double minZ, double maxX, double maxY, double maxZ, int genus,
    int shells, int pieces) {}
