package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Placement;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

class FansTest {
  /** The cube and a copy moved by whole millimetres, welded where they touch. */
  private static Mesh cubes(double x, double y, double z) {
    Mesh other = Mesher.mesh(Prism.of(Profile.rectangle(2, 2), 0, 2).place(Placement.move(x, y, z)));
    return OnCube.with(other.xyz(), other.corners());
  }

  @Test
  void isPinched_cubesThatShareACorner_isSo() {
    assertTrue(Fans.isPinched(cubes(2, 2, 2)));
  }

  @Test
  void isPinched_cubesThatShareAnEdge_isSo() {
    assertTrue(Fans.isPinched(cubes(2, 2, 0)));
  }

  @Test
  void isPinched_cubesApart_isNot() {
    assertFalse(Fans.isPinched(cubes(3, 0, 0)));
  }
}
