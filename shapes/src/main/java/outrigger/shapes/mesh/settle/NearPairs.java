package outrigger.shapes.mesh.settle;

import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.num.IntList;

/**
 * The vertices and facets, and the edges and edges, that are near each other and have no corner in common, each pair once
 * and told in the order of its corners.
 */
final class NearPairs {
  private final int[] corners;
  private final Places places;
  private final Approach approach;
  private final double reach;
  private final IntPredicate free;
  private final IntUnaryOperator home;
  /** Four corners a pair: a vertex and those of a facet. */
  private final IntList toFacets = new IntList();
  /** Four corners a pair: the ends of two edges. */
  private final IntList toEdges = new IntList();
  /** Of each pair what {@link Approach} writes. */
  private double[] measured = {};

  /**
   * No pair yet.
   *
   * @param reach pairs farther apart than this are none, grid steps
   * @param free whether a vertex may move; pairs of which none may are left out
   * @param home of each vertex the one facet at it by which it is told
   */
  NearPairs(int[] corners, Places places, double reach, IntPredicate free, IntUnaryOperator home) {
    this.corners = corners;
    this.places = places;
    approach = new Approach(places);
    this.reach = reach;
    this.free = free;
    this.home = home;
  }

  /** Adds the pairs that two facets tell: a vertex is told by its home, an edge by the facet that goes along it up. */
  void add(int f, int g) {
    for (int k = 0; k < 3; k++) {
      addVertex(f, 3 * f + k, g);
      addVertex(g, 3 * g + k, f);
    }
    for (int c = 3 * f; c < 3 * f + 3; c++) {
      for (int d = 3 * g; d < 3 * g + 3; d++) {
        addEdges(corners[c], corners[FacetCorner.next(c)], corners[d], corners[FacetCorner.next(d)]);
      }
    }
  }

  private void addVertex(int at, int corner, int f) {
    int v = corners[corner];
    int[] c = {v, corners[3 * f], corners[3 * f + 1], corners[3 * f + 2]};
    if (home.applyAsInt(v) == at && v != c[1] && v != c[2] && v != c[3] && isAnyFree(c) && places.areNear(c, 1, reach)) {
      order(c, 1, 2);
      order(c, 2, 3);
      order(c, 1, 2);
      approach.toFacet(v, c[1], c[2], c[3]);
      if (approach.distance < reach) {
        add(toFacets, c);
      }
    }
  }

  private void addEdges(int a, int b, int c, int d) {
    int[] ends = {a, b, c, d};
    if (a < b && c < d && a != c && a != d && b != c && b != d && isAnyFree(ends) && places.areNear(ends, 2, reach)) {
      order(ends, 0, 1);
      order(ends, 2, 3);
      if (places.compare(ends[0], ends[2]) > 0) {
        ends = new int[] {ends[2], ends[3], ends[0], ends[1]};
      }
      // also if an end is nearest now: where they are nearest changes as they move
      if (approach.areEdgesWithin(reach, ends[0], ends[1], ends[2], ends[3])) {
        add(toEdges, ends);
      }
    }
  }

  private boolean isAnyFree(int[] c) {
    return free.test(c[0]) || free.test(c[1]) || free.test(c[2]) || free.test(c[3]);
  }

  private void order(int[] c, int i, int j) {
    if (places.compare(c[i], c[j]) > 0) {
      int first = c[i];
      c[i] = c[j];
      c[j] = first;
    }
  }

  private static void add(IntList list, int[] four) {
    for (int v : four) {
      list.add(v);
    }
  }

  /** Measures each pair anew. */
  void measure() {
    measured = new double[Approach.NUMBERS * (toFacets.size() + toEdges.size()) / 4];
    int at = 0;
    for (int i = 0; i < toFacets.size(); i += 4) {
      approach.toFacet(toFacets.get(i), toFacets.get(i + 1), toFacets.get(i + 2), toFacets.get(i + 3));
      at = approach.write(measured, at);
    }
    for (int i = 0; i < toEdges.size(); i += 4) {
      if (!approach.betweenEdges(toEdges.get(i), toEdges.get(i + 1), toEdges.get(i + 2), toEdges.get(i + 3))) {
        approach.distance = Double.POSITIVE_INFINITY;
      }
      at = approach.write(measured, at);
    }
  }

  /** Tells how each pair stood when they were measured last; edges of which an end is nearer are not told. */
  void forEach(Consumer<Approach> told) {
    int at = forEach(toFacets, 0, told);
    forEach(toEdges, at, told);
  }

  private int forEach(IntList pairs, int first, Consumer<Approach> told) {
    int at = first;
    for (int i = 0; i < pairs.size(); i += 4) {
      approach.set(pairs.get(i), pairs.get(i + 1), pairs.get(i + 2), pairs.get(i + 3));
      at = approach.read(measured, at);
      if (approach.distance < Double.POSITIVE_INFINITY) {
        told.accept(approach);
      }
    }
    return at;
  }
}
