package outrigger.shapes.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Decides whether a surface is free of every fault up to facets that meet, without saying which fault there is.
 *
 * <p>Edges are paired and vertices walked round; then the surface is divided twice, into flat patches and into regions that
 * face one axis direction. A region's {@link Outline} shows that nothing within it meets; only patches of different
 * regions, and those of regions whose outline showed nothing, are compared with each other by {@link Clearance}.
 */
final class QuickProof {
  private final Surface surface;
  private final HalfEdges edges;

  private QuickProof(Surface surface, HalfEdges edges) {
    this.surface = surface;
    this.edges = edges;
  }

  /** The surface's edges if it has no fault; empty if it has any. */
  static Optional<HalfEdges> examine(Surface surface) {
    for (int f = 0; f < surface.facets(); f++) {
      if (!surface.hasArea(f)) {
        return Optional.empty();
      }
    }
    return HalfEdges.of(surface).filter(e -> e.formSingleFans(surface.vertices()) && new QuickProof(surface, e).holds());
  }

  private boolean holds() {
    Flatness flatness = new Flatness(surface, edges);
    Regions patches = Regions.flood(edges, surface.facets(), flatness);
    if (flatness.foundFold()) {
      return false;
    }
    Regions regions = Regions.flood(edges, surface.facets(), new Facing.Bond(surface, edges));
    Outline outline = new Outline(surface, edges);
    int[] groups = new int[patches.count()];
    Arrays.fill(groups, -1);
    int[] overlapping = IntStream.range(0, regions.count()).filter(r -> !outline.isSimple(regions, r))
        .toArray();
    boolean[] open = new boolean[regions.count()];
    for (int r : overlapping) {
      open[r] = true;
    }
    int[] unknown = IntStream.range(0, patches.count())
        .filter(p -> open[regions.of(patches.facet(patches.start(p)))] && !outline.isSimple(patches, p)).toArray();
    for (int p = 0; p < groups.length; p++) {
      int region = regions.of(patches.facet(patches.start(p)));
      groups[p] = open[region] ? -1 : region;
    }
    return new Clearance(surface, edges, patches).holds(groups, unknown);
  }
}
