package outrigger.generator.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

class MeshGaugeTest {
  private static final int MM = Grid.PER_MM;

  /** A wedge on end: a square of 4 mm at z = 0, above it a roof rising to an edge of x = 0 to 8 at z = 4, y = 0. */
  private static final MeshGauge WEDGE = MeshGauge.of(Mesh.of(new int[] {
      0, 0, 0, 4 * MM, 0, 0, 4 * MM, 4 * MM, 0, 0, 4 * MM, 0, 0, 0, 4 * MM, 8 * MM, 0, 4 * MM},
      new int[] {0, 2, 1, 0, 3, 2, 0, 1, 5, 0, 5, 4, 0, 4, 3, 1, 2, 5, 2, 3, 4, 2, 4, 5}));

  @Test
  void size_eachAxis_spansVertices() {
    assertEquals(8, WEDGE.size(Axis.X));
    assertEquals(4, WEDGE.max(Axis.Y));
    assertEquals(0, WEDGE.min(Axis.Z));
  }

  @Test
  void sectionArea_halfWay_isAreaByHand() {
    // Half way up the square has become 6 long (between 4 and 8) and 2 deep (between 4 and 0).
    assertEquals(12, WEDGE.sectionArea(Axis.Z, 2), 1e-12);
    assertEquals(16, WEDGE.outline(Axis.Z, 2), 1e-12);
  }

  @Test
  void pinDiameter_aboutPoint_isTwiceNearestWall() {
    assertEquals(2, WEDGE.pinDiameter(Axis.Z, 2, 3, 1), 1e-12);
    assertEquals(1, WEDGE.pinDiameter(Axis.Z, 2, 3, 1.5), 1e-12);
  }

  @Test
  void crossings_upThroughPart_areFloorAndRoof() {
    List<Double> z = WEDGE.crossings(Axis.Z, 1.1, 3.3);
    assertEquals(2, z.size());
    assertEquals(0, z.get(0), 1e-12);
    assertEquals(0.7, z.get(1), 1e-12);
  }

  @Test
  void overhangs_leaningEnd_countsFromTheVertical() {
    assertEquals(1, WEDGE.overhangs(44.9).size());
    assertEquals(0, WEDGE.overhangs(45.1).size());
    assertEquals(45, WEDGE.overhangs(40).get(0).degrees(), 1e-9);
  }
}
