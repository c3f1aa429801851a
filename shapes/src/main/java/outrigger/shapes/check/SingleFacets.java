package outrigger.shapes.check;

/** Faults that facets have by themselves, or by being there twice. */
final class SingleFacets {
  private SingleFacets() {}

  static void findZeroAreas(Surface surface, Findings findings) {
    for (int f = 0; f < surface.facets(); f++) {
      if (!surface.hasArea(f)) {
        int facet = f;
        findings.addFacet(Rule.ZERO_AREA, surface, f, () -> "facet " + (facet + 1)
            + " has no area: its corners " + surface.facetWords(facet) + " mm lie in one line");
      }
    }
  }

  /** Facets over the same three vertices, whichever way round. */
  static void findDuplicates(Surface surface, Findings findings) {
    int n = surface.facets();
    long[] keys = new long[n];
    int[] facets = new int[n];
    for (int f = 0; f < n; f++) {
      keys[f] = greatest(surface, f);
      facets[f] = f;
    }
    KeySort.sort(keys, facets, n);
    for (int i = 0; i < n; i++) {
      keys[i] = lesserTwo(surface, facets[i]);
    }
    KeySort.sort(keys, facets, n);
    for (int i = 1; i < n; i++) {
      if (keys[i] == keys[i - 1] && greatest(surface, facets[i]) == greatest(surface, facets[i - 1])) {
        int first = facets[i - 1];
        int second = facets[i];
        findings.addFacet(Rule.DUPLICATE, surface, second, () -> "facets " + (first + 1) + " and " + (second + 1)
            + " have the same three corners " + surface.facetWords(second) + " mm");
      }
    }
  }

  private static int greatest(Surface s, int f) {
    return Math.max(s.corner(f, 0), Math.max(s.corner(f, 1), s.corner(f, 2)));
  }

  private static long lesserTwo(Surface s, int f) {
    long least = Math.min(s.corner(f, 0), Math.min(s.corner(f, 1), s.corner(f, 2)));
    long middle = (long) s.corner(f, 0) + s.corner(f, 1) + s.corner(f, 2) - least - greatest(s, f);
    return least * s.vertices() + middle;
  }
}
