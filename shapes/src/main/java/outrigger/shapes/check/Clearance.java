package outrigger.shapes.check;

import java.util.Arrays;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.num.Shares;

/**
 * Finds out whether flat patches keep clear of each other: looks for pairs whose boxes meet and has them compared.
 *
 * <p>Small and large patches stand in trees of their own, since the box of a plate's face holds half the part. Each large
 * patch is compared with what its box meets, each small one with other small ones. Pairs within a region that is known to
 * be clear are left out, and so are regions that {@link Layers} tells apart.
 */
final class Clearance {
  private final PatchContact contact;
  private final Regions patches;
  private final int[] boxes;
  private final int[] groups;
  private volatile boolean meets;

  /**
   * Prepares the search.
   *
   * @param groups for each patch the region in which it is known to keep clear of all; -1 for none
   */
  Clearance(PatchContact contact, Regions patches, int[] groups) {
    this.contact = contact;
    this.patches = patches;
    this.groups = groups;
    boxes = contact.boxes();
  }

  /** Whether all patches keep clear of each other. */
  boolean holds(Surface surface, HalfEdges edges, Regions regions) {
    int[] small = choose(false);
    int[] large = choose(true);
    BoxTree smallTree = BoxTree.of(boxes(small), surface.workers());
    Layers layers = new Layers(surface, edges, regions, boxesOfRegions(regions));
    smallTree.pairsAcross(groups(small), layers, surface.workers(), () -> new SmallPairs(small), ok -> {});
    BoxTree largeTree = BoxTree.of(boxes(large));
    Shares.of(surface.workers(), large.length, i -> patches.size(large[i])).each(() -> {
      PatchContact own = contact.another();
      return (from, to) -> {
        for (int i = from; i < to && !meets; i++) {
          int p = large[i];
          own.choose(p);
          smallTree.forEachOverlap(boxes, p, k -> meets = meets || !areClear(own, p, small[k]));
          largeTree.forEachOverlap(boxes, p,
              k -> meets = meets || isSmaller(large[k], p) && !areClear(own, p, large[k]));
        }
        return to;
      };
    });
    return !meets;
  }

  /** The patches that are large, or those that are not. */
  private int[] choose(boolean large) {
    int[] chosen = new int[patches.count()];
    int n = 0;
    for (int p = 0; p < chosen.length; p++) {
      if (contact.isLarge(p) == large) {
        chosen[n++] = p;
      }
    }
    return Arrays.copyOf(chosen, n);
  }

  /** Compares pairs of small patches on one thread, until any thread finds some that meet. */
  private final class SmallPairs implements BoxTree.PartVisitor<Boolean> {
    private final PatchContact own = contact.another();
    private final int[] small;

    SmallPairs(int[] small) {
      this.small = small;
    }

    @Override
    public boolean visit(int i, int j) {
      meets = meets || !own.areClear(small[i], small[j]);
      return !meets;
    }

    @Override
    public Boolean take() {
      return meets;
    }
  }

  private boolean areClear(PatchContact own, int p, int q) {
    return groups[p] >= 0 && groups[p] == groups[q] || own.chosenIsClear(p, q);
  }

  private boolean isSmaller(int q, int p) {
    return patches.size(q) < patches.size(p) || patches.size(q) == patches.size(p) && q < p;
  }

  private int[] boxes(int[] chosen) {
    if (chosen.length == patches.count()) {
      return boxes;
    }
    int[] b = new int[6 * chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      System.arraycopy(boxes, 6 * chosen[i], b, 6 * i, 6);
    }
    return b;
  }

  private int[] groups(int[] chosen) {
    if (chosen.length == patches.count()) {
      return groups;
    }
    int[] g = new int[chosen.length];
    for (int i = 0; i < g.length; i++) {
      g[i] = groups[chosen[i]];
    }
    return g;
  }

  private int[] boxesOfRegions(Regions regions) {
    int[] b = new int[6 * regions.count()];
    PatchContact.clear(b);
    for (int p = 0; p < groups.length; p++) {
      for (int k = 0; k < 3 && groups[p] >= 0; k++) {
        b[6 * groups[p] + k] = Math.min(b[6 * groups[p] + k], boxes[6 * p + k]);
        b[6 * groups[p] + 3 + k] = Math.max(b[6 * groups[p] + 3 + k], boxes[6 * p + 3 + k]);
      }
    }
    return b;
  }
}
