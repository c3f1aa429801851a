package outrigger.shapes.check;

import java.util.Arrays;

/** A surface's facets divided into regions, each connected over edges; numbered in the order of their first facet. */
final class Regions {
  /** Says which neighbours belong together. */
  interface Bond {
    /** A new region begins with this facet. */
    default void begin(int facet) {}

    /** Whether the facet across half-edge h, in no region yet, joins the region of the facet that h is on. */
    boolean joins(int h);
  }

  private final int[] regionOf;
  private final int[] facets;
  private int[] starts = new int[16];
  private int count;

  private Regions(int facets) {
    regionOf = new int[facets];
    this.facets = new int[facets];
    Arrays.fill(regionOf, -1);
  }

  /** No regions at all. */
  static Regions none() {
    return new Regions(0);
  }

  /** Floods the surface. Each edge is asked about at most once: from whichever of its facets comes first. */
  static Regions flood(HalfEdges edges, int facets, Bond bond) {
    Regions regions = new Regions(facets);
    int end = 0;
    for (int seed = 0; seed < facets; seed++) {
      if (regions.regionOf[seed] < 0) {
        end = regions.flood(seed, end, edges, bond);
      }
    }
    regions.starts = Arrays.copyOf(regions.starts, regions.count + 1);
    regions.starts[regions.count] = facets;
    return regions;
  }

  private int flood(int seed, int from, HalfEdges edges, Bond bond) {
    if (count == starts.length) {
      starts = Arrays.copyOf(starts, 2 * count);
    }
    starts[count] = from;
    bond.begin(seed);
    int end = take(seed, from);
    for (int i = from; i < end; i++) {
      for (int h = 3 * facets[i]; h < 3 * facets[i] + 3; h++) {
        int next = edges.across(h);
        if (regionOf[next] < 0 && bond.joins(h)) {
          end = take(next, end);
        }
      }
    }
    count++;
    return end;
  }

  private int take(int facet, int at) {
    regionOf[facet] = count;
    facets[at] = facet;
    return at + 1;
  }

  int count() {
    return count;
  }

  /** Region of a facet. */
  int of(int facet) {
    return regionOf[facet];
  }

  /** Number of facets in a region. */
  int size(int region) {
    return starts[region + 1] - starts[region];
  }

  /** Place of a region's first facet among all; those of the next region follow on its last. */
  int start(int region) {
    return starts[region];
  }

  /** Facet at a place. */
  int facet(int place) {
    return facets[place];
  }
}
