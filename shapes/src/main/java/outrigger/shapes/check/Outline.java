package outrigger.shapes.check;

import java.util.Arrays;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.Sign;

/**
 * Shows that the facets of a region, which all face one axis direction, do not meet other than in common corners and
 * edges, by looking at the region's rim alone, seen along that axis.
 *
 * <p>Seen so, all facets turn the same way. How many of them cover a point is then the number of times the rim winds
 * round it. If the rim is made of loops of which no two edges meet but at common corners, and one loop alone runs the way
 * the facets do, no point is covered twice: each of the other loops takes one off. And where no point is covered twice,
 * two facets have no more in common than corners and edges of both.
 */
final class Outline {
  private final Surface surface;
  private final HalfEdges edges;
  private final int[] leaving;
  private final int[] stamps;
  private int stamp;
  private int[] rim = new int[64];
  private int[] loops = new int[64];
  private int length;
  private int u;
  private int v;

  Outline(Surface surface, HalfEdges edges) {
    this.surface = surface;
    this.edges = edges;
    leaving = new int[surface.vertices()];
    stamps = new int[surface.vertices()];
  }

  /**
   * Whether a region is shown to be without overlap. False says nothing: it may just look so along the axes.
   */
  boolean isSimple(Regions regions, int region) {
    if (regions.size(region) <= 2) {
      return true; // neighbours that are not folded have an edge in common and nothing else
    }
    int common = ~0;
    for (int i = regions.start(region); i < regions.start(region + 1); i++) {
      common &= Facing.of(surface, regions.facet(i));
    }
    collect(regions, region);
    if (!chain()) {
      return false;
    }
    for (int side = 0; side < 6; side++) {
      if ((common & 1 << side) != 0 && isSimple(side / 2, side % 2 == 0 ? 1 : -1)) {
        return true;
      }
    }
    return false;
  }

  private void collect(Regions regions, int region) {
    length = 0;
    for (int i = regions.start(region); i < regions.start(region + 1); i++) {
      for (int h = 3 * regions.facet(i); h < 3 * regions.facet(i) + 3; h++) {
        if (regions.of(edges.across(h)) != region) {
          if (length == rim.length) {
            rim = Arrays.copyOf(rim, 2 * length);
          }
          rim[length++] = h;
        }
      }
    }
  }

  /** Puts the rim in the order of its loops; false if it passes a corner twice. */
  private boolean chain() {
    stamp++;
    for (int i = 0; i < length; i++) {
      int from = edges.from(rim[i]);
      if (stamps[from] == stamp) {
        return false;
      }
      stamps[from] = stamp;
      leaving[from] = rim[i];
    }
    loops = loops.length < length ? new int[rim.length] : loops;
    int n = 0;
    for (int i = 0; i < length; i++) {
      for (int from = edges.from(rim[i]); leaving[from] >= 0;) {
        int h = leaving[from];
        loops[n++] = h;
        leaving[from] = -1;
        from = edges.to(h);
      }
    }
    return length > 0;
  }

  private boolean isSimple(int axis, int facing) {
    u = (axis + 1) % 3;
    v = (axis + 2) % 3;
    int along = 0;
    for (int i = 0, j; i < length; i = j) {
      long area = 0;
      int first = edges.from(loops[i]);
      for (j = i; j == i || edges.to(loops[j - 1]) != first; j++) {
        area += doubledArea(first, loops[j]);
      }
      if (area == 0) {
        return false;
      }
      along += Long.signum(area) == facing ? 1 : 0;
    }
    return along == 1 && edgesKeepApart();
  }

  /** Sums of these may wrap: a simple loop's area is below 2^52, so that the last one is right. */
  private long doubledArea(int first, int h) {
    int[] p = surface.xyz();
    int o = 3 * first;
    int a = 3 * edges.from(h);
    int b = 3 * edges.to(h);
    return (long) (p[a + u] - p[o + u]) * (p[b + v] - p[o + v]) - (long) (p[a + v] - p[o + v]) * (p[b + u] - p[o + u]);
  }

  private boolean edgesKeepApart() {
    int[] p = surface.xyz();
    int[] boxes = new int[6 * length];
    for (int i = 0; i < length; i++) {
      int a = 3 * edges.from(loops[i]);
      int b = 3 * edges.to(loops[i]);
      boxes[6 * i] = Math.min(p[a + u], p[b + u]);
      boxes[6 * i + 1] = Math.min(p[a + v], p[b + v]);
      boxes[6 * i + 3] = Math.max(p[a + u], p[b + u]);
      boxes[6 * i + 4] = Math.max(p[a + v], p[b + v]);
    }
    return BoxTree.inOrder(boxes).selfPairs((i, j) -> keepApart(loops[i], loops[j]));
  }

  /** Whether two edges whose boxes meet have at most a common end in common. */
  private boolean keepApart(int g, int h) {
    int a = edges.from(g);
    int b = edges.to(g);
    int c = edges.from(h);
    int d = edges.to(h);
    if (b == c) {
      return !folds(a, b, d);
    }
    if (d == a) {
      return !folds(c, a, b);
    }
    return turn(a, b, c) * turn(a, b, d) > 0 || turn(c, d, a) * turn(c, d, b) > 0;
  }

  /** Whether the way from a to b goes back over itself to c. */
  private boolean folds(int a, int b, int c) {
    if (turn(a, b, c) != 0) {
      return false;
    }
    int[] p = surface.xyz();
    return (long) (p[3 * a + u] - p[3 * b + u]) * (p[3 * c + u] - p[3 * b + u])
        + (long) (p[3 * a + v] - p[3 * b + v]) * (p[3 * c + v] - p[3 * b + v]) > 0;
  }

  private int turn(int a, int b, int c) {
    int[] p = surface.xyz();
    return Sign.turn(p[3 * a + u], p[3 * a + v], p[3 * b + u], p[3 * b + v], p[3 * c + u], p[3 * c + v]);
  }
}
