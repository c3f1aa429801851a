package outrigger.shapes.check;

import java.util.Arrays;
import outrigger.shapes.num.DisjointSets;

/**
 * Pairs facets over their edges, by sorting all edges on their two vertex numbers.
 *
 * <p>On the way facets joined over an edge are gathered into shells, and the corners at a vertex into fans.
 */
final class Edges {
  private final Surface surface;
  private final Findings findings;
  private final DisjointSets shells;
  private final DisjointSets fans;
  private int count;

  private Edges(Surface surface, Findings findings) {
    this.surface = surface;
    this.findings = findings;
    shells = new DisjointSets(surface.facets());
    fans = new DisjointSets(3 * surface.facets());
  }

  static Edges examine(Surface surface, Findings findings) {
    Edges edges = new Edges(surface, findings);
    edges.pair();
    edges.findPinches();
    return edges;
  }

  /** Facets by shell. */
  DisjointSets shells() {
    return shells;
  }

  /** Number of different edges. */
  int count() {
    return count;
  }

  /** Half-edge h runs from corner h to the next corner of its facet. An edge from a vertex to itself is left out. */
  private void pair() {
    int[] corners = surface.corners();
    long[] keys = new long[corners.length];
    int[] halves = new int[corners.length];
    int n = 0;
    for (int h = 0; h < corners.length; h++) {
      int a = corners[h];
      int b = corners[after(h)];
      if (a != b) {
        keys[n] = (long) Math.min(a, b) * surface.vertices() + Math.max(a, b);
        halves[n++] = h;
      }
    }
    KeySort.sort(keys, halves, n);
    for (int from = 0, to; from < n; from = to) {
      to = from + 1;
      while (to < n && keys[to] == keys[from]) {
        to++;
      }
      count++;
      judge(halves, from, to);
      join(halves, from, to);
    }
  }

  private static int after(int h) {
    return h % 3 == 2 ? h - 2 : h + 1;
  }

  private void judge(int[] halves, int from, int to) {
    int a = surface.corners()[halves[from]];
    int b = surface.corners()[after(halves[from])];
    int sharing = to - from;
    if (sharing == 1) {
      findings.addBetween(Rule.OPEN_EDGE, surface, a, b, () -> "the surface is open along the edge from "
          + surface.words(a) + " to " + surface.words(b) + " mm: there is a facet on one side only");
    } else if (sharing > 2) {
      findings.addBetween(Rule.CROWDED_EDGE, surface, a, b, () -> "the edge from " + surface.words(a) + " to "
          + surface.words(b) + " mm is shared by " + sharing + " facets instead of 2");
    } else if (surface.corners()[halves[from + 1]] == a) {
      findings.addBetween(Rule.FLIPPED, surface, a, b, () -> "the two facets at the edge from " + surface.words(a) + " to "
          + surface.words(b) + " mm face opposite ways: one of them is turned over");
    }
  }

  private void join(int[] halves, int from, int to) {
    int first = halves[from];
    int a = surface.corners()[first];
    for (int i = from + 1; i < to; i++) {
      int h = halves[i];
      boolean along = surface.corners()[h] == a;
      shells.join(first / 3, h / 3);
      fans.join(first, along ? h : after(h));
      fans.join(after(first), along ? after(h) : h);
    }
  }

  private void findPinches() {
    int[] corners = surface.corners();
    int[] fan = new int[surface.vertices()];
    Arrays.fill(fan, -1);
    for (int c = 0; c < corners.length; c++) {
      int v = corners[c];
      int root = fans.find(c);
      if (fan[v] == -1) {
        fan[v] = root;
      } else if (fan[v] >= 0 && fan[v] != root) {
        fan[v] = -2;
        findings.addAt(Rule.PINCHED, surface, v, () -> "parts of the surface touch at the point " + surface.words(v)
            + " mm only, with no edge between them");
      }
    }
  }
}
