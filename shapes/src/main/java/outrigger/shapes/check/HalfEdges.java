package outrigger.shapes.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The facets of a surface joined over their edges.
 *
 * <p>Half-edge h runs from corner h to the next corner of facet h / 3; its twin runs the same edge the other way on the
 * facet next door.
 */
final class HalfEdges {
  /** Vertices that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

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
    AtomicInteger pairs = new AtomicInteger();
    surface.workers().parts(heads.length, (from, to) -> pairs.addAndGet(edges.pair(heads, from, to)));
    return 2 * pairs.get() == edges.corners.length ? Optional.of(edges) : Optional.empty();
  }

  /** Pairs the edges whose lesser vertex lies from one up to another; returns how many pairs, 0 if there is a fault. */
  private int pair(int[] heads, int from, int to) {
    return gather(heads, from, to) ? pairLists(heads, from, to) : 0;
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
  private boolean gather(int[] heads, int from, int to) {
    Arrays.fill(heads, from, to, -1);
    for (int h = 0; h < corners.length; h++) {
      int a = corners[h];
      int b = corners[after(h)];
      int lesser = Math.min(a, b);
      if (lesser >= from && lesser < to) {
        if (a == b) {
          return false;
        }
        twins[h] = heads[lesser];
        heads[lesser] = h;
      }
    }
    return true;
  }

  /** Goes through each list and pairs what has the same greater vertex, in time linear in the list. */
  private int pairLists(int[] heads, int from, int to) {
    int[] waiting = new int[heads.length];
    Arrays.fill(waiting, -1);
    int pairs = 0;
    for (int v = from; v < to; v++) {
      int done = -2 - v;
      for (int h = heads[v], next; h >= 0; h = next) {
        next = twins[h];
        int greater = Math.max(corners[h], to(h));
        int mate = waiting[greater];
        if (mate >= 0 && Math.min(corners[mate], to(mate)) == v) {
          if (corners[mate] == corners[h]) {
            return 0;
          }
          twins[h] = mate;
          twins[mate] = h;
          waiting[greater] = done;
          pairs++;
        } else if (mate == done) {
          return 0;
        } else {
          waiting[greater] = h;
        }
      }
    }
    return pairs;
  }

  /** Whether the facets at each vertex form one fan: a walk round it from one of them comes by all. */
  boolean formSingleFans(Surface surface) {
    int[] first = new int[surface.vertices()];
    for (int h = 0; h < corners.length; h++) {
      first[corners[h]] = h;
    }
    AtomicInteger met = new AtomicInteger();
    surface.workers().split(first.length, AT_ONCE, (from, to) -> met.addAndGet(walk(first, from, to)));
    return met.get() == corners.length;
  }

  private int walk(int[] first, int from, int to) {
    int met = 0;
    for (int v = from; v < to; v++) {
      int h = first[v];
      do {
        met++;
        h = twins[before(h)];
      } while (h != first[v]);
    }
    return met;
  }
}
