package outrigger.shapes.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Measures against closed forms. */
class MeasuresTest {
  private static final int MM = Meshes.MM;

  private static Measures of(Soup soup) {
    return Proof.judge(soup.mesh()).measures();
  }

  @Test
  void measures_box_exact() {
    Measures m = of(Meshes.box(2 * MM, 3 * MM, 5 * MM).move(7 * MM, -MM, MM / 2));
    assertEquals(new Measures(12, 8, 30, 62, 8, 0.5, 3, 7, -1, 0.5, 9, 2, 5.5, 0, 1, 1), m);
  }

  @Test
  void measures_smallestAndLargest_exact() {
    assertEquals(StrictMath.pow(2, -42), of(Meshes.box(1, 1, 1)).volume());
    assertEquals(StrictMath.pow(2, -42) / 6, of(Meshes.tetrahedron(1)).volume());
    int most = 1024 * MM;
    assertEquals(2048.0 * 2048 * 2048, of(new Soup().box(-most, -most, -most, most, most, most)).volume());
  }

  @Test
  void measures_tetrahedron_closedForms() {
    Measures m = of(Meshes.tetrahedron(6 * MM));
    assertEquals(36, m.volume());
    assertEquals(54 + Math.sqrt(3) / 2 * 36, m.area(), 1e-9);
    assertEquals(1.5, m.centroidX());
    assertEquals(1.5, m.centroidZ());
  }

  /** A void shifts the centroid: (60 * 60 * 60 * 30 - 20 * 20 * 20 * 20) / (216000 - 8000). */
  @Test
  void measures_boxWithVoid_hollowWeighed() {
    Measures m = of(Meshes.box(60 * MM, 60 * MM, 60 * MM)
        .add(Meshes.box(20 * MM, 20 * MM, 20 * MM).flip().move(10 * MM, 20 * MM, 20 * MM)));
    assertEquals(208000, m.volume());
    assertEquals(24000, m.area());
    assertEquals(6320000.0 / 208000, m.centroidX(), 1e-13);
    assertEquals(30, m.centroidY(), 1e-13);
    assertEquals(List.of(2, 1, 0), List.of(m.shells(), m.pieces(), m.genus()));
  }

  @Test
  void measures_cone_pyramidFormulas() {
    Measures m = of(Meshes.cone(4, 3 * MM, 8 * MM));
    assertEquals(18 * 8 / 3.0, m.volume());
    assertEquals(2, m.centroidZ(), 1e-14);
    assertEquals(18 + 4 * Math.sqrt(8.0 * 8 + 4.5) * Math.sqrt(18) / 2, m.area(), 1e-9);
  }

  /** Facets cut corners off: 1 % and 0.5 % below the round forms at most. */
  @Test
  void measures_ballAndTorus_nearTheRoundOnes() {
    assertEquals(4 / 3.0 * Math.PI * 729, of(Meshes.ball(4, 9 * MM)).volume(), 0.01 * 3054);
    assertEquals(2 * Math.PI * Math.PI * 20 * 49, of(Meshes.torus(96, 64, 20 * MM, 7 * MM)).volume(), 0.005 * 19345);
  }

  @Test
  void measures_genus_handlesOfAllShells() {
    assertEquals(1, of(Meshes.torus(12, 8, 20 * MM, 5 * MM)).genus());
    for (int holes = 0; holes < 6; holes++) {
      assertEquals(holes, of(Meshes.holedPlate(holes, MM)).genus());
    }
    Measures ringVoid = of(SoundMeshes.all().get("ringVoid"));
    assertEquals(List.of(1, 2, 1), List.of(ringVoid.genus(), ringVoid.shells(), ringVoid.pieces()));
    Measures tori = of(SoundMeshes.all().get("linkedTori"));
    assertEquals(List.of(2, 2, 2), List.of(tori.genus(), tori.shells(), tori.pieces()));
    assertEquals(Measures.NO_GENUS, of(Meshes.box(MM, MM, MM).remove(0)).genus());
  }

  @Test
  void measures_nest_piecesAndVoids() {
    Measures m = of(Meshes.nest(5));
    assertEquals(List.of(5, 3), List.of(m.shells(), m.pieces()));
    assertEquals(99 * 77 * 55 - 97 * 75 * 53 + 95 * 73 * 51 - 93 * 71 * 49 + 91 * 69 * 47, m.volume());
  }

  @Test
  void measures_empty_nothing() {
    assertEquals(new Measures(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, Measures.NO_GENUS, 0, 0), of(new Soup()));
  }
}
