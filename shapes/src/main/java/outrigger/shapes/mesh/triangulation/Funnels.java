package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;

/**
 * What a sweep has reached of a face and not yet cut into triangles, in funnels: each a chain of corners that bends inward
 * all along, seen from the one edge it faces.
 *
 * <p>The chain of a funnel lies on its lower or on its upper side; its first corner is the last one on the other side, too.
 * A new corner on the chain's side is joined to all corners of it that it sees, one on the other side to the whole chain.
 * Each edge on a chain has a cell, which holds the half-edge of its triangle that was cut first until the other one comes.
 */
final class Funnels {
  /** The cell of an edge of the outline, which has a triangle on one side alone. */
  static final int OUTLINE = -1;

  private static final int NONE = -1;

  private final Triangulation tri;
  /** Of each funnel the last node of its chain. */
  private int[] last = new int[16];
  private boolean[] isUpper = new boolean[16];
  private int funnels;
  /** Of each node of a chain its corner, and the node before it. */
  private int[] corner = new int[64];
  private int[] before = new int[64];
  /** Cell of the edge between a node's corner and that of the node before. */
  private int[] edge = new int[64];
  private int nodes;
  /** Of each cell the half-edge that waits there for another. */
  private int[] waiting = new int[64];
  private int cells;

  /** Cuts triangles into a triangulation. */
  Funnels(Triangulation tri) {
    this.tri = tri;
  }

  void clear() {
    funnels = 0;
    nodes = 0;
    cells = 0;
  }

  /** A cell for an edge between two corners. */
  int newCell() {
    if (cells == waiting.length) {
      waiting = Arrays.copyOf(waiting, 2 * cells);
    }
    waiting[cells] = NONE;
    return cells++;
  }

  /** A funnel with one corner. */
  int start(int v) {
    if (funnels == last.length) {
      last = Arrays.copyOf(last, 2 * funnels);
      isUpper = Arrays.copyOf(isUpper, 2 * funnels);
    }
    last[funnels] = node(v, NONE, OUTLINE);
    return funnels++;
  }

  /** The last corner of a funnel's chain. */
  int lastCorner(int funnel) {
    return corner[last[funnel]];
  }

  /** Whether the chain of a funnel lies on its upper side. */
  boolean isUpper(int funnel) {
    return isUpper[funnel];
  }

  /**
   * Adds the next corner.
   *
   * @param upper whether it lies on the funnel's upper side
   * @param cell cell of the edge to it from the last corner on that side
   */
  void add(int funnel, int v, boolean upper, int cell) {
    int top = last[funnel];
    if (before[top] == NONE || upper == isUpper[funnel]) {
      isUpper[funnel] = upper;
      addBeside(funnel, v, cell);
    } else {
      int across = newCell();
      cutAll(funnel, v, across, cell);
      isUpper[funnel] = upper;
      last[funnel] = node(v, node(corner[top], NONE, OUTLINE), across);
    }
  }

  /** Adds a corner on the side of the chain: joins it to all corners of it that it sees. */
  private void addBeside(int funnel, int v, int cell) {
    int way = isUpper[funnel] ? -1 : 1;
    int top = last[funnel];
    int to = cell;
    while (before[top] != NONE && way * tri.turn(corner[before[top]], corner[top], v) > 0) {
      int on = newCell();
      cut(funnel, top, v, to, on);
      to = on;
      top = before[top];
    }
    last[funnel] = node(v, top, to);
  }

  /**
   * Ends a funnel in its rightmost corner.
   *
   * @param lower cell of the edge to it from the last corner on the lower side
   * @param upper cell of the edge from the upper side
   */
  void close(int funnel, int v, int lower, int upper) {
    cutAll(funnel, v, isUpper[funnel] ? upper : lower, isUpper[funnel] ? lower : upper);
  }

  /** Joins a corner to the whole chain; the cells are those of the edges to the chain's last and to its first corner. */
  private void cutAll(int funnel, int v, int toLast, int toFirst) {
    int to = toLast;
    for (int node = last[funnel]; before[node] != NONE; node = before[node]) {
      int on = before[before[node]] == NONE ? toFirst : newCell();
      cut(funnel, node, v, to, on);
      to = on;
    }
  }

  /** Cuts the triangle of a node's corner, the one before and v; the cells are those of the edges from them to v. */
  private void cut(int funnel, int node, int v, int to, int toBefore) {
    int a = corner[before[node]];
    int b = corner[node];
    boolean upper = isUpper[funnel];
    int h = upper ? tri.add(b, a, v) : tri.add(a, b, v);
    join(edge[node], h);
    join(to, upper ? h + 2 : h + 1);
    join(toBefore, upper ? h + 1 : h + 2);
  }

  /** Joins the half-edge of a new triangle to the one that waits in its edge's cell, or has it wait there. */
  private void join(int cell, int h) {
    if (cell != OUTLINE) {
      if (waiting[cell] == NONE) {
        waiting[cell] = h;
      } else {
        tri.joinNew(h, waiting[cell]);
      }
    }
  }

  /** A new node of a chain after another. */
  private int node(int v, int after, int cell) {
    if (nodes == corner.length) {
      corner = Arrays.copyOf(corner, 2 * nodes);
      before = Arrays.copyOf(before, 2 * nodes);
      edge = Arrays.copyOf(edge, 2 * nodes);
    }
    corner[nodes] = v;
    before[nodes] = after;
    edge[nodes] = cell;
    return nodes++;
  }
}
