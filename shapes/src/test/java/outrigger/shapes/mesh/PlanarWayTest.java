package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.planar.PlanarWay;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** The planar way against the spatial one, which shares with it the last triangulation but not what leads there. */
class PlanarWayTest {

  /** Facets whatever their order, each from its least corner on. */
  private static List<List<Integer>> facets(Mesh mesh) {
    int[][] all = new int[mesh.facetCount()][];
    for (int f = 0; f < all.length; f++) {
      int[][] c = new int[3][];
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(f, k);
        c[k] = new int[] {mesh.x(v), mesh.y(v), mesh.z(v)};
      }
      int first = Arrays.compare(c[0], c[1]) < 0 ? Arrays.compare(c[0], c[2]) < 0 ? 0 : 2
          : Arrays.compare(c[1], c[2]) < 0 ? 1 : 2;
      all[f] = new int[9];
      for (int k = 0; k < 3; k++) {
        System.arraycopy(c[(first + k) % 3], 0, all[f], 3 * k, 3);
      }
    }
    Arrays.sort(all, Arrays::compare);
    return Arrays.stream(all).map(f -> Arrays.stream(f).boxed().toList()).toList();
  }

  private static Optional<Mesh> spatialIfSound(Solid solid) {
    try {
      return Optional.of(Mesher.spatial(solid)).filter(mesh -> Proof.judge(mesh).proven().isPresent());
    } catch (ShapeException refusal) {
      return Optional.empty();
    }
  }

  /**
   * The same facets by both ways, also where corners had to be rounded; and where the planar way makes nothing, nothing
   * sound is there to be made, but for what touches itself and the spatial way parted when it settled rounded corners.
   */
  @ParameterizedTest
  @CsvSource({"8, false, 60", "8, true, 60", "40, false, 80", "40, true, 80"})
  void mesh_randomPlanarExpression_isThatOfTheSpatialWay(int room, boolean slanted, int leastMade) {
    int made = 0;
    int parted = 0;
    for (long seed = 1; seed <= 150; seed++) {
      String which = "seed " + seed + ", room " + room + ", slanted " + slanted;
      Solid solid = RandomPlanar.of(seed, slanted, room);
      Optional<Mesh> planar = PlanarWay.mesh(solid);
      if (planar.isPresent()) {
        made++;
        assertEquals(facets(Mesher.spatial(solid)), facets(planar.get()), which);
      } else {
        parted += spatialIfSound(solid).isPresent() ? 1 : 0;
      }
    }
    assertTrue(made >= leastMade, made + " made");
    assertTrue(parted <= (slanted ? 1 : 0), parted + " parted");
  }

  @Test
  void mesh_spacer_isThatOfTheSpatialWay() throws Exception {
    ReferencePart spacer = ReferencePart.named("spacer");
    Mesh planar = spacer.planarMesh();
    assertEquals(788, planar.facetCount());
    assertEquals(facets(spacer.mesh()), facets(planar));
  }

  @Test
  void mesh_manyHolesAndPosts_isThatOfTheSpatialWay() {
    Solid plate = Prism.of(Profile.roundedRectangle(90, 90, 4), 0, 3);
    Solid[] holes = new Solid[64];
    Solid[] posts = new Solid[64];
    for (int i = 0; i < holes.length; i++) {
      double x = 10 * (i % 8) - 35;
      double y = 10 * (i / 8) - 35;
      posts[i] = Prism.of(Profile.post(7), 3, 4 + i % 3).move(x, y, 0);
      holes[i] = Prism.of(Profile.hole(3 + i % 2), -1, 9).move(x, y, 0);
    }
    Solid solid = plate.join(posts).cut(holes);
    assertEquals(facets(Mesher.spatial(solid)), facets(PlanarWay.mesh(solid).orElseThrow()));
  }

  /** Outlines cross off the grid, but at heights where nothing of that is left: nothing was rounded. */
  @Test
  void mesh_plateOneStepThick_staysWhereNoCornerWasRounded() {
    Solid low = Prism.of(Profile.post(4, 0.1), 0, Grid.toMm(3));
    Solid thin = Prism.of(Profile.post(4, 0.1), Grid.toMm(5), Grid.toMm(6)).move(Grid.STEP, 1, 0);
    Mesh planar = PlanarWay.mesh(low.join(thin)).orElseThrow();
    assertEquals(2, Proof.judge(planar).proven().orElseThrow().measures().pieces());
    assertEquals(facets(Mesher.spatial(low.join(thin))), facets(planar));
  }

  @Test
  void mesh_otherKindsOfOperands_areLeftToTheSpatialWay() {
    Prism block = Prism.of(Profile.rectangle(10, 10), 0, 4);
    assertTrue(PlanarWay.mesh(block.turn(Axis.X, 90)).isPresent());
    assertFalse(PlanarWay.mesh(block.join(block.turn(Axis.X, 90))).isPresent());
    assertFalse(PlanarWay.mesh(block.withDraft(1)).isPresent());
    assertFalse(PlanarWay.mesh(block.withTopEdge(EdgeForm.chamfer(1))).isPresent());
    assertFalse(PlanarWay.mesh(block.turn(Axis.X, 30)).isPresent());
  }
}
