package outrigger.shapes.mesh.settle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.mesh.frame.UnsettledException;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.num.Place;

/**
 * Which facets hang together at each vertex of a mesh whose surface may touch itself.
 *
 * <p>Along an edge that only two facets share they hang together. Where more meet, facets that bound the same wedge of
 * matter do: two bodies that touch along an edge stay two. A vertex with more than one fan of facets is a place where the
 * surface touches itself.
 *
 * <p>A half-edge is numbered as the corner it starts at: 3 f + k runs from corner k of facet f to the next.
 */
final class Fans {
  private final int[] xyz;
  private final int[] corners;
  /** Of each corner another of its fan, or itself. */
  private final int[] joined;
  /** Half-edges of each edge that more than two facets share, in the order of the facets round it. */
  private final List<List<Integer>> crowded = new ArrayList<>();

  private Fans(int[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    joined = new int[corners.length];
    Arrays.setAll(joined, i -> i);
  }

  /**
   * The fans of a closed mesh in which facets meet in common corners and edges only.
   *
   * @throws UnsettledException if an edge has no partner, or wedges of matter at one edge overlap or have no area
   */
  static Fans of(int[] xyz, int[] corners) {
    Fans fans = new Fans(xyz, corners);
    LongMap byEdge = new LongMap(corners.length);
    Map<Long, List<Integer>> shared = new HashMap<>();
    for (int h = 0; h < corners.length; h++) {
      if (byEdge.put(fans.key(h), h) >= 0) {
        shared.put(fans.edge(h), new ArrayList<>());
      }
    }
    for (int h = 0; h < corners.length; h++) {
      if (shared.isEmpty() || !shared.containsKey(fans.edge(h))) {
        fans.join(h, byEdge.get(LongMap.edge(fans.to(h), fans.from(h))));
      } else {
        shared.get(fans.edge(h)).add(h);
      }
    }
    shared.values().forEach(fans::joinWedges);
    return fans;
  }

  /** The fan that a corner belongs to, by the number of one of its corners. */
  int fan(int corner) {
    int c = corner;
    while (joined[c] != c) {
      joined[c] = joined[joined[c]];
      c = joined[c];
    }
    return c;
  }

  /** Whether no vertex has more than one fan and no edge more than two facets. */
  boolean areSingle() {
    return pinched() < 0 && crowded.isEmpty();
  }

  /** A vertex with more than one fan, or -1. */
  int pinched() {
    int[] seen = new int[xyz.length / 3];
    Arrays.fill(seen, -1);
    for (int c = 0; c < corners.length; c++) {
      int before = seen[corners[c]];
      seen[corners[c]] = fan(c);
      if (before >= 0 && before != seen[corners[c]]) {
        return corners[c];
      }
    }
    return -1;
  }

  /** A vertex with more than one fan or at an edge with more than two facets, or -1. */
  int touch() {
    int pinched = pinched();
    return pinched >= 0 || crowded.isEmpty() ? pinched : from(crowded.get(0).get(0));
  }

  /** One half-edge of each crowded edge two of whose wedges have both ends in common, so that no corner parts them. */
  List<Integer> inseparable() {
    List<Integer> found = new ArrayList<>();
    for (List<Integer> round : crowded) {
      long distinct = round.stream().filter(h -> runsUp(h))
          .map(h -> LongMap.edge(fan(h), fan(FacetCorner.next(h)))).distinct().count();
      if (2 * distinct < round.size()) {
        found.add(round.get(0));
      }
    }
    return found;
  }

  private int from(int h) {
    return corners[h];
  }

  private int to(int h) {
    return corners[FacetCorner.next(h)];
  }

  private boolean runsUp(int h) {
    return from(h) < to(h);
  }

  private long key(int h) {
    return LongMap.edge(from(h), to(h));
  }

  private long edge(int h) {
    return LongMap.edge(Math.min(from(h), to(h)), Math.max(from(h), to(h)));
  }

  private void join(int h, int twin) {
    if (twin < 0) {
      throw new UnsettledException(Place.of(xyz, from(h)));
    }
    joined[fan(h)] = fan(FacetCorner.next(twin));
    joined[fan(FacetCorner.next(h))] = fan(twin);
  }

  /** Joins each facet that matter follows, turning about the edge, with the next, which ends it. */
  private void joinWedges(List<Integer> halfEdges) {
    int reference = halfEdges.get(0);
    int a = Math.min(from(reference), to(reference));
    int b = Math.max(from(reference), to(reference));
    halfEdges.sort((g, h) -> compare(a, b, apex(reference), apex(g), apex(h)));
    int n = halfEdges.size();
    int open = n;
    for (int i = 0; i < n; i++) {
      int h = halfEdges.get(i);
      int next = halfEdges.get((i + 1) % n);
      if (!runsUp(h) && runsUp(next)) {
        join(h, next);
        open -= 2;
      }
    }
    if (open != 0) {
      // two sides passed through each other when corners were nudged, and all they have in common is this edge
      throw new UnsettledException(Place.of(xyz, a));
    }
    crowded.add(halfEdges);
  }

  private int apex(int h) {
    return corners[FacetCorner.previous(h)];
  }

  /** Order in turning about the edge from a to b, counter-clockwise seen from b, starting with the reference. */
  private int compare(int a, int b, int reference, int p, int q) {
    int halfP = half(a, b, reference, p);
    int halfQ = half(a, b, reference, q);
    return halfP != halfQ ? Integer.compare(halfP, halfQ) : -side(a, b, p, q);
  }

  /** 0 at the reference, 1 less than half a turn from it, 2 opposite, 3 beyond. */
  private int half(int a, int b, int reference, int p) {
    int side = side(a, b, reference, p);
    return side > 0 ? 1 : side < 0 ? 3 : isFacing(a, b, reference, p) ? 0 : 2;
  }

  /** Whether two points in one plane with an edge lie on the same side of it. */
  private boolean isFacing(int a, int b, int p, int q) {
    for (int k = 0; k < 3; k++) {
      int turn = turn(a, b, p, k, (k + 1) % 3);
      if (turn != 0) {
        return turn == turn(a, b, q, k, (k + 1) % 3);
      }
    }
    // a facet without area at an edge: neither side of it is known
    throw new UnsettledException(Place.of(xyz, a));
  }

  private int turn(int a, int b, int c, int u, int v) {
    return Sign.turn(xyz[3 * a + u], xyz[3 * a + v], xyz[3 * b + u], xyz[3 * b + v], xyz[3 * c + u], xyz[3 * c + v]);
  }

  private int side(int a, int b, int c, int d) {
    return Sign.side(xyz, a, b, c, d);
  }
}
