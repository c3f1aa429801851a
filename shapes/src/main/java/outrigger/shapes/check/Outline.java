package outrigger.shapes.check;

import java.util.Arrays;

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
  /** For each vertex the rim's half-edge that leaves from it; -1 between regions and off the rim. */
  private final int[] leaving;
  private int[] rim = new int[64];
  private int[] loops = new int[64];
  private int length;
  private int[] starts = new int[0];
  private int[] ends = new int[0];

  Outline(Surface surface, HalfEdges edges) {
    this.surface = surface;
    this.edges = edges;
    leaving = new int[surface.vertices()];
    Arrays.fill(leaving, -1);
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
      common &= surface.facing(regions.facet(i));
    }
    collect(regions, region);
    if (!chain()) {
      return false;
    }
    for (int side = 0; side < 6; side++) {
      if ((common & 1 << side) != 0
          && new Loops(surface, edges, side / 2, loops, ends).areSimple(side % 2 == 0 ? 1 : -1)) {
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
    for (int i = 0; i < length; i++) {
      int from = edges.from(rim[i]);
      if (leaving[from] >= 0) {
        for (int j = 0; j < i; j++) {
          leaving[edges.from(rim[j])] = -1;
        }
        return false;
      }
      leaving[from] = rim[i];
    }
    loops = loops.length < length ? new int[rim.length] : loops;
    int count = 0;
    int n = 0;
    for (int i = 0; i < length; i++) {
      int from = edges.from(rim[i]);
      if (leaving[from] >= 0) {
        starts = count == starts.length ? Arrays.copyOf(starts, 2 * count + 8) : starts;
        starts[count++] = n;
      }
      while (leaving[from] >= 0) {
        loops[n++] = leaving[from];
        int to = edges.to(leaving[from]);
        leaving[from] = -1;
        from = to;
      }
    }
    ends = Arrays.copyOf(starts, count + 1);
    ends[count] = n;
    return length > 0;
  }
}
