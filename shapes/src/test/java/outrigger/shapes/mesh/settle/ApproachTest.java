package outrigger.shapes.mesh.settle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ApproachTest {
  private static final int FINE = 60;

  private final Random random = new Random(7);
  private final double[] xyz = new double[12];
  private Places places;
  private Approach approach;

  private void draw() {
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = 20 * random.nextDouble();
    }
    place();
  }

  private void place(double... at) {
    System.arraycopy(at, 0, xyz, 0, at.length);
    places = new Places(OnCube.rounded(new int[12], new int[0], new boolean[] {true, true, true, true}, xyz));
    for (int v = 0; v < 4; v++) {
      places.know(v);
    }
    approach = new Approach(places);
  }

  private double between(double[] p, double[] q) {
    return Math.sqrt((p[0] - q[0]) * (p[0] - q[0]) + (p[1] - q[1]) * (p[1] - q[1]) + (p[2] - q[2]) * (p[2] - q[2]));
  }

  private double[] mean(double a, int v, double b, int w, double c, int x) {
    double[] p = new double[3];
    for (int k = 0; k < 3; k++) {
      p[k] = a * xyz[3 * v + k] + b * xyz[3 * w + k] + c * xyz[3 * x + k];
    }
    return p;
  }

  @Test
  void toFacet_aboveAndBeside_isKnown() {
    place(1, 1, 3, 0, 0, 0, 4, 0, 0, 0, 4, 0);
    approach.toFacet(0, 1, 2, 3);
    assertEquals(3, approach.distance, 1e-12);
    assertArrayEquals(new double[] {1, -0.5, -0.25, -0.25}, approach.share, 1e-12);
    place(1, -3, 4);
    approach.toFacet(0, 1, 2, 3);
    assertEquals(5, approach.distance, 1e-12);
    assertArrayEquals(new double[] {1, -0.75, -0.25, 0}, approach.share, 1e-12);
  }

  @Test
  void betweenEdges_parallelOrPastAnEnd_isNone() {
    place(0, 0, 0, 9, 0, 0, 1, 1, 0, 8, 1, 0);
    assertFalse(approach.betweenEdges(0, 1, 2, 3));
    place(0, 0, 0, 9, 0, 0, 10, -1, 1, 10, 1, 1);
    assertFalse(approach.betweenEdges(0, 1, 2, 3));
  }

  /** No point of a fine grid on the facet, or on the edges, is nearer, and one is almost as near. */
  @Test
  void nearestPoints_againstAllOfAFineGrid_areNearest() {
    int crossed = 0;
    for (int i = 0; i < 300; i++) {
      draw();
      approach.toFacet(0, 1, 2, 3);
      double least = Double.POSITIVE_INFINITY;
      for (int a = 0; a <= FINE; a++) {
        for (int b = 0; a + b <= FINE; b++) {
          least = Math.min(least, between(mean(1, 0, 0, 0, 0, 0),
              mean((double) a / FINE, 1, (double) b / FINE, 2, 1 - (double) (a + b) / FINE, 3)));
        }
      }
      assertTrue(approach.distance <= least + 1e-9 && least <= approach.distance + 35.0 / FINE);
      if (approach.betweenEdges(0, 1, 2, 3)) {
        crossed++;
        for (int a = 0; a <= FINE; a++) {
          for (int b = 0; b <= FINE; b++) {
            double s = (double) a / FINE;
            double t = (double) b / FINE;
            assertTrue(approach.distance <= between(mean(1 - s, 0, s, 1, 0, 0), mean(1 - t, 2, t, 3, 0, 0)) + 1e-9);
          }
        }
      }
    }
    assertTrue(crossed > 30);
  }

  /** Each corner that goes a little way widens the gap by its share of it. */
  @Test
  void share_ofEachCorner_isHowTheGapWidens() {
    for (int i = 0; i < 200; i++) {
      draw();
      boolean edges = i % 2 == 0;
      if (edges && !approach.betweenEdges(0, 1, 2, 3)) {
        continue;
      }
      for (int k = 0; k < 4; k++) {
        measure(edges);
        double before = approach.distance;
        double share = approach.share[k];
        double[] way = approach.way.clone();
        for (int axis = 0; axis < 3; axis++) {
          places.move(k, axis, 1e-4 * way[axis] / before);
        }
        measure(edges);
        assertEquals(share, (approach.distance - before) / 1e-4, 1e-2);
        for (int axis = 0; axis < 3; axis++) {
          places.move(k, axis, -1e-4 * way[axis] / before);
        }
      }
    }
  }

  /** However near it is, the gap is known to as many digits, and on which side. */
  @Test
  void distance_ofAVeryNearPair_isKnown() {
    for (double gap : new double[] {1e-3, 1e-6, -1e-12, 0x1p-90, -0x1p-150}) {
      place(1_000_001, 2_000_003, gap, 0, 0, 0, 9_000_000, 1, 0, 5, 8_000_000, 0);
      approach.toFacet(0, 1, 2, 3);
      assertEquals(1, approach.way[2] / gap, 1e-9);
      place(0, 0, gap, 9_000_000, 7_000_000, gap, 9_000_000, 0, 0, 0, 7_000_000, 0);
      assertTrue(approach.betweenEdges(0, 1, 2, 3));
      assertEquals(1, approach.way[2] / gap, 1e-9);
      assertArrayEquals(new double[] {0.5, 0.5, -0.5, -0.5}, approach.share, 1e-9);
    }
  }

  /** A corner beside an edge of a facet and in its plane. */
  @Test
  void toFacet_justBesideAnEdge_isNotOnIt() {
    place(3_000_000, -0x1p-80, 0, 0, 0, 0, 9_000_000, 0, 0, 5, 8_000_000, 0);
    approach.toFacet(0, 1, 2, 3);
    assertEquals(0x1p-80, approach.distance, 0x1p-110);
    assertEquals(-0x1p-80, approach.way[1], 0x1p-110);
  }

  private void measure(boolean edges) {
    if (edges) {
      approach.betweenEdges(0, 1, 2, 3);
    } else {
      approach.toFacet(0, 1, 2, 3);
    }
  }
}
