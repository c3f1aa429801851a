package outrigger.shapes.stl;

import outrigger.shapes.check.Finding;
import outrigger.shapes.check.Proof;
import outrigger.shapes.check.Tally;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Faceted;

/**
 * What an STL file holds: facets as 32-bit floats, in file order, taken as millimetres. The normals of the file are not
 * kept; a facet's side is told by the order of its corners.
 */
public final class StlFile {

  /** How a file is written. */
  public enum Encoding {
    /** 80 bytes of header, a count and 50 bytes a facet. */
    BINARY,
    /** Words and decimal numbers. */
    ASCII
  }

  /**
   * A file's facets as a mesh on the grid.
   *
   * @param mesh the mesh; not judged
   * @param movedCorners facet corners that were not on the grid and were rounded to it; 0 if the mesh is the file's
   *     facets exactly
   * @param largestMove farthest any coordinate was moved, mm; at most half a grid step
   */
  public record OnGrid(Mesh mesh, int movedCorners, double largestMove) {}

  private static final String[] AXES = {"x", "y", "z"};

  private final Encoding encoding;
  private final String name;
  private final float[] coordinates;
  private final int count;

  /** Keeps the array: nine floats a facet, all finite. What stands after {@code count} facets is ignored. */
  StlFile(Encoding encoding, String name, float[] coordinates, int count) {
    this.encoding = encoding;
    this.name = name;
    this.coordinates = coordinates;
    this.count = count;
  }

  /** How the file is written. */
  public Encoding encoding() {
    return encoding;
  }

  /** The text of the header, or the name after {@code solid}; trimmed, unprintable characters as question marks. */
  public String name() {
    return name;
  }

  /** Number of facets, at least 1. */
  public int facetCount() {
    return count;
  }

  /**
   * A coordinate as it stands in the file.
   *
   * @param facet from 0
   * @param corner 0, 1 or 2
   * @param axis 0, 1 or 2 for x, y or z
   */
  public float coordinate(int facet, int corner, int axis) {
    return coordinates[9 * facet + 3 * corner + axis];
  }

  /**
   * The facets as a welded mesh, each coordinate rounded to the nearest grid unit.
   *
   * @throws ShapeException if a coordinate lies beyond +-1024 mm
   */
  public OnGrid toMesh() {
    int[] xyz = new int[9 * count];
    int[] corners = new int[3 * count];
    int moved = 0;
    double largest = 0;
    for (int c = 0; c < corners.length; c++) {
      double move = 0;
      for (int i = 3 * c; i < 3 * c + 3; i++) {
        xyz[i] = toGrid(i);
        move = Math.max(move, Math.abs(coordinates[i] - Grid.toMm(xyz[i])));
      }
      corners[c] = c;
      moved += move > 0 ? 1 : 0;
      largest = Math.max(largest, move);
    }
    return new OnGrid(Mesh.of(xyz, corners), moved, largest);
  }

  /**
   * The facets as a solid, to be placed, joined, cut and met like any other: each coordinate rounded to the nearest grid
   * unit, then proven.
   *
   * @throws ShapeException if a coordinate lies beyond +-1024 mm, or the facets are not sound: open, crossing, touching,
   *     inside out; it says the first fault with its place, how many more there are, and what to change
   */
  public Faceted toSolid() {
    Proof.Verdict verdict = Proof.judge(toMesh().mesh());
    return verdict.proven().orElseThrow(() -> unsound(verdict)).solid();
  }

  private static ShapeException unsound(Proof.Verdict verdict) {
    Finding first = verdict.findings().get(0);
    int more = verdict.tallies().stream().mapToInt(Tally::count).sum() - 1;
    return new ShapeException("the file holds no sound solid: " + first.message()
        + (more == 0 ? "" : more == 1 ? ", and one fault more" : ", and " + more + " faults more"), first.advice());
  }

  private int toGrid(int i) {
    float mm = coordinates[i];
    if (!(Math.abs(mm) <= Grid.LIMIT_MM)) {
      throw new ShapeException(AXES[i % 3] + " of corner " + (i / 3 % 3 + 1) + " of facet " + (i / 9 + 1) + " is " + mm
          + " mm, outside the range of +-" + (int) Grid.LIMIT_MM + " mm",
          "Check the file's unit, move the part nearer to its origin, or split it.");
    }
    return Grid.fromMm(mm);
  }
}
