package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Place;

class ThinFacetsTest {
  private static final int SIZE = 1000;

  /** A box of which one corner of the top stands for two, so many steps from each other along an edge or across it. */
  private static Mesh box(int... extra) {
    int[] xyz = {0, 0, 0, SIZE, 0, 0, SIZE, SIZE, 0, 0, SIZE, 0, 0, 0, SIZE, SIZE, 0, SIZE, SIZE, SIZE, SIZE, 0, SIZE, SIZE,
        extra[0], extra[1], extra[2]};
    // vertex 8 lies on or near the top's edge from 4 to 5
    return Mesh.of(xyz, new int[] {0, 2, 1, 0, 3, 2, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7, 0, 1, 8, 0, 8, 4,
        1, 5, 8, 8, 5, 6, 8, 6, 7, 8, 7, 4});
  }

  private static ThinFacets taken(Mesh mesh) {
    return ThinFacets.of(mesh, new boolean[mesh.facetCount()]);
  }

  private static Mesh left(ThinFacets thin) {
    Rounded facets = thin.facets();
    return Mesh.of(facets.xyz(), facets.corners());
  }

  @Test
  void of_soundMesh_leavesIt() {
    for (int[] apex : new int[][] {{500, 0, 1000}, {500, 1, 1000}, {1, 0, 1000}}) {
      Mesh sound = box(apex);
      assertTrue(Proof.judge(sound).proven().isPresent());
      ThinFacets thin = taken(sound);
      assertTrue(thin.isMended());
      assertEquals(facets(sound), facets(left(thin)));
    }
  }

  @Test
  void of_cornerFoldedOverItsNeighbour_isMended() {
    // a step past the corner at 4: the needle's short edge is one step long, and what stands on it folds over
    Mesh folded = box(-1, 0, 1000);
    assertFalse(Proof.judge(folded).proven().isPresent());
    ThinFacets thin = taken(folded);
    assertTrue(thin.isMended());
    Mesh mended = left(thin);
    assertTrue(Proof.judge(mended).proven().isPresent(), Proof.judge(mended).findings().toString());
    assertEquals(12, mended.facetCount());
  }

  @Test
  void of_farFold_isNotMended() {
    assertFalse(taken(box(-100, 0, 1000)).isMended());
  }

  @Test
  void of_facetsInAnyOrder_takesTheSame() {
    for (int seed = 1; seed <= 20; seed++) {
      // some have facets without area, of which nobody can say what they meet
      Mesh crumpled = crumpled(new Random(seed));
      Set<String> expected = facets(left(taken(crumpled)));
      assertEquals(expected, facets(left(taken(shuffled(crumpled, new Random(seed))))), "seed " + seed);
    }
  }

  /** A pyramid on cells ten steps wide, some corners put on the longest side of a facet, so that it has no area, or beyond. */
  private static Mesh crumpled(Random random) {
    int n = 6;
    int row = n + 1;
    int[] xyz = new int[3 * row * row + 3];
    for (int i = 0; i < row * row; i++) {
      int aside = random.nextInt(5) == 0 ? 5 + 10 * random.nextInt(2) : 0;
      xyz[3 * i] = 10 * (i % row) + aside;
      xyz[3 * i + 1] = 10 * (i / row) + aside;
    }
    xyz[3 * row * row + 2] = SIZE;
    List<Integer> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        int v = row * i + j;
        corners.addAll(List.of(v, v + row, v + 1, v + 1, v + row, v + row + 1));
      }
      corners.addAll(List.of(i, i + 1, row * row, row * n + i + 1, row * n + i, row * row));
      corners.addAll(List.of(row * (i + 1), row * i, row * row, row * i + n, row * (i + 1) + n, row * row));
    }
    return Mesh.of(xyz, corners.stream().mapToInt(i -> i).toArray());
  }

  private static Mesh shuffled(Mesh mesh, Random random) {
    List<int[]> facets = new ArrayList<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      int turn = random.nextInt(3);
      facets.add(new int[] {mesh.corner(f, turn), mesh.corner(f, (turn + 1) % 3), mesh.corner(f, (turn + 2) % 3)});
    }
    Collections.shuffle(facets, random);
    return Mesh.of(mesh.xyz(), facets.stream().flatMapToInt(Arrays::stream).toArray());
  }

  /** Each facet's corners by their places, the least first. */
  private static Set<String> facets(Mesh mesh) {
    Set<String> all = new TreeSet<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      List<Place> places = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        places.add(Place.of(mesh.xyz(), mesh.corner(f, k)));
      }
      Collections.rotate(places, -places.indexOf(Collections.min(places)));
      all.add(places.toString());
    }
    return all;
  }
}
