package outrigger.generator.accessory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.run.Made;
import outrigger.generator.run.Progress;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Spacers run along one axis and are evaluated in the plane; cut out of a block with a bevel, far larger, they cannot be.
 */
class PlanarPartsTest {
  private static final Solid BLOCK = Prism.of(Profile.rectangle(900, 900), -400, 400).withTopEdge(EdgeForm.chamfer(1));

  private static Set<String> corners(Mesh mesh) {
    Set<String> corners = new TreeSet<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      corners.add(mesh.x(v) + " " + mesh.y(v) + " " + mesh.z(v));
    }
    return corners;
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "slot=4", "head-seat=counterbore", "head-seat=washer thickness=6", "engrave=always",
      "pose=on-edge", "rows=2 width=24 row-pitch=10", "corner-radius=0 holes=0", "set=1,1.5,2,3 engrave=always"})
  void spacer_inThePlaneAndInSpace_isTheSameToTheBit(String given) {
    Map<String, String> options = new TreeMap<>();
    Arrays.stream(given.split(" +")).filter(pair -> !pair.isEmpty()).map(pair -> pair.split("="))
        .forEach(pair -> options.put(pair[0], pair[1]));
    for (Made made : new Workshop(1, Progress.NONE)
        .make(Workshop.one("bumper-spacer", "spacer", Shelf.standard(), options)).parts()) {
      CheckedMesh spatial = Proof.judge(Mesher.mesh(Solid.common(made.part().solid(), BLOCK))).proven().orElseThrow();
      assertEquals(spatial.measures().volume(), made.measures().volume(), made.name());
      assertEquals(spatial.measures().facets(), made.measures().facets(), made.name());
      assertEquals(corners(spatial.mesh()), corners(made.mesh().mesh()), made.name());
      assertTrue(made.measures().volume() > 0);
    }
  }
}
