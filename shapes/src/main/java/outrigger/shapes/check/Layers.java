package outrigger.shapes.check;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import outrigger.shapes.exact.BoxTree;

/**
 * Tells of two regions, one on each side of a plane across an axis, whether they have just common corners and edges in it:
 * as one layer of a part does that stands on another.
 *
 * <p>The smaller region must have no facet in that plane, and its corners and edges there must all be the other's too. A
 * region in which no facets meet holds its own corners and edges nowhere else, so that the two are clear of each other.
 * Each pair is worked out once, whichever thread asks.
 */
final class Layers implements BoxTree.GroupPairs {
  private final Surface surface;
  private final HalfEdges edges;
  private final Regions regions;
  private final int[] boxes;
  private final Map<Long, Boolean> known = new ConcurrentHashMap<>();

  /**
   * Prepares for questions.
   *
   * @param boxes box of each region, least and greatest x, y, z
   */
  Layers(Surface surface, HalfEdges edges, Regions regions, int[] boxes) {
    this.surface = surface;
    this.edges = edges;
    this.regions = regions;
    this.boxes = boxes;
  }

  @Override
  public boolean areClear(int a, int b) {
    int axis = axisBetween(a, b);
    return axis >= 0 && known.computeIfAbsent((long) a * regions.count() + b,
        key -> regions.size(a) <= regions.size(b) ? standsOn(a, b, axis) : standsOn(b, a, axis));
  }

  /** An axis along which the regions' boxes touch without overlap, or -1. */
  private int axisBetween(int a, int b) {
    for (int k = 0; k < 3; k++) {
      if (boxes[6 * a + 3 + k] == boxes[6 * b + k] || boxes[6 * b + 3 + k] == boxes[6 * a + k]) {
        return k;
      }
    }
    return -1;
  }

  private boolean standsOn(int a, int b, int axis) {
    int x = boxes[6 * a + axis] == boxes[6 * b + 3 + axis] ? boxes[6 * a + axis] : boxes[6 * b + axis];
    int last = -1;
    for (int i = regions.start(a); i < regions.start(a + 1); i++) {
      int in = 0;
      for (int h = 3 * regions.facet(i); h < 3 * regions.facet(i) + 3; h++) {
        int v = edges.from(h);
        if (surface.xyz()[3 * v + axis] != x) {
          continue;
        }
        boolean along = surface.xyz()[3 * edges.to(h) + axis] == x;
        if (++in == 3 || along && regions.of(edges.across(h)) != b || v != last && !isCorner(h, b)) {
          return false;
        }
        last = v;
      }
    }
    return true;
  }

  /** Whether a region has a facet at the vertex that half-edge h starts from. */
  private boolean isCorner(int h, int region) {
    int at = h;
    do {
      if (regions.of(at / 3) == region) {
        return true;
      }
      at = edges.twin(HalfEdges.before(at));
    } while (at != h);
    return false;
  }
}
