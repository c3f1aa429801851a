package outrigger.shapes.check;

import outrigger.shapes.num.Workers;

/** The half-edges at which each region of a division ends, in no order round it. */
final class Rims {
  /** Regions that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  /** Of each region there is room for all edges of its facets. */
  private final int[] halves;
  private final Regions regions;
  private final int[] ends;

  Rims(HalfEdges edges, Regions regions, Workers workers) {
    this.regions = regions;
    halves = new int[3 * regions.start(regions.count())];
    ends = new int[regions.count()];
    workers.split(ends.length, AT_ONCE, (from, to) -> {
      for (int r = from; r < to; r++) {
        ends[r] = fill(edges, r);
      }
    });
  }

  private int fill(HalfEdges edges, int region) {
    int n = start(region);
    for (int i = regions.start(region); i < regions.start(region + 1); i++) {
      int first = 3 * regions.facet(i);
      for (int h = first; h < first + 3; h++) {
        if (regions.of(edges.across(h)) != region) {
          halves[n++] = h;
        }
      }
    }
    return n;
  }

  /** Place of a region's first half-edge. */
  int start(int region) {
    return 3 * regions.start(region);
  }

  /** The place after that of its last. */
  int end(int region) {
    return ends[region];
  }

  /** Half-edge at a place. */
  int half(int place) {
    return halves[place];
  }
}
