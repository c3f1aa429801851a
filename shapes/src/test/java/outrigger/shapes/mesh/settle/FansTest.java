package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.frame.UnsettledException;

class FansTest {
  private static final int[] ONE = {0, 0, 0, 0, 0, 90, 90, -30, 0, 90, 30, 0};

  /** Two tetrahedra with an edge in common, the second given by its other two corners. */
  private static Fans twoOverAnEdge(int... corners) {
    int[] xyz = Arrays.copyOf(ONE, ONE.length + corners.length);
    System.arraycopy(corners, 0, xyz, ONE.length, corners.length);
    return Fans.of(xyz, new int[] {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3, 0, 4, 1, 0, 1, 5, 0, 5, 4, 1, 4, 5});
  }

  @Test
  void of_wedgesBesideEachOther_hangTogetherEach() {
    Fans fans = twoOverAnEdge(-90, 30, 0, -90, -30, 0);
    assertTrue(!fans.areSingle());
    assertEquals(fans.fan(0), fans.fan(3));
    assertEquals(fans.fan(12), fans.fan(15));
    assertTrue(fans.fan(0) != fans.fan(12));
  }

  @Test
  void touch_wedgesBesideEachOther_isAnEndOfTheirEdge() {
    int vertex = twoOverAnEdge(-90, 30, 0, -90, -30, 0).touch();
    assertTrue(vertex == 0 || vertex == 1);
  }

  @Test
  void touch_oneTetrahedron_isNone() {
    assertEquals(-1, Fans.of(ONE, new int[] {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3}).touch());
  }

  /** No two facets meet but in the edge; still no way of joining them by twos makes sense. */
  @Test
  void of_wedgeInsideAnother_doesNotSettle() {
    assertThrows(UnsettledException.class, () -> twoOverAnEdge(60, -10, 5, 60, 10, 5));
  }
}
