package outrigger.shapes.mesh.settle;

import java.math.BigDecimal;
import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** A cube of 2 mm on the plane z = 0, and what else is put into one mesh with it. */
final class OnCube {
  static final Mesh CUBE = Mesher.mesh(Prism.of(Profile.rectangle(2, 2), 0, 2));

  private OnCube() {}

  /** The cube and more facets, which have vertices of their own. */
  static Mesh with(int[] moreXyz, int[] moreCorners) {
    int n = CUBE.vertexCount();
    int m = CUBE.corners().length;
    int[] xyz = Arrays.copyOf(CUBE.xyz(), 3 * n + moreXyz.length);
    System.arraycopy(moreXyz, 0, xyz, 3 * n, moreXyz.length);
    int[] corners = Arrays.copyOf(CUBE.corners(), m + moreCorners.length);
    for (int i = 0; i < moreCorners.length; i++) {
      corners[m + i] = n + moreCorners[i];
    }
    return Mesh.of(xyz, corners);
  }

  /** Facets that were so many steps from where their vertices are put, three a vertex. */
  static Rounded rounded(int[] xyz, int[] corners, boolean[] moved, double[] from) {
    return new Rounded(xyz, corners, moved, (v, axis) -> new BigDecimal(xyz[3 * v + axis])
        .add(new BigDecimal(from[3 * v + axis])).multiply(new BigDecimal(Rounded.fixed(1))).toBigInteger());
  }

  /** A pyramid upside down on the cube, its tip, where no corner of the cube is, some grid steps deep in the cube's top. */
  static Mesh pyramid(int steps) {
    int mm = Grid.PER_MM;
    return with(new int[] {mm / 4, mm / 2, 2 * mm - steps, -mm, -mm, 3 * mm, mm, -mm, 3 * mm, mm, mm, 3 * mm, -mm, mm,
        3 * mm}, new int[] {0, 2, 1, 0, 3, 2, 0, 4, 3, 0, 1, 4, 1, 2, 3, 1, 3, 4});
  }
}
