package outrigger.shapes.check;

import java.util.Arrays;
import java.util.function.IntConsumer;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;

/**
 * Decides whether flat patches keep clear of each other, but for common corners and edges.
 *
 * <p>A patch that lies on one side of another's plane meets that plane in corners and edges of its rim alone. If these
 * are corners and edges of the other patch too, the two have nothing else in common: a patch without overlap holds its
 * corners at corners of its facets only. Two patches of which neither lies so are compared facet by facet.
 */
final class Clearance {
  /** Patches up to here have few enough corners to be compared one by one. */
  private static final int SMALL = 2;
  /** A patch of no more facets is compared facet by facet without a tree. Any number would do. */
  private static final int FEW = 64;

  private final Surface surface;
  private final HalfEdges edges;
  private final Regions patches;
  private final Rims rims;
  private final FlatTouch touch;
  private final int[] marks;
  private final int[] boxes;

  Clearance(Surface surface, HalfEdges edges, Regions patches) {
    this.surface = surface;
    this.edges = edges;
    this.patches = patches;
    rims = new Rims(edges, patches);
    touch = new FlatTouch(surface, edges, patches, rims);
    marks = new int[surface.vertices()];
    Arrays.fill(marks, -1);
    boxes = boxesOfPatches();
  }

  /**
   * Whether all patches keep clear of each other and of themselves.
   *
   * @param groups for each patch the region in which it is known to keep clear of all; -1 for none
   * @param overlapping patches not known to keep clear of themselves
   */
  boolean holds(Regions regions, int[] groups, int[] overlapping) {
    for (int p : overlapping) {
      if (!facetTree(p).selfPairs((i, j) -> properFacets(facet(p, i), facet(p, j)))) {
        return false;
      }
    }
    BoxTree tree = BoxTree.of(boxes);
    Layers layers = new Layers(surface, edges, regions, boxesOfRegions(regions, groups));
    if (!tree.pairsAcross(groups, layers, (p, q) -> isLarge(p) || isLarge(q) || areClear(p, q))) {
      return false;
    }
    for (int p = 0; p < patches.count(); p++) {
      if (isLarge(p) && !isClearOfSmaller(p, tree, groups)) {
        return false;
      }
    }
    return true;
  }

  private boolean isLarge(int p) {
    return patches.size(p) > SMALL;
  }

  private int facet(int p, int i) {
    return patches.facet(patches.start(p) + i);
  }

  /** Compares a large patch with all smaller ones its box meets. */
  private boolean isClearOfSmaller(int p, BoxTree tree, int[] groups) {
    for (int i = rims.start(p); i < rims.start(p + 1); i++) {
      marks[edges.from(rims.half(i))] = p;
    }
    boolean[] meets = new boolean[1];
    BoxTree[] facets = new BoxTree[1];
    forEachMeeting(tree, boxes, p, q -> {
      if (meets[0] || !isSmaller(q, p) || groups[p] >= 0 && groups[p] == groups[q] || standsOn(q, p)
          || !isLarge(q) && standsOn(p, q)) {
        return;
      }
      if (patches.size(p) <= FEW) {
        meets[0] = !facetsAreClear(p, q);
        return;
      }
      facets[0] = facets[0] == null ? facetTree(p) : facets[0];
      meets[0] = !facetsAreClear(p, facets[0], q);
    });
    return !meets[0];
  }

  private static void forEachMeeting(BoxTree tree, int[] b, int i, IntConsumer consumer) {
    tree.forEachOverlap(b[6 * i], b[6 * i + 1], b[6 * i + 2], b[6 * i + 3], b[6 * i + 4], b[6 * i + 5], consumer);
  }

  private boolean facetsAreClear(int p, BoxTree facets, int q) {
    int[] facetBoxes = boxesOfFacets(q);
    boolean[] meets = new boolean[1];
    for (int j = 0; j < patches.size(q) && !meets[0]; j++) {
      int g = facet(q, j);
      forEachMeeting(facets, facetBoxes, j, i -> meets[0] |= !properFacets(facet(p, i), g));
    }
    return !meets[0];
  }

  private boolean isSmaller(int q, int p) {
    return patches.size(q) < patches.size(p) || patches.size(q) == patches.size(p) && q < p;
  }

  private boolean areClear(int p, int q) {
    return touchFlat(p, q) || standsOn(q, p) || standsOn(p, q) || facetsAreClear(p, q);
  }

  /**
   * Whether the boxes of two small patches touch in a plane across an axis only, and the patches have just a common corner
   * or edge there. False says nothing.
   */
  private boolean touchFlat(int p, int q) {
    for (int k = 0; k < 3; k++) {
      if (boxes[6 * p + 3 + k] == boxes[6 * q + k]) {
        return touch.isProper(p, q, k, boxes[6 * q + k]);
      }
      if (boxes[6 * q + 3 + k] == boxes[6 * p + k]) {
        return touch.isProper(p, q, k, boxes[6 * p + k]);
      }
    }
    return false;
  }

  /**
   * Whether patch q lies on one side of the plane of p and touches it in nothing but corners and edges of p. A patch of
   * the same plane does not: it has corners or edges of its own in it. No arithmetic is spent on common corners.
   */
  private boolean standsOn(int q, int p) {
    int facet = facet(p, 0);
    int side = 0;
    for (int i = rims.start(q); i < rims.start(q + 1); i++) {
      int h = rims.half(i);
      if (isCorner(edges.from(h), p)) {
        if (isCorner(edges.to(h), p) && patches.of(edges.across(h)) != p) {
          return false;
        }
        continue;
      }
      int at = surface.side(facet, edges.from(h));
      if (at == 0 || at == -side) {
        return false;
      }
      side = at;
    }
    return true;
  }

  /** Whether a vertex is a corner of a patch: of a large one only while that one's corners are marked. */
  private boolean isCorner(int v, int p) {
    if (isLarge(p)) {
      return marks[v] == p;
    }
    for (int i = rims.start(p); i < rims.start(p + 1); i++) {
      if (edges.from(rims.half(i)) == v) {
        return true;
      }
    }
    return false;
  }

  private boolean facetsAreClear(int p, int q) {
    for (int i = patches.start(p); i < patches.start(p + 1); i++) {
      for (int j = patches.start(q); j < patches.start(q + 1); j++) {
        if (!properFacets(patches.facet(i), patches.facet(j))) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean properFacets(int f, int g) {
    int[] c = surface.corners();
    return surface.boxesKeepApart(f, g) || !FacetContact.improper(surface.xyz(), c[3 * f], c[3 * f + 1], c[3 * f + 2], c[3 * g], c[3 * g + 1],
        c[3 * g + 2]);
  }

  private BoxTree facetTree(int p) {
    return BoxTree.of(boxesOfFacets(p));
  }

  private int[] boxesOfFacets(int p) {
    int[] b = new int[6 * patches.size(p)];
    clear(b);
    for (int i = 0; i < patches.size(p); i++) {
      for (int k = 0; k < 3; k++) {
        enclose(b, i, surface.corner(facet(p, i), k));
      }
    }
    return b;
  }

  private int[] boxesOfPatches() {
    int[] b = new int[6 * patches.count()];
    clear(b);
    for (int p = 0; p < patches.count(); p++) {
      for (int i = rims.start(p); i < rims.start(p + 1); i++) {
        enclose(b, p, edges.from(rims.half(i)));
      }
    }
    return b;
  }

  private int[] boxesOfRegions(Regions regions, int[] groups) {
    int[] b = new int[6 * regions.count()];
    clear(b);
    for (int p = 0; p < groups.length; p++) {
      for (int k = 0; k < 3 && groups[p] >= 0; k++) {
        b[6 * groups[p] + k] = Math.min(b[6 * groups[p] + k], boxes[6 * p + k]);
        b[6 * groups[p] + 3 + k] = Math.max(b[6 * groups[p] + 3 + k], boxes[6 * p + 3 + k]);
      }
    }
    return b;
  }

  private static void clear(int[] boxes) {
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = i % 6 < 3 ? Integer.MAX_VALUE : Integer.MIN_VALUE;
    }
  }

  private void enclose(int[] to, int box, int vertex) {
    for (int k = 0; k < 3; k++) {
      int x = surface.xyz()[3 * vertex + k];
      to[6 * box + k] = Math.min(to[6 * box + k], x);
      to[6 * box + 3 + k] = Math.max(to[6 * box + 3 + k], x);
    }
  }
}
