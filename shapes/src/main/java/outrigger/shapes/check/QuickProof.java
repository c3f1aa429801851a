package outrigger.shapes.check;

import java.util.List;
import java.util.Optional;
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
  private final Regions patches;
  private final Regions regions;

  private QuickProof(Surface surface, HalfEdges edges, Regions patches, Regions regions) {
    this.surface = surface;
    this.edges = edges;
    this.patches = patches;
    this.regions = regions;
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
    List<Regions> divided = surface.workers().each(2, i -> i == 1 && flatness.foundFold() ? Regions.none()
        : Regions.flood(edges, surface.facets(), i == 0 ? flatness : new Facing(surface, edges)));
    if (flatness.foundFold()) {
      return Optional.empty();
    }
    QuickProof proof = new QuickProof(surface, edges, divided.get(0), divided.get(1));
    return proof.holds() ? Optional.of(shells(surface, edges, proof.regions)) : Optional.empty();
  }

  private boolean holds() {
    boolean[] shown = new boolean[regions.count()];
    Shares.of(surface.workers(), shown.length, regions::size).each(() -> {
      Outline outline = new Outline(surface, edges);
      return (from, to) -> {
        for (int r = from; r < to; r++) {
          shown[r] = outline.isSimple(regions, r);
        }
        return to;
      };
    });
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
