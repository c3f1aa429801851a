package outrigger.shapes.check;

/**
 * What a mesh measures; lengths mm, area mm^2, volume mm^3.
 *
 * <p>Of a sound mesh, volume and centroid are computed as exact integers and rounded at the end: the volume is the same
 * bit for bit in whatever order the facets stand and wherever on the grid the part lies, turned by quarter turns or
 * not. Of an unsound mesh the figures are what the same sums give, which need not mean anything.
 *
 * @param volume what the facets enclose, voids taken off
 * @param centroidX centre of the volume; the middle of the bounds if there is no volume
 * @param minX least coordinate; 0 for an empty mesh
 * @param genus handles summed over all shells, or {@link #NO_GENUS} for a surface that is not closed and two-sided
 *     everywhere
 * @param shells surfaces joined over edges, outer and void
 * @param pieces shells of positive volume: separate parts, if the mesh is sound. The others are voids
 */
public record Measures(int facets, int vertices, double volume, double area, double centroidX, double centroidY,
    double centroidZ, double minX, double minY, double minZ, double maxX, double maxY, double maxZ, int genus,
    int shells, int pieces) {

  /** Stands for the genus of a surface that has none. */
  public static final int NO_GENUS = -1;
}
