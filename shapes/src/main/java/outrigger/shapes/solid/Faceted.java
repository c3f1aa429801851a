package outrigger.shapes.solid;

import java.util.Arrays;
import outrigger.shapes.num.Grid;

/**
 * A solid given by its facets: one that was built and proven before, or read from a file.
 *
 * <p>Facets of one plane that join over an edge are one face again when it is evaluated, so that flush contact and
 * seams are treated as in any other solid. Its corners lie on the grid and stay as they are until it is placed.
 */
public final class Faceted implements Solid {
  private final int[] xyz;
  private final int[] corners;

  private Faceted(int[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
  }

  /**
   * A solid of facets that are known to be sound. Nothing is examined here: take {@code CheckedMesh.solid()} for a mesh
   * and {@code StlFile.toSolid()} for a file, which prove it first and refuse it with the place.
   *
   * @param xyz x, y, z of each vertex in grid units, no two equal
   * @param corners three vertex numbers a facet, counter-clockwise seen from outside
   */
  public static Faceted of(int[] xyz, int[] corners) {
    return new Faceted(xyz.clone(), corners.clone());
  }

  /** Number of facets. */
  public int facetCount() {
    return corners.length / 3;
  }

  /** x, y, z of each vertex in grid units, a copy. */
  public int[] xyz() {
    return xyz.clone();
  }

  /** Three vertex numbers a facet, a copy. */
  public int[] corners() {
    return corners.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Faceted f && Arrays.equals(xyz, f.xyz) && Arrays.equals(corners, f.corners);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(xyz) + Arrays.hashCode(corners);
  }

  @Override
  public String toString() {
    return "Faceted[" + facetCount() + " facets, first corner (" + Grid.toMm(xyz[0]) + ", " + Grid.toMm(xyz[1]) + ", "
        + Grid.toMm(xyz[2]) + ") mm]";
  }
}
