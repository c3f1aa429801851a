package outrigger.shapes.check;

/**
 * Decides about two patches one on each side of a plane across an axis, as where one layer of a part stands on another.
 *
 * <p>Each has a corner or two in that plane; what it has there lies on them or between them, so that only these are
 * compared. Where that leaves doubt, nothing is said.
 */
final class FlatTouch {
  private final Surface surface;
  private final HalfEdges edges;
  private final Regions patches;
  private final Rims rims;

  FlatTouch(Surface surface, HalfEdges edges, Regions patches, Rims rims) {
    this.surface = surface;
    this.edges = edges;
    this.patches = patches;
    this.rims = rims;
  }

  /**
   * Whether two patches have at most a common corner or edge in the plane where coordinate {@code axis} is {@code x}; they
   * lie on two sides of it and reach it both. False says nothing.
   */
  boolean isProper(int p, int q, int axis, int x) {
    int a = next(p, rims.start(p), axis, x);
    int b = next(p, a + 1, axis, x);
    int c = next(q, rims.start(q), axis, x);
    int d = next(q, c + 1, axis, x);
    int pEnd = rims.end(p);
    int qEnd = rims.end(q);
    if (b < pEnd && next(p, b + 1, axis, x) < pEnd || d < qEnd && next(q, d + 1, axis, x) < qEnd) {
      return false;
    }
    int v = corner(a);
    int w = corner(c);
    if (b == pEnd && d == qEnd) {
      return true; // two corners: the same one, or two different points
    }
    if (b == pEnd) {
      return v == w || v == corner(d);
    }
    if (d == qEnd) {
      return w == v || w == corner(b);
    }
    return segments(p, q, axis, new int[] {v, corner(b), w, corner(d)});
  }

  /** Place of the next corner of a patch in the plane, from a place on; the patch's end if there is none. */
  private int next(int patch, int from, int axis, int x) {
    int i = from;
    while (i < rims.end(patch) && surface.xyz()[3 * corner(i) + axis] != x) {
      i++;
    }
    return i;
  }

  private int corner(int place) {
    return edges.from(rims.half(place));
  }

  /** Two stretches in the plane: one common edge, or a common end and different ways from there. */
  private boolean segments(int p, int q, int axis, int[] ends) {
    boolean first = ends[0] == ends[2] || ends[0] == ends[3];
    boolean second = ends[1] == ends[2] || ends[1] == ends[3];
    if (first && second) {
      return haveCommonEdge(p, q, ends[0], ends[1]);
    }
    if (!first && !second) {
      return false;
    }
    int common = first ? ends[0] : ends[1];
    int one = first ? ends[1] : ends[0];
    int other = ends[2] == common ? ends[3] : ends[2];
    return part(common, one, other, (axis + 1) % 3, (axis + 2) % 3);
  }

  private boolean haveCommonEdge(int p, int q, int v, int w) {
    for (int i = rims.start(p); i < rims.end(p); i++) {
      int h = rims.half(i);
      if (patches.of(edges.across(h)) == q && Math.min(edges.from(h), edges.to(h)) == Math.min(v, w)
          && Math.max(edges.from(h), edges.to(h)) == Math.max(v, w)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the ways from one point to two others are not the same way. */
  private boolean part(int from, int one, int other, int u, int v) {
    int[] p = surface.xyz();
    long ax = p[3 * one + u] - p[3 * from + u];
    long ay = p[3 * one + v] - p[3 * from + v];
    long bx = p[3 * other + u] - p[3 * from + u];
    long by = p[3 * other + v] - p[3 * from + v];
    return ax * by != ay * bx || ax * bx + ay * by < 0;
  }
}
