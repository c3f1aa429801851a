package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Place;
import outrigger.shapes.num.Placement;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

class PartingTest {
  /** The cube and a copy moved by whole millimetres, welded where they touch. */
  private static Mesh cubes(double x, double y, double z) {
    Mesh other = Mesher.mesh(Prism.of(Profile.rectangle(2, 2), 0, 2).place(Placement.move(x, y, z)));
    return OnCube.with(other.xyz(), other.corners());
  }

  private static void assertParted(Mesh touching) {
    assertTrue(Proof.judge(touching).proven().isEmpty());
    Rounded parted = Parting.part(touching, Set.of()).orElseThrow();
    Proof.Verdict verdict = Proof.judge(Mesh.of(parted.xyz(), parted.corners()));
    assertTrue(verdict.proven().isPresent(), verdict.findings().toString());
    // no corner moves more than two steps along each axis; the two cubes have 48 mm^2 of surface
    assertEquals(16, verdict.measures().volume(), 48 * 4 * Grid.STEP);
  }

  @Test
  void part_cubesThatShareACorner_becomesSound() {
    assertParted(cubes(2, 2, 2));
  }

  @Test
  void part_cubesThatShareAnEdge_becomesSound() {
    assertParted(cubes(2, 2, 0));
  }

  @Test
  void part_tipOnAFace_becomesSound() {
    Mesh touching = OnCube.pyramid(0);
    Faults faults = Faults.of(touching);
    assertTrue(faults.areTouches());
    assertEquals(1, faults.touching().size());
    assertTrue(Proof.judge(touching).proven().isEmpty());
    Rounded parted = Parting.part(touching, faults.touching()).orElseThrow();
    assertTrue(Proof.judge(Mesh.of(parted.xyz(), parted.corners())).proven().isPresent());
  }

  /** As where what it touched was put elsewhere before its turn came. */
  @Test
  void part_cornerThatTouchesNothing_leavesIt() {
    Mesh touching = OnCube.pyramid(0);
    Set<Integer> corners = new HashSet<>(Faults.of(touching).touching());
    Rounded alone = Parting.part(touching, corners).orElseThrow();
    for (int v = 0; v < touching.vertexCount(); v++) {
      if (touching.z(v) == 0) {
        corners.add(v);
      }
    }
    assertArrayEquals(alone.xyz(), Parting.part(touching, corners).orElseThrow().xyz());
  }

  /** Edges of two facets lie along each other in part; all their ends lie in both planes. */
  @Test
  void touching_edgesThatOverlapInEitherOrder_areTheSameCorners() {
    int[] xyz = {0, 0, 0, 20, 0, 0, 0, 5, 9, 10, 0, 0, 30, 0, 0, 10, 9, -5};
    for (int[] corners : new int[][] {{0, 1, 2, 3, 4, 5}, {3, 4, 5, 0, 1, 2}}) {
      Mesh mesh = Mesh.of(xyz, corners);
      Faults faults = Faults.of(mesh);
      assertTrue(faults.areTouches());
      assertEquals(Set.of(0, 10, 20, 30), faults.touching().stream().map(mesh::x).collect(Collectors.toSet()));
    }
  }

  /** Facets by the places of their corners, whatever their order. */
  private static Set<List<Place>> facets(int[] xyz, int[] corners) {
    Set<List<Place>> facets = new HashSet<>();
    for (int c = 0; c < corners.length; c += 3) {
      List<Place> facet = new ArrayList<>();
      for (int k = c; k < c + 3; k++) {
        facet.add(Place.of(xyz, corners[k]));
      }
      Collections.rotate(facet, -facet.indexOf(Collections.min(facet)));
      facets.add(facet);
    }
    return facets;
  }

  @Test
  void split_twoEdgesOfAFacetInEitherOrder_cutsItAlike() {
    Mesh one = EdgeSplit.of(OnCube.CUBE, List.of(0, 1));
    Mesh other = EdgeSplit.of(OnCube.CUBE, List.of(1, 0));
    assertEquals(facets(one.xyz(), one.corners()), facets(other.xyz(), other.corners()));
  }

  @Test
  void part_soundMesh_leavesIt() {
    assertTrue(Parting.part(OnCube.CUBE, Set.of()).isEmpty());
  }

  @Test
  void split_anEdge_keepsTheCubeSound() {
    Mesh split = EdgeSplit.of(OnCube.CUBE, List.of(0));
    assertEquals(OnCube.CUBE.facetCount() + 2, split.facetCount());
    assertEquals(8, Proof.judge(split).measures().volume());
    assertTrue(Proof.judge(split).proven().isPresent());
  }

  @Test
  void find_cubesThatShareACorner_isTheirCorner() {
    Mesh touching = cubes(2, 2, 2);
    int v = ExactTouch.find(new Rounded(touching.xyz(), touching.corners(), new boolean[touching.vertexCount()]));
    assertEquals(new Place(Grid.PER_MM, Grid.PER_MM, 2 * Grid.PER_MM), Place.of(touching.xyz(), v));
  }

  /** A film two steps high beside the cube, inside out, is gone; the cube stays. */
  @Test
  void without_filmThinnerThanTheGrid_leavesIt() {
    int mm = Grid.PER_MM;
    int[] film = {3 * mm, 0, 0, 4 * mm, 0, 0, 3 * mm, mm, 0, 3 * mm + 1, 1, 2};
    int[] facets = {0, 1, 2, 0, 3, 1, 1, 3, 2, 2, 3, 0};
    assertArrayEquals(OnCube.CUBE.corners(), Slivers.without(OnCube.with(film, facets)));
  }
}
