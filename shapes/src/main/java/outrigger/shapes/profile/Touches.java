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
    Box box = Box.of(a);
    for (int e = 0; e < b.size(); e++) {
      int f = e + 1 < b.size() ? e + 1 : 0;
      int minX = Math.min(b.x(e), b.x(f));
      int maxX = Math.max(b.x(e), b.x(f));
      int minY = Math.min(b.y(e), b.y(f));
      int maxY = Math.max(b.y(e), b.y(f));
      for (int c = 0; box.meets(minX, minY, maxX, maxY) && c < a.size(); c++) {
        if (a.x(c) >= minX && a.x(c) <= maxX && a.y(c) >= minY && a.y(c) <= maxY
            && Sign.turn(b.x(e), b.y(e), b.x(f), b.y(f), a.x(c), a.y(c)) == 0) {
          return true;
        }
      }
    }
    return false;
  }
}
