package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.Sign;

/** Tells whether outlines of one profile touch each other: they never cross, so one has a corner on the other. */
final class Touches {
  private Touches() {}

  static boolean any(List<Region> regions) {
    List<Ring> rings = new ArrayList<>();
    for (Region region : regions) {
      rings.add(region.shell());
      rings.addAll(region.holes());
    }
    return rings.size() > 1 && !BoxTree.of(boxes(rings)).selfPairs((i, j) -> !touch(rings.get(i), rings.get(j)));
  }

  private static int[] boxes(List<Ring> rings) {
    int[] boxes = new int[6 * rings.size()];
    for (int i = 0; i < rings.size(); i++) {
      Box box = Box.of(rings.get(i));
      boxes[6 * i] = box.minX();
      boxes[6 * i + 1] = box.minY();
      boxes[6 * i + 3] = box.maxX();
      boxes[6 * i + 4] = box.maxY();
    }
    return boxes;
  }

  private static boolean touch(Ring a, Ring b) {
    return hasCornerOn(a, b) || hasCornerOn(b, a);
  }

  /** Whether a corner of one ring lies on an edge of the other, ends included. */
  private static boolean hasCornerOn(Ring a, Ring b) {
    Box box = Box.of(b);
    for (int c = 0; c < a.size(); c++) {
      if (box.meets(a.x(c), a.y(c), a.x(c), a.y(c)) && isOn(a.x(c), a.y(c), b)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOn(int x, int y, Ring ring) {
    for (int e = 0; e < ring.size(); e++) {
      int f = e + 1 < ring.size() ? e + 1 : 0;
      if (Math.min(ring.x(e), ring.x(f)) <= x && x <= Math.max(ring.x(e), ring.x(f))
          && Math.min(ring.y(e), ring.y(f)) <= y && y <= Math.max(ring.y(e), ring.y(f))
          && Sign.turn(ring.x(e), ring.y(e), ring.x(f), ring.y(f), x, y) == 0) {
        return true;
      }
    }
    return false;
  }
}
