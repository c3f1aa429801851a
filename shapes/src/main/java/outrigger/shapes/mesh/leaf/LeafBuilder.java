package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;

/** Makes the polyhedron of a leaf solid. */
public final class LeafBuilder {
  private LeafBuilder() {}

  /** The polyhedron of a prism: walls between the sections that its draft and its rims ask for, and two caps. */
  public static Polyhedron prism(Prism prism) {
    return new PrismBuilder(prism).build();
  }

  /** The polyhedron of a revolution: one strip of walls for each edge of the half section. */
  public static Polyhedron revolution(Revolution revolution) {
    return new RevolutionBuilder(revolution).build();
  }

  /** The polyhedron of a solid of facets: those in one plane are one face. */
  public static Polyhedron faceted(Faceted faceted) {
    return new FacetedBuilder(faceted).build();
  }

  /**
   * The same polyhedron placed, exactly.
   *
   * @param placement one that keeps the grid
   */
  public static Polyhedron place(Polyhedron polyhedron, Placement placement) {
    int[] xyz = placed(polyhedron.xyz(), placement);
    return xyz == polyhedron.xyz() ? polyhedron
        : new Polyhedron(xyz, placement.mirrors() ? reversed(polyhedron.faces()) : polyhedron.faces());
  }

  /**
   * The same corners placed, exactly; themselves where the placement leaves everything where it is.
   *
   * @param placement one that keeps the grid
   * @throws ShapeException if one comes to lie beyond the grid
   */
  public static int[] placed(int[] corners, Placement placement) {
    if (!placement.keepsGrid()) {
      throw new IllegalArgumentException("a placement off the grid");
    }
    if (placement.isIdentity()) {
      return corners;
    }
    int[] xyz = corners.clone();
    for (int i = 0; i < xyz.length; i += 3) {
      double x = Grid.toMm(xyz[i]);
      double y = Grid.toMm(xyz[i + 1]);
      double z = Grid.toMm(xyz[i + 2]);
      set(xyz, i, placement.x(x, y, z) * Grid.PER_MM, placement.y(x, y, z) * Grid.PER_MM,
          placement.z(x, y, z) * Grid.PER_MM);
    }
    return xyz;
  }

  /**
   * Sets a corner to whole grid units.
   *
   * @throws ShapeException if it lies beyond the grid
   */
  public static void set(int[] xyz, int at, double x, double y, double z) {
    if (!(Math.abs(x) <= Grid.LIMIT && Math.abs(y) <= Grid.LIMIT && Math.abs(z) <= Grid.LIMIT)) {
      throw new ShapeException(String.format(Locale.ROOT,
          "a corner of an operand lies at (%.3f, %.3f, %.3f) mm, outside the grid's range of +-%.0f mm", x * Grid.STEP,
          y * Grid.STEP, z * Grid.STEP, Grid.LIMIT_MM), "Keep parts within that range about their own origin.");
    }
    xyz[at] = (int) x;
    xyz[at + 1] = (int) y;
    xyz[at + 2] = (int) z;
  }

  /** The same faces seen from the other side. */
  public static List<int[][]> reversed(List<int[][]> faces) {
    List<int[][]> result = new ArrayList<>(faces.size());
    for (int[][] loops : faces) {
      int[][] back = new int[loops.length][];
      for (int l = 0; l < loops.length; l++) {
        back[l] = reversed(loops[l]);
      }
      result.add(back);
    }
    return result;
  }

  /** A loop the other way round. */
  static int[] reversed(int[] loop) {
    int[] back = new int[loop.length];
    for (int i = 0; i < back.length; i++) {
      back[i] = loop[loop.length - 1 - i];
    }
    return back;
  }
}
