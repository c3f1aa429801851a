package outrigger.shapes.mesh.face;

import java.util.Arrays;

/**
 * Finds for each directed edge the one that runs the other way.
 *
 * <p>Both lie in the list of that end of theirs at which fewer edges meet. On a closed surface such a list is short even where
 * thousands of edges meet in one corner.
 */
public final class Twins {
  /** No edge runs the other way. */
  static final int NONE = -1;
  /** Another edge runs the same way, or more than one the other way. */
  static final int MANY = -2;

  private final int[] from;
  private final int[] to;
  private final int[] degree;

  private Twins(int[] from, int[] to, int vertices) {
    this.from = from;
    this.to = to;
    degree = new int[vertices];
  }

  /**
   * The twin of each edge, {@link #NONE} or {@link #MANY}.
   *
   * @param from vertex each edge starts at
   * @param to vertex each edge ends at
   * @param vertices number of vertices
   */
  public static int[] of(int[] from, int[] to, int vertices) {
    return new Twins(from, to, vertices).find();
  }

  private int[] find() {
    int n = from.length;
    for (int e = 0; e < n; e++) {
      degree[from[e]]++;
      degree[to[e]]++;
    }
    int[] end = new int[degree.length + 1];
    for (int e = 0; e < n; e++) {
      end[list(e) + 1]++;
    }
    for (int v = 0; v < degree.length; v++) {
      end[v + 1] += end[v];
    }
    int[] edges = new int[n];
    for (int e = n - 1; e >= 0; e--) {
      edges[--end[list(e) + 1]] = e;
    }
    int[] twin = new int[n];
    Arrays.fill(twin, NONE);
    for (int v = 0; v < degree.length; v++) {
      match(edges, end[v + 1], v + 2 < end.length ? end[v + 2] : n, twin);
    }
    return twin;
  }

  /** The end whose list an edge is in, the same for its twin. */
  private int list(int e) {
    int a = from[e];
    int b = to[e];
    return degree[a] < degree[b] || degree[a] == degree[b] && a < b ? a : b;
  }

  private void match(int[] edges, int first, int end, int[] twin) {
    for (int i = first; i < end; i++) {
      int e = edges[i];
      for (int j = i + 1; j < end; j++) {
        int g = edges[j];
        if (from[e] == to[g] && to[e] == from[g]) {
          twin[e] = twin[e] == NONE ? g : MANY;
          twin[g] = twin[g] == NONE ? e : MANY;
        } else if (from[e] == from[g] && to[e] == to[g]) {
          twin[e] = MANY;
          twin[g] = MANY;
        }
      }
    }
  }
}
