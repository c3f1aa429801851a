package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Place;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

class NudgerTest {
  private static final Mesh CUBE = Mesher.mesh(Prism.of(Profile.rectangle(2, 2), 0, 2));

  /** A pyramid upside down on the cube, its tip some grid steps deep in the cube's top. */
  private static Mesh pyramidOnCube(int steps) {
    int mm = Grid.PER_MM;
    int n = CUBE.vertexCount();
    int[] pyramid = {mm / 4, mm / 2, 2 * mm - steps, -mm, -mm, 3 * mm, mm, -mm, 3 * mm, mm, mm, 3 * mm, -mm, mm, 3 * mm};
    int[] facets = {0, 2, 1, 0, 3, 2, 0, 4, 3, 0, 1, 4, 1, 2, 3, 1, 3, 4};
    int[] xyz = Arrays.copyOf(CUBE.xyz(), 3 * n + pyramid.length);
    System.arraycopy(pyramid, 0, xyz, 3 * n, pyramid.length);
    int[] corners = Arrays.copyOf(CUBE.corners(), CUBE.corners().length + facets.length);
    for (int i = 0; i < facets.length; i++) {
      corners[CUBE.corners().length + i] = n + facets[i];
    }
    return Mesh.of(xyz, corners);
  }

  @Test
  void of_tipAStepDeep_liftsItAlone() {
    Mesh deep = pyramidOnCube(1);
    Nudger nudger = Nudger.of(deep);
    assertTrue(nudger.isMended());
    Rounded mended = nudger.facets();
    Proof.Verdict verdict = Proof.judge(Mesh.of(mended.xyz(), mended.corners()));
    assertTrue(verdict.proven().isPresent(), verdict.findings().toString());
    int count = 0;
    for (int v = 0; v < deep.vertexCount(); v++) {
      boolean same = Place.of(deep.xyz(), v).equals(Place.of(mended.xyz(), v));
      assertEquals(!same, mended.moved()[v]);
      count += same ? 0 : 1;
    }
    assertEquals(1, count);
  }

  @Test
  void of_tipDeeperThanItsReach_doesNotMend() {
    assertFalse(Nudger.of(pyramidOnCube(20)).isMended());
  }

  @Test
  void of_soundMesh_leavesIt() {
    Nudger nudger = Nudger.of(CUBE);
    assertTrue(nudger.isMended());
    assertArrayEquals(CUBE.xyz(), nudger.facets().xyz());
  }
}
