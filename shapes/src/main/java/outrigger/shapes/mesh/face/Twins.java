package outrigger.shapes.mesh.face;

import outrigger.shapes.num.Workers;

/**
 * Finds for each directed edge the one that runs the other way.
 *
 * <p>Both lie in the list of that end of theirs at which fewer edges meet. On a closed surface such a list is short even
 * where thousands of edges meet in one corner.
 */
public final class Twins {
  /** No edge runs the other way. */
  static final int NONE = -1;
  /** Another edge runs the same way, or more than one the other way. */
  static final int MANY = -2;

  /** Edges that are worth a thread. */
  private static final int AT_ONCE = 1 << 15;

  private final int[] from;
  private final int[] to;
  /** How many edges meet in each vertex. */
  private final int[] degree;
  /** The vertex whose list each edge is in. */
  private final int[] list;
  private final int[] twin;

  private Twins(int[] from, int[] to, int vertices) {
    this.from = from;
    this.to = to;
    degree = new int[vertices];
    list = new int[from.length];
    twin = new int[from.length];
  }

  /**
   * The twin of each edge; {@link #NONE} or {@link #MANY}, which are negative, where it has not just one.
   *
   * @param from vertex each edge starts at
   * @param to vertex each edge ends at
   * @param vertices number of vertices
   * @param workers share the lists out by their vertices, if there are many edges
   */
  public static int[] of(int[] from, int[] to, int vertices, Workers workers) {
    Twins twins = new Twins(from, to, vertices);
    Workers some = workers.from(AT_ONCE, from.length);
    some.parts(vertices, twins::count);
    some.parts(from.length, (first, end) -> {
      for (int e = first; e < end; e++) {
        twins.list[e] = twins.list(e);
      }
    });
    some.parts(vertices, twins::match);
    return twins.twin;
  }

  /** Counts the edges at the vertices from one up to another. */
  private void count(int first, int end) {
    for (int e = 0; e < from.length; e++) {
      int a = from[e];
      int b = to[e];
      if (a >= first && a < end) {
        degree[a]++;
      }
      if (b >= first && b < end) {
        degree[b]++;
      }
    }
  }

  /** Makes the lists of the vertices from one up to another, and matches the edges of each. */
  private void match(int first, int end) {
    int[] ends = new int[end - first + 1];
    for (int v : list) {
      if (v >= first && v < end) {
        ends[v - first + 1]++;
      }
    }
    for (int v = first; v < end; v++) {
      ends[v - first + 1] += ends[v - first];
    }
    int[] edges = new int[ends[end - first]];
    for (int e = list.length - 1; e >= 0; e--) {
      if (list[e] >= first && list[e] < end) {
        edges[--ends[list[e] - first + 1]] = e;
        twin[e] = NONE;
      }
    }
    for (int v = first; v < end; v++) {
      match(edges, ends[v - first + 1], v + 1 < end ? ends[v - first + 2] : edges.length);
    }
  }

  /** The end whose list an edge is in, the same for its twin. */
  private int list(int e) {
    int a = from[e];
    int b = to[e];
    return degree[a] < degree[b] || degree[a] == degree[b] && a < b ? a : b;
  }

  /** Matches the edges of one list, those of {@code edges} from one up to another, each with each. */
  private void match(int[] edges, int first, int end) {
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
