package outrigger.shapes.print.facet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

class ConesTest {
  private static double most(Solid solid, boolean inward) {
    Mesh mesh = Specimens.proven(solid).mesh();
    Cones cones = new Cones(mesh, new Facets(mesh), Seams.of(mesh), inward);
    double most = 0;
    for (int f = 0; f < mesh.facetCount(); f++) {
      most = Math.max(most, cones.reach(f));
    }
    return most;
  }

  @Test
  void reach_boxFromWithin_isOne() {
    assertEquals(1, most(Specimens.box(0, 0, 0, 3, 4, 5), true), 1e-6);
  }

  @Test
  void reach_boxFromWithout_isThatOfItsCorners() {
    assertEquals(Math.sqrt(3), most(Specimens.box(0, 0, 0, 3, 4, 5), false), 1e-6);
  }

  /** From within the inner edge juts; at its ends three normals meet, the top's over three quarters of the way round. */
  @Test
  void reach_angleFromWithin_isAtLeastThatOfTheEndsOfItsInnerEdge() {
    Solid angle = Prism.of(Profile.rectangle(20, 20).cut(Profile.rectangle(12, 12).move(4, 4)), 0, 5);
    double reach = most(angle, true);
    assertTrue(reach >= Math.sqrt(3) && reach < Cones.MOST, () -> "reach " + reach);
  }

  @Test
  void arcCosine_isNearThatOfTheLibrary() {
    for (int i = -1000; i <= 1000; i++) {
      assertEquals(StrictMath.acos(i / 1000.0), Cones.arcCosine(i / 1000.0), 1e-7);
    }
  }
}
