package outrigger.shapes.mesh.face;

import java.util.Arrays;
import outrigger.shapes.exact.Plane;

/**
 * The edges of a face that has many, in blocks of a few that follow each other along its rims: mostly one look at the bounds
 * of a block, or of several, tells that the plane asked about does not come near. May be read by several threads.
 */
public final class EdgeBlocks {
  /** Fewer edges are gone through faster one by one. Not sharp. */
  static final int MANY = 128;
  /** Edges of a block: own choice, not sharp; nothing found depends on it. */
  private static final int EDGES = 16;
  /** Numbers a node: least x, y, z and greatest. */
  private static final int WIDTH = 6;

  private final int edges;
  private final int blocks;
  private final int leaves;
  /** Bounds in a perfect binary tree: node i has children 2i and 2i + 1, block k is node {@code leaves + k}. */
  private final int[] bounds;

  EdgeBlocks(Faces faces, Face face) {
    edges = face.edges();
    blocks = (edges + EDGES - 1) / EDGES;
    leaves = Integer.highestOneBit(2 * blocks - 1);
    bounds = new int[2 * leaves * WIDTH];
    for (int o = 0; o < bounds.length; o += WIDTH) {
      Arrays.fill(bounds, o, o + 3, Integer.MAX_VALUE);
      Arrays.fill(bounds, o + 3, o + WIDTH, Integer.MIN_VALUE);
    }
    for (int e = 0; e < edges; e++) {
      int o = WIDTH * (leaves + e / EDGES);
      add(o, faces, face.from[e]);
      add(o, faces, face.to[e]);
    }
    for (int node = leaves - 1; node > 0; node--) {
      for (int k = WIDTH * node, down = 2 * k; k < WIDTH * node + 3; k++, down++) {
        bounds[k] = Math.min(bounds[down], bounds[down + WIDTH]);
        bounds[k + 3] = Math.max(bounds[down + 3], bounds[down + WIDTH + 3]);
      }
    }
  }

  private void add(int o, Faces faces, int vertex) {
    include(o, faces.x(vertex));
    include(o + 1, faces.y(vertex));
    include(o + 2, faces.z(vertex));
  }

  private void include(int at, int c) {
    bounds[at] = Math.min(bounds[at], c);
    bounds[at + 3] = Math.max(bounds[at + 3], c);
  }

  /**
   * The first edge, from one on, that may meet a plane no farther than a place along an axis: those left out lie strictly on
   * one side of the plane, or beyond the place.
   *
   * @return the number of edges if there is none
   */
  int next(int edge, Plane plane, int axis, double most) {
    if (edge % EDGES != 0) {
      return edge;
    }
    int block = edge / EDGES;
    while (block < blocks) {
      // the largest node that begins with this block and need not be looked at
      int node = leaves + block;
      int size = 1;
      while (node % 2 == 0) {
        node /= 2;
        size *= 2;
      }
      while (!isClear(node, plane) && bounds[WIDTH * node + axis] <= most) {
        if (node >= leaves) {
          return block * EDGES;
        }
        node *= 2;
        size /= 2;
      }
      block += size;
    }
    return edges;
  }

  /** The same of a face whose edges are in blocks or, where these are null, are to be looked at one by one. */
  public static int next(EdgeBlocks blocks, int edge, Plane plane, int axis, double most) {
    return blocks == null ? edge : blocks.next(edge, plane, axis, most);
  }

  /** Whether a node's bounds are empty or lie strictly on one side of a plane: their farthest corners either way tell. */
  private boolean isClear(int node, Plane plane) {
    int o = WIDTH * node;
    if (bounds[o] > bounds[o + 3]) {
      return true;
    }
    boolean x = plane.normal(0) >= 0;
    boolean y = plane.normal(1) >= 0;
    boolean z = plane.normal(2) >= 0;
    int along = plane.side(bounds[x ? o + 3 : o], bounds[y ? o + 4 : o + 1], bounds[z ? o + 5 : o + 2]);
    return along < 0 || along > 0
        && plane.side(bounds[x ? o : o + 3], bounds[y ? o + 1 : o + 4], bounds[z ? o + 2 : o + 5]) > 0;
  }
}
