package outrigger.shapes.check;

/** The half-edges at which each region of a division ends, region after region, in no order round it. */
final class Rims {
  private final int[] halves;
  private final int[] starts;

  Rims(HalfEdges edges, Regions regions) {
    halves = new int[3 * regions.start(regions.count())];
    starts = new int[regions.count() + 1];
    int n = 0;
    for (int r = 0; r < regions.count(); r++) {
      for (int i = regions.start(r); i < regions.start(r + 1); i++) {
        int first = 3 * regions.facet(i);
        for (int h = first; h < first + 3; h++) {
          halves[n] = h;
          n += regions.of(edges.across(h)) == r ? 0 : 1;
        }
      }
      starts[r + 1] = n;
    }
  }

  /** Place of a region's first half-edge; those of the next region follow on its last. */
  int start(int region) {
    return starts[region];
  }

  /** Half-edge at a place. */
  int half(int place) {
    return halves[place];
  }
}
