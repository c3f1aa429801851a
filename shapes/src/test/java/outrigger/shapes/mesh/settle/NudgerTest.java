package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Place;

class NudgerTest {
  @Test
  void of_tipAStepDeep_liftsItAlone() {
    Mesh deep = OnCube.pyramid(1);
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
    assertFalse(Nudger.of(OnCube.pyramid(20)).isMended());
  }

  @Test
  void of_soundMesh_leavesIt() {
    Nudger nudger = Nudger.of(OnCube.CUBE);
    assertTrue(nudger.isMended());
    assertArrayEquals(OnCube.CUBE.xyz(), nudger.facets().xyz());
  }
}
