package outrigger.shapes.check;

import java.util.Arrays;
import java.util.Optional;

/**
 * The facets of a surface joined over their edges.
 *
 * <p>Half-edge h runs from corner h to the next corner of facet h / 3; its twin runs the same edge the other way on the
 * facet next door.
 */
final class HalfEdges {
  private final int[] corners;
  private final int[] twins;

  private HalfEdges(int[] corners) {
    this.corners = corners;
    twins = new int[corners.length];
  }

  /** Pairs all edges; empty unless each joins exactly two facets that run it opposite ways. */
  static Optional<HalfEdges> of(Surface surface) {
    HalfEdges edges = new HalfEdges(surface.corners());
    int[] heads = new int[surface.vertices()];
    return edges.gather(heads) && edges.pair(heads) ? Optional.of(edges) : Optional.empty();
  }

  /** The half-edge the other way. */
  int twin(int h) {
    return twins[h];
  }

  /** The facet next door. */
  int across(int h) {
    return twins[h] / 3;
  }

  /** Vertex a half-edge starts from. */
  int from(int h) {
    return corners[h];
  }

  /** Vertex a half-edge runs to. */
  int to(int h) {
    return corners[after(h)];
  }

  static int after(int h) {
    return h % 3 == 2 ? h - 2 : h + 1;
  }

  static int before(int h) {
    return h % 3 == 0 ? h + 2 : h - 1;
  }

  /** Strings half-edges of the same lesser vertex on a list, kept in {@code twins} until they find theirs. */
  private boolean gather(int[] heads) {
    Arrays.fill(heads, -1);
    for (int h = 0; h < corners.length; h++) {
      int a = corners[h];
      int b = corners[after(h)];
      if (a == b) {
        return false;
      }
      int lesser = Math.min(a, b);
      twins[h] = heads[lesser];
      heads[lesser] = h;
    }
    return true;
  }

  /** Goes through each list and pairs what has the same greater vertex, in time linear in the list. */
  private boolean pair(int[] heads) {
    int[] waiting = new int[heads.length];
    Arrays.fill(waiting, -1);
    int pairs = 0;
    for (int v = 0; v < heads.length; v++) {
      int done = -2 - v;
      for (int h = heads[v], next; h >= 0; h = next) {
        next = twins[h];
        int greater = Math.max(corners[h], to(h));
        int mate = waiting[greater];
        if (mate >= 0 && Math.min(corners[mate], to(mate)) == v) {
          if (corners[mate] == corners[h]) {
            return false;
          }
          twins[h] = mate;
          twins[mate] = h;
          waiting[greater] = done;
          pairs++;
        } else if (mate == done) {
          return false;
        } else {
          waiting[greater] = h;
        }
      }
    }
    return 2 * pairs == corners.length;
  }

  /** Whether the facets at each vertex form one fan: a walk round it from one of them comes by all. */
  boolean formSingleFans(int vertices) {
    int[] first = new int[vertices];
    for (int h = 0; h < corners.length; h++) {
      first[corners[h]] = h;
    }
    int met = 0;
    for (int start : first) {
      int h = start;
      do {
        met++;
        h = twins[before(h)];
      } while (h != start);
    }
    return met == corners.length;
  }
}
