package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

class SliversTest {
  /** A film two steps high beside the cube, inside out, is gone; the cube stays. */
  @Test
  void without_filmThinnerThanTheGrid_leavesIt() {
    int mm = Grid.PER_MM;
    int[] film = {3 * mm, 0, 0, 4 * mm, 0, 0, 3 * mm, mm, 0, 3 * mm + 1, 1, 2};
    int[] facets = {0, 1, 2, 0, 3, 1, 1, 3, 2, 2, 3, 0};
    Mesh both = OnCube.with(film, facets);
    assertArrayEquals(OnCube.CUBE.corners(), Slivers.without(both.xyz(), both.corners()));
  }
}
