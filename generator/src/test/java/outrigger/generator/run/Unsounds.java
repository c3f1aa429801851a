package outrigger.generator.run;

import java.util.List;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;

/** Parts that fail their proof. */
public final class Unsounds {
  private Unsounds() {}

  /** A tetrahedron without its slanted facet. */
  public static UnsoundException openTetrahedron() {
    int[] xyz = {0, 0, 0, 16384, 0, 0, 0, 16384, 0, 0, 0, 16384};
    int[] corners = {0, 2, 1, 0, 1, 3, 0, 3, 2};
    return new UnsoundException(
        List.of(new UnsoundException.Unsound("lid", "hook", Proof.judge(Mesh.of(xyz, corners)))));
  }
}
