package outrigger.shapes.mesh.triangulation;

import java.util.function.IntFunction;
import outrigger.shapes.exact.ExactPoint;

/**
 * Cuts the inside of closed loops that do not meet into triangles, constrained Delaunay, from left to right.
 *
 * <p>A line sweeps over the corners by their first coordinate, equal ones by their second. It crosses the inside in regions,
 * each between a lower and an upper edge; what a region has left behind it lies cut, but for its {@link Funnels}. A corner
 * opens a region or parts one in two, carries an edge of one on, or closes one or two. Where two become one, the two funnels
 * stay apart until the next corner of the region, which sees the one where they met. Then edges that are not Delaunay are
 * flipped. The steps are those of Garey, Johnson, Preparata and Tarjan, <i>Triangulating a simple polygon</i>, Information
 * Processing Letters 7 (1978), with the cut into monotone pieces and the cut of those into triangles in one sweep.
 *
 * <p>A corner is finished in the time of a search among the regions beside it and the triangles it ends.
 */
public final class FaceSweep {
  private static final int NONE = -1;

  private final Triangulation tri = new Triangulation();
  private final Funnels funnels = new Funnels(tri);
  /** The corners from left to right, and of each, by its place in that order, those beside it on its loop. */
  private int[] order = {};
  private int[] previous = {};
  private int[] next = {};
  /** Of the edge after a corner the region it bounds just now, and on which side of it. */
  private int[] region = {};
  private boolean[] isUpper = {};
  /** Of each region its edges and funnels, the second one only where two regions became one. */
  private int[] lower = {};
  private int[] upper = {};
  private int[] first = {};
  private int[] second = {};
  private int regions;
  /** The regions the line crosses, upward. */
  private int[] crossed = {};
  private int crossings;

  /**
   * Cuts what lies inside an odd number of loops.
   *
   * @param after of each corner the next one on its loop, which is before no other
   * @param points the corners' points, all in different places
   * @param firstAxis the axis that is the first coordinate
   * @param secondAxis the axis that is the second coordinate
   * @param plane number of the plane the points lie in
   * @return the triangles, counter-clockwise; their vertices are numbered as {@link #corner} tells
   */
  public Triangulation cut(int[] after, IntFunction<ExactPoint> points, int firstAxis, int secondAxis, int plane) {
    int n = after.length;
    makeRoom(n);
    order = SweepOrder.of(n, points, firstAxis, secondAxis);
    tri.clear(firstAxis, secondAxis, plane);
    int[] place = new int[n];
    for (int i = 0; i < n; i++) {
      place[order[i]] = i;
      tri.append(points.apply(order[i]));
    }
    for (int i = 0; i < n; i++) {
      next[i] = place[after[order[i]]];
      previous[next[i]] = i;
    }
    for (int v = 0; v < n; v++) {
      visit(v);
    }
    tri.legalize();
    return tri;
  }

  /** The corner that a vertex of the triangulation is. */
  public int corner(int vertex) {
    return order[vertex];
  }

  private void makeRoom(int n) {
    if (n > region.length) {
      int room = Math.max(n, 2 * region.length);
      previous = new int[room];
      next = new int[room];
      region = new int[room];
      isUpper = new boolean[room];
      lower = new int[room];
      upper = new int[room];
      first = new int[room];
      second = new int[room];
      crossed = new int[room];
    }
    regions = 0;
    crossings = 0;
    funnels.clear();
  }

  /** An edge has the number of the corner it follows. */
  private void visit(int v) {
    boolean comesFromLeft = previous[v] < v;
    boolean goesRight = next[v] > v;
    if (comesFromLeft == goesRight) {
      carryOn(v, comesFromLeft ? previous[v] : v, comesFromLeft ? v : previous[v]);
    } else if (goesRight) {
      open(v);
    } else {
      shut(v);
    }
  }

  /** One edge ends and another goes on. */
  private void carryOn(int v, int left, int right) {
    int r = region[left];
    first[r] = reach(r, v, isUpper[left]);
    second[r] = NONE;
    bound(r, right, isUpper[left]);
  }

  /** Joins a region's funnels to a corner on its outline and gives the one that goes on. */
  private int reach(int r, int v, boolean above) {
    if (second[r] == NONE) {
      funnels.add(first[r], v, above, Funnels.OUTLINE);
      return first[r];
    }
    int cell = funnels.newCell();
    if (above) {
      funnels.close(second[r], v, cell, Funnels.OUTLINE);
      funnels.add(first[r], v, true, cell);
      return first[r];
    }
    funnels.close(first[r], v, Funnels.OUTLINE, cell);
    funnels.add(second[r], v, false, cell);
    return second[r];
  }

  /** Two edges start: round a new region, or round a hole in one that is there. */
  private void open(int v) {
    int at = find(v);
    boolean goesUp = tri.turn(v, previous[v], next[v]) > 0;
    int low = goesUp ? previous[v] : v;
    int high = goesUp ? v : previous[v];
    if (at < 0 || side(upper[crossed[at]], v) > 0) {
      int r = insert(at + 1);
      bound(r, low, false);
      bound(r, high, true);
      first[r] = funnels.start(v);
      second[r] = NONE;
    } else {
      int below = crossed[at];
      int above = insert(at + 1);
      bound(above, upper[below], true);
      bound(above, high, false);
      bound(below, low, true);
      part(below, above, v);
    }
  }

  /** Parts the funnels of a region between it and a new one above, along an edge from the last corner seen to v. */
  private void part(int below, int above, int v) {
    int cell = funnels.newCell();
    int f = first[below];
    if (second[below] != NONE) {
      first[above] = second[below];
    } else if (funnels.isUpper(f)) {
      first[above] = funnels.start(funnels.lastCorner(f));
    } else {
      first[above] = f;
      first[below] = funnels.start(funnels.lastCorner(f));
    }
    second[above] = NONE;
    second[below] = NONE;
    funnels.add(first[below], v, true, cell);
    funnels.add(first[above], v, false, cell);
  }

  /** Two edges end: the region between them, or what lay between two regions. */
  private void shut(int v) {
    int a = region[v];
    int b = region[previous[v]];
    int at = find(v);
    if (a == b) {
      close(a, v);
    } else {
      int below = isUpper[v] ? a : b;
      int above = isUpper[v] ? b : a;
      first[below] = reach(below, v, true);
      second[below] = reach(above, v, false);
      bound(below, upper[above], true);
    }
    crossings--;
    System.arraycopy(crossed, at + 1, crossed, at, crossings - at);
  }

  private void close(int r, int v) {
    if (second[r] == NONE) {
      funnels.close(first[r], v, Funnels.OUTLINE, Funnels.OUTLINE);
    } else {
      int cell = funnels.newCell();
      funnels.close(first[r], v, Funnels.OUTLINE, cell);
      funnels.close(second[r], v, cell, Funnels.OUTLINE);
    }
  }

  /** The last crossed region whose lower edge does not lie above a corner; -1 if there is none. */
  private int find(int v) {
    int from = 0;
    int to = crossings;
    while (from < to) {
      int middle = from + to >>> 1;
      if (side(lower[crossed[middle]], v) >= 0) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from - 1;
  }

  /** +1 where a corner lies above an edge, -1 below, 0 on it. */
  private int side(int edge, int v) {
    return tri.turn(Math.min(edge, next[edge]), Math.max(edge, next[edge]), v);
  }

  private int insert(int at) {
    System.arraycopy(crossed, at, crossed, at + 1, crossings - at);
    crossings++;
    crossed[at] = regions;
    return regions++;
  }

  private void bound(int r, int edge, boolean above) {
    region[edge] = r;
    isUpper[edge] = above;
    if (above) {
      upper[r] = edge;
    } else {
      lower[r] = edge;
    }
  }
}
