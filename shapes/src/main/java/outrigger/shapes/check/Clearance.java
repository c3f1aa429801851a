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

  private final Surface surface;
  private final HalfEdges edges;
  private final Regions patches;
  private final int[] rims;
  private final int[] rimStarts;
  private final int[] marks;
  private final int[] boxes;

  Clearance(Surface surface, HalfEdges edges, Regions patches) {
    this.surface = surface;
    this.edges = edges;
    this.patches = patches;
    rims = new int[surface.corners().length];
    rimStarts = new int[patches.count() + 1];
    marks = new int[surface.vertices()];
    Arrays.fill(marks, -1);
    gatherRims();
    boxes = boxesOfPatches();
  }

  private void gatherRims() {
    int n = 0;
    for (int p = 0; p < patches.count(); p++) {
      for (int i = patches.start(p); i < patches.start(p + 1); i++) {
        for (int h = 3 * patches.facet(i); h < 3 * patches.facet(i) + 3; h++) {
          if (patches.of(edges.across(h)) != p) {
            rims[n++] = h;
          }
        }
      }
      rimStarts[p + 1] = n;
    }
  }

  /**
   * Whether all patches keep clear of each other and of themselves.
   *
   * @param groups for each patch a number it has in common with those it is known to keep clear of; -1 for none
   * @param overlapping patches not known to keep clear of themselves
   */
  boolean holds(int[] groups, int[] overlapping) {
    for (int p : overlapping) {
      if (!facetTree(p).selfPairs((i, j) -> properFacets(facet(p, i), facet(p, j)))) {
        return false;
      }
    }
    BoxTree tree = BoxTree.of(boxes);
    if (!tree.pairsAcross(groups, (p, q) -> isLarge(p) || isLarge(q) || areClear(p, q))) {
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
    for (int i = rimStarts[p]; i < rimStarts[p + 1]; i++) {
      marks[edges.from(rims[i])] = p;
    }
    boolean[] meets = new boolean[1];
    BoxTree[] facets = new BoxTree[1];
    forEachMeeting(tree, boxes, p, q -> {
      if (meets[0] || !isSmaller(q, p) || groups[p] >= 0 && groups[p] == groups[q] || standsOn(q, p)
          || !isLarge(q) && standsOn(p, q)) {
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
    return standsOn(q, p) || standsOn(p, q) || facetsAreClear(p, q);
  }

  /**
   * Whether patch q lies on one side of the plane of p and touches it in nothing but corners and edges of p. A patch of
   * the same plane does not: it has edges of its own in it.
   */
  private boolean standsOn(int q, int p) {
    int facet = facet(p, 0);
    int end = rimStarts[q + 1];
    int side = 0;
    for (int i = rimStarts[q]; i < end; i++) {
      int h = rims[i];
      int v = edges.from(h);
      int at = surface.side(facet, v);
      if (at == 0) {
        if (!isCorner(v, p)) {
          return false;
        }
        if (patches.of(edges.across(h)) != p && surface.side(facet, edges.to(h)) == 0) {
          return false;
        }
      } else if (at == -side) {
        return false;
      } else {
        side = at;
      }
    }
    return true;
  }

  /** Whether a vertex is a corner of a patch: of a large one only while that one's corners are marked. */
  private boolean isCorner(int v, int p) {
    if (isLarge(p)) {
      return marks[v] == p;
    }
    for (int i = rimStarts[p]; i < rimStarts[p + 1]; i++) {
      if (edges.from(rims[i]) == v) {
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
    return !FacetContact.improper(surface.xyz(), c[3 * f], c[3 * f + 1], c[3 * f + 2], c[3 * g], c[3 * g + 1],
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
      for (int i = rimStarts[p]; i < rimStarts[p + 1]; i++) {
        enclose(b, p, edges.from(rims[i]));
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
