package outrigger.shapes.check;

import java.util.Optional;
import outrigger.shapes.num.DisjointSets;
import outrigger.shapes.num.Shares;

/**
 * Decides whether a surface is free of every fault up to facets that meet, without saying which fault there is.
 *
 * <p>Edges are paired and vertices walked round. A {@link Plate} needs little more. Any other surface is divided twice, into
 * flat patches and into regions that face one axis direction. A region's {@link Outline} shows that nothing within it meets;
 * only patches of different regions, and those of regions whose outline showed nothing, are compared with each other by
 * {@link Clearance}.
 */
final class QuickProof {
  private final Surface surface;
  private final HalfEdges edges;
  private Regions patches = Regions.none();
  private Regions regions = Regions.none();
  /** Of each region whether its outline shows that nothing within it meets. */
  private boolean[] shown = {};

  private QuickProof(Surface surface, HalfEdges edges) {
    this.surface = surface;
    this.edges = edges;
  }

  /** The shells of a surface without fault; empty if it has any. */
  static Optional<Shells> examine(Surface surface) {
    for (int f = 0; f < surface.facets(); f++) {
      if (!surface.hasArea(f)) {
        return Optional.empty();
      }
    }
    return HalfEdges.of(surface).filter(e -> e.formSingleFans(surface)).flatMap(e -> examine(surface, e));
  }

  private static Optional<Shells> examine(Surface surface, HalfEdges edges) {
    Optional<Regions> plate = Plate.regions(surface, edges);
    if (plate.isPresent()) {
      return Optional.of(shells(surface, edges, plate.get()));
    }
    Flatness flatness = new Flatness(surface, edges);
    QuickProof proof = new QuickProof(surface, edges);
    surface.workers().both(() -> proof.patches = Regions.flood(edges, surface.facets(), flatness), () -> {
      if (!flatness.foundFold()) {
        proof.regions = Regions.flood(edges, surface.facets(), new Facing(surface, edges));
        proof.showSimple();
      }
    });
    if (flatness.foundFold()) {
      return Optional.empty();
    }
    return proof.holds() ? Optional.of(shells(surface, edges, proof.regions)) : Optional.empty();
  }

  /** Finds out which regions are simple; patches are not asked for. */
  private void showSimple() {
    shown = new boolean[regions.count()];
    Shares.of(surface.workers(), shown.length, regions::size).each(() -> {
      Outline outline = new Outline(surface, edges);
      return (from, to) -> {
        for (int r = from; r < to; r++) {
          shown[r] = outline.isSimple(regions, r);
        }
        return to;
      };
    });
  }

  private boolean holds() {
    PatchContact contact = new PatchContact(surface, edges, patches);
    Outline outline = new Outline(surface, edges);
    int[] groups = new int[patches.count()];
    for (int p = 0; p < groups.length; p++) {
      int region = regions.of(patches.facet(patches.start(p)));
      groups[p] = shown[region] ? region : -1;
      if (!shown[region] && !outline.isSimple(patches, p) && !contact.isClearOfItself(p)) {
        return false;
      }
    }
    return new Clearance(contact, patches, groups).holds(surface, edges, regions);
  }

  private static Shells shells(Surface surface, HalfEdges edges, Regions regions) {
    DisjointSets joined = new DisjointSets(regions.count());
    surface.workers().parts(surface.corners().length, (from, to) -> {
      DisjointSets some = new DisjointSets(regions.count());
      for (int h = from; h < to; h++) {
        int one = regions.of(h / 3);
        int other = regions.of(edges.across(h));
        if (one < other) {
          some.join(one, other);
        }
      }
      joined.joinAll(some);
    });
    return Shells.of(surface, regions, joined);
  }
}
