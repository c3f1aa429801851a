package outrigger.shapes.mesh.settle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Rounded;

/**
 * Facets that come and go, with the star of each vertex: the facets at it. Vertices stay where they are.
 *
 * <p>An edge is contracted or turned only where that leaves every edge between two facets and every vertex with one fan, if
 * it was so before: neither joins or tears a surface.
 */
final class Stars {
  private final int[] xyz;
  private final int[] corners;
  private final boolean[] gone;
  private final boolean[] changed;
  private final List<List<Integer>> stars = new ArrayList<>();

  /**
   * The facets of a mesh.
   *
   * @param changed of each facet whether it is counted as changed from the first
   */
  Stars(Mesh mesh, boolean[] changed) {
    xyz = mesh.xyz();
    corners = mesh.corners();
    gone = new boolean[mesh.facetCount()];
    this.changed = changed.clone();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      stars.add(new ArrayList<>());
    }
    for (int c = 0; c < corners.length; c++) {
      stars.get(corners[c]).add(c / 3);
    }
  }

  /** Number of facets, those included that are gone. */
  int count() {
    return gone.length;
  }

  boolean isGone(int facet) {
    return gone[facet];
  }

  /** A corner of a facet, 0 to 2, or the next round. */
  int corner(int facet, int k) {
    return corners[3 * facet + k % 3];
  }

  /** The facets at a vertex; not to be changed. */
  List<Integer> star(int vertex) {
    return stars.get(vertex);
  }

  /** The facet across a facet's edge from corner k to the next; -1 where the edge is not between these two alone. */
  int across(int facet, int k) {
    int a = corner(facet, k);
    int b = corner(facet, k + 1);
    return along(a, b) == facet ? along(b, a) : -1;
  }

  /** The one facet with an edge from a vertex to another, or -1. */
  private int along(int from, int to) {
    int found = -1;
    for (int f : stars.get(from)) {
      for (int k = 0; k < 3; k++) {
        if (corner(f, k) == from && corner(f, k + 1) == to) {
          if (found >= 0) {
            return -1;
          }
          found = f;
        }
      }
    }
    return found;
  }

  /** The corner of a facet that is neither of two others. */
  int apex(int facet, int a, int b) {
    int k = 0;
    while (corner(facet, k) == a || corner(facet, k) == b) {
      k++;
    }
    return corner(facet, k);
  }

  private Set<Integer> neighbours(int vertex) {
    Set<Integer> all = new HashSet<>();
    for (int f : stars.get(vertex)) {
      all.addAll(List.of(corner(f, 0), corner(f, 1), corner(f, 2)));
    }
    all.remove(vertex);
    return all;
  }

  /** Whether two facets' common edge may shrink to nothing: its ends have no neighbours in common but the two apexes. */
  boolean mayContract(int facet, int other, int a, int b) {
    Set<Integer> both = neighbours(a);
    both.retainAll(neighbours(b));
    return apex(facet, a, b) != apex(other, a, b) && both.equals(Set.of(apex(facet, a, b), apex(other, a, b)));
  }

  /** Takes two facets and one end of their common edge away; what else was at that end is at the other then. */
  void contract(int facet, int other, int from, int to) {
    remove(facet);
    remove(other);
    for (int f : stars.get(from)) {
      for (int c = 3 * f; c < 3 * f + 3; c++) {
        corners[c] = corners[c] == from ? to : corners[c];
      }
      changed[f] = true;
      stars.get(to).add(f);
    }
    stars.get(from).clear();
  }

  /** Whether two facets' common edge may run between their apexes instead: no other does. */
  boolean mayTurn(int facet, int other, int a, int b) {
    int from = apex(facet, a, b);
    int to = apex(other, a, b);
    return from != to && !neighbours(from).contains(to);
  }

  /** Puts the edge from a to b of a facet, and of the other across it, between their apexes. */
  void turn(int facet, int other, int a, int b) {
    int from = apex(facet, a, b);
    int to = apex(other, a, b);
    remove(facet);
    remove(other);
    put(facet, a, to, from);
    put(other, to, b, from);
  }

  private void remove(int facet) {
    gone[facet] = true;
    for (int k = 0; k < 3; k++) {
      stars.get(corner(facet, k)).remove((Integer) facet);
    }
  }

  private void put(int facet, int... places) {
    gone[facet] = false;
    changed[facet] = true;
    for (int k = 0; k < 3; k++) {
      corners[3 * facet + k] = places[k];
      stars.get(places[k]).add(facet);
    }
  }

  /** The facets left, in order; corners of those that changed count as moved. */
  Rounded facets() {
    int[] kept = new int[corners.length];
    boolean[] moved = new boolean[stars.size()];
    int n = 0;
    for (int f = 0; f < gone.length; f++) {
      for (int c = 3 * f; c < 3 * f + 3 && !gone[f]; c++) {
        kept[n++] = corners[c];
        moved[corners[c]] |= changed[f];
      }
    }
    return new Rounded(xyz, Arrays.copyOf(kept, n), moved);
  }
}
