package outrigger.shapes.check;

import java.util.Arrays;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;

/**
 * Decides whether two flat patches keep clear of each other, but for common corners and edges.
 *
 * <p>A patch that lies on one side of another's plane meets that plane in corners and edges of its rim alone. If these
 * are corners and edges of the other patch too, the two have nothing else in common: a patch without overlap holds its
 * corners at corners of its facets only. Two patches of which neither lies so are compared facet by facet.
 *
 * <p>For one thread: it marks the corners of what it compares.
 */
final class PatchContact {
  /** Patches that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;
  /** Patches up to here have few enough corners to be compared one by one. */
  private static final int SMALL = 2;
  /**
   * A patch of no more facets is gone through whole for each other that is near, without a tree over them. Any number
   * would do.
   */
  private static final int FEW = 512;

  private final Surface surface;
  private final HalfEdges edges;
  private final Regions patches;
  private final Rims rims;
  private final FlatTouch touch;
  private final int[] marks;
  private final int[] boxes;
  private final int[] near = new int[FEW + 1];
  private final int[] nearOther = new int[FEW + 1];
  private BoxTree facets = BoxTree.of(new int[0]);

  PatchContact(Surface surface, HalfEdges edges, Regions patches) {
    this.surface = surface;
    this.edges = edges;
    this.patches = patches;
    rims = new Rims(edges, patches, surface.workers());
    touch = new FlatTouch(surface, edges, patches, rims);
    marks = unmarked(surface.vertices());
    boxes = boxesOfPatches();
  }

  private PatchContact(PatchContact like) {
    surface = like.surface;
    edges = like.edges;
    patches = like.patches;
    rims = like.rims;
    touch = like.touch;
    boxes = like.boxes;
    marks = unmarked(surface.vertices());
  }

  /** The same for another thread. */
  PatchContact another() {
    return new PatchContact(this);
  }

  private static int[] unmarked(int vertices) {
    int[] marks = new int[vertices];
    Arrays.fill(marks, -1);
    return marks;
  }

  /** Box of each patch: least and greatest x, y, z. */
  int[] boxes() {
    return boxes;
  }

  boolean isLarge(int p) {
    return patches.size(p) > SMALL;
  }

  /** Whether no facets of one patch meet, by comparing them all. */
  boolean isClearOfItself(int p) {
    return facetTree(p).selfPairs((i, j) -> areProper(facet(p, i), facet(p, j)));
  }

  /** Whether two small patches are clear of each other. */
  boolean areClear(int p, int q) {
    return touchFlat(p, q) || standsOn(q, p) || standsOn(p, q) || facetsAreClear(p, q);
  }

  /** Makes a large patch the one that others are compared with. */
  void choose(int p) {
    for (int i = rims.start(p); i < rims.end(p); i++) {
      marks[edges.from(rims.half(i))] = p;
    }
    facets = BoxTree.of(new int[0]);
  }

  /** Whether the chosen large patch is clear of one no larger. Not all of a very large one is gone through for that. */
  boolean chosenIsClear(int p, int q) {
    if (standsOn(q, p)) {
      return true;
    }
    return patches.size(p) > FEW ? isClearByTree(p, q) : !isLarge(q) && standsOn(p, q) || facetsAreClear(p, q);
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
    for (int i = rims.start(q); i < rims.end(q); i++) {
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
    for (int i = rims.start(p); i < rims.end(p); i++) {
      if (edges.from(rims.half(i)) == v) {
        return true;
      }
    }
    return false;
  }

  /** Compares facets of two patches where the patches' boxes overlap. */
  private boolean facetsAreClear(int p, int q) {
    int ones = gather(p, q, near);
    int others = gather(q, p, nearOther);
    for (int i = 0; i < ones; i++) {
      for (int j = 0; j < others; j++) {
        if (!areProper(near[i], nearOther[j])) {
          return false;
        }
      }
    }
    return true;
  }

  /** Puts those facets of a patch that reach another's box into a list and returns their number. */
  private int gather(int p, int q, int[] list) {
    int n = 0;
    for (int i = patches.start(p); i < patches.start(p + 1); i++) {
      list[n] = patches.facet(i);
      n += surface.reaches(patches.facet(i), boxes, 6 * q) ? 1 : 0;
    }
    return n;
  }

  private boolean areProper(int f, int g) {
    return surface.boxesKeepApart(f, g) || !FacetContact.improper(surface.xyz(), surface.corners(), f, g);
  }

  private boolean isClearByTree(int p, int q) {
    facets = facets.size() == 0 ? facetTree(p) : facets;
    int[] facetBoxes = boxesOfFacets(q);
    boolean[] meets = new boolean[1];
    for (int j = 0; j < patches.size(q) && !meets[0]; j++) {
      int g = facet(q, j);
      facets.forEachOverlap(facetBoxes, j, i -> meets[0] |= !areProper(facet(p, i), g));
    }
    return !meets[0];
  }

  private int facet(int p, int i) {
    return patches.facet(patches.start(p) + i);
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
    surface.workers().split(patches.count(), AT_ONCE, (from, to) -> {
      for (int p = from; p < to; p++) {
        BoxTree.clear(b, p);
        for (int i = rims.start(p); i < rims.end(p); i++) {
          enclose(b, p, edges.from(rims.half(i)));
        }
      }
    });
    return b;
  }

  /** Turns boxes inside out, as those of nothing. */
  static void clear(int[] boxes) {
    for (int i = 0; i < boxes.length / 6; i++) {
      BoxTree.clear(boxes, i);
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
