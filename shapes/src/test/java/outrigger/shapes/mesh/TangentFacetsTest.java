package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Tilted cones about one axis, a step apart, with unlike counts of sides, as files tell them: their surfaces cross all over
 * in facets lower than the grid, and nothing tells that they are turned.
 */
class TangentFacetsTest {
  private static Faceted cone(int sides, double turn, int step) {
    Mesh mesh = Mesher.mesh(Revolution.cone(4, 1, 0, 5, sides).turn(Axis.Z, turn).turn(Axis.X, 82).turn(Axis.Y, 29)
        .turn(Axis.Z, 64).move(Grid.toMm(step), 0, -Grid.toMm(step)));
    return Faceted.of(mesh.xyz(), mesh.corners());
  }

  private static List<Faceted> cones() {
    return List.of(cone(12, 5, 0), cone(16, 11, 1), cone(24, 23, -1));
  }

  @Test
  void mesh_unionOfThreeCones_comesToRest() {
    Mesh mesh = Mesher.mesh(Solid.union(cones()));
    assertTrue(Proof.judge(mesh).proven().isPresent());
    List<Faceted> reordered = new ArrayList<>(cones());
    Collections.reverse(reordered);
    assertEquals(ReferencePartTest.volume(mesh), ReferencePartTest.volume(Mesher.mesh(Solid.union(reordered))));
  }

  @Test
  void mesh_coneLessAnother_andTheirCommonPart_areTheCone() {
    Solid whole = cones().get(2);
    Mesh less = Mesher.mesh(whole.cut(cones().get(0)));
    Mesh common = Mesher.mesh(new Common(List.of(whole, cones().get(0))));
    assertTrue(Proof.judge(less).proven().isPresent());
    assertTrue(Proof.judge(common).proven().isPresent());
    double area = 2 * Math.PI * (2 * 2 + 0.5 * 0.5 + (2 + 0.5) * Math.hypot(2 - 0.5, 5));
    assertEquals(ReferencePartTest.volume(Mesher.mesh(whole)),
        ReferencePartTest.volume(less) + ReferencePartTest.volume(common), area * Grid.STEP);
  }
}
