package outrigger.shapes.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;

class BoxTreeTest {
  private static final long SEED = 7;

  @Test
  void selfPairs_randomBoxes_eachOverlapOnce() {
    for (int n : new int[] {0, 1, 2, 3, 4, 5, 8, 9, 63, 64, 65, 500}) {
      for (int range : new int[] {1, 10, 1000, 1 << 24}) {
        int[] boxes = boxes(new Random(SEED + n), n, range);
        List<String> found = new ArrayList<>();
        assertTrue(BoxTree.of(boxes).selfPairs((i, j) -> {
          assertTrue(i < j);
          return found.add(i + " " + j);
        }));
        TreeSet<String> expected = new TreeSet<>();
        for (int i = 0; i < n; i++) {
          for (int j = i + 1; j < n; j++) {
            if (overlap(boxes, i, boxes, j)) {
              expected.add(i + " " + j);
            }
          }
        }
        assertEquals(expected, new TreeSet<>(found), "n " + n + ", range " + range + ", seed " + SEED);
        assertEquals(expected.size(), found.size(), "a pair came twice");
      }
    }
  }

  @Test
  void selfPairs_visitorHasEnough_stops() {
    int[] seen = new int[1];
    assertFalse(BoxTree.of(new int[6 * 100]).selfPairs((i, j) -> ++seen[0] < 17));
    assertEquals(17, seen[0]);
  }

  @Test
  void forEachOverlap_randomBoxes_eachOnce() {
    int[] boxes = boxes(new Random(SEED), 700, 100);
    int[] asked = boxes(new Random(SEED + 1), 200, 100);
    BoxTree tree = BoxTree.of(boxes);
    for (int q = 0; q < 200; q++) {
      List<Integer> found = new ArrayList<>();
      int o = 6 * q;
      tree.forEachOverlap(asked[o], asked[o + 1], asked[o + 2], asked[o + 3], asked[o + 4], asked[o + 5], found::add);
      TreeSet<Integer> expected = new TreeSet<>();
      for (int i = 0; i < 700; i++) {
        if (overlap(asked, q, boxes, i)) {
          expected.add(i);
        }
      }
      assertEquals(expected, new TreeSet<>(found), "query " + q + ", seed " + SEED);
      assertEquals(expected.size(), found.size());
    }
  }

  @Test
  void forEachAlong_anyAxis_boxesOnTheRay() {
    int[] boxes = boxes(new Random(SEED), 400, 30);
    BoxTree tree = BoxTree.of(boxes);
    Random random = new Random(SEED + 2);
    for (int q = 0; q < 600; q++) {
      int a = q % 3;
      double u = random.nextInt(62) / 2.0;
      double v = random.nextInt(62) / 2.0;
      double from = random.nextInt(62) / 2.0;
      boolean upward = random.nextBoolean();
      TreeSet<Integer> expected = new TreeSet<>();
      for (int i = 0; i < 400; i++) {
        boolean ahead = upward ? boxes[6 * i + 3 + a] >= from : boxes[6 * i + a] <= from;
        if (ahead && holds(boxes, i, (a + 1) % 3, u) && holds(boxes, i, (a + 2) % 3, v)) {
          expected.add(i);
        }
      }
      List<Integer> found = new ArrayList<>();
      tree.forEachAlong(Axis.values()[a], u, v, from, upward, found::add);
      assertEquals(expected, new TreeSet<>(found), "query " + q + ", seed " + SEED);
      assertEquals(expected.size(), found.size());
    }
  }

  @Test
  void ofFacets_cornersGiven_boxesOfTheCorners() {
    int[] xyz = {0, 0, 0, 4, -1, 0, 0, 4, 2, 9, 9, 9};
    List<Integer> found = new ArrayList<>();
    BoxTree tree = BoxTree.ofFacets(xyz, new int[] {0, 1, 2, 1, 2, 3});
    tree.forEachOverlap(0, -1, 0, 0, -1, 0, found::add);
    tree.forEachOverlap(9, 9, 9, 9, 9, 9, found::add);
    assertEquals(List.of(0, 1, 1), found);
    assertEquals(2, tree.size());
  }

  private static boolean holds(int[] boxes, int i, int axis, double x) {
    return boxes[6 * i + axis] <= x && x <= boxes[6 * i + 3 + axis];
  }

  private static boolean overlap(int[] a, int i, int[] b, int j) {
    for (int k = 0; k < 3; k++) {
      if (a[6 * i + k] > b[6 * j + 3 + k] || a[6 * i + 3 + k] < b[6 * j + k]) {
        return false;
      }
    }
    return true;
  }

  private static int[] boxes(Random random, int n, int range) {
    int[] boxes = new int[6 * n];
    for (int i = 0; i < n; i++) {
      int size = 1 + random.nextInt(Math.max(1, range / 5));
      for (int k = 0; k < 3; k++) {
        boxes[6 * i + k] = random.nextInt(range);
        boxes[6 * i + 3 + k] = boxes[6 * i + k] + random.nextInt(size);
      }
    }
    return boxes;
  }
}
