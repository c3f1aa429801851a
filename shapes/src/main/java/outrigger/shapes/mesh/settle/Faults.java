package outrigger.shapes.mesh.settle;

import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Workers;

/** What is wrong with a mesh on the grid: facets without area, and facets that meet other than in a corner or an edge. */
final class Faults {
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private final int[] xyz;
  private final int[] corners;
  private final Set<Integer> touching = new TreeSet<>();
  private boolean crossing;
  private int first = -1;

  private Faults(int[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
  }

  /** All faults of a mesh. */
  static Faults of(Mesh mesh) {
    Faults faults = new Faults(mesh.xyz(), mesh.corners());
    for (int f = 0; f < mesh.facetCount(); f++) {
      faults.checkArea(f);
    }
    BoxTree.ofFacets(faults.xyz, faults.corners).selfPairs((f, g) -> {
      Interrupt.check();
      faults.check(f, g);
      return true;
    });
    return faults;
  }

  /** The first fault in which a facet with a moved corner has a part: what did not move meets as exactly as it was made. */
  static Faults firstOf(int[] xyz, int[] corners, boolean[] moved, Workers workers) {
    Faults faults = new Faults(xyz, corners);
    IntList those = new IntList();
    for (int f = 0; f < moved.length && faults.isNone(); f++) {
      if (moved[f]) {
        those.add(f);
        faults.checkArea(f);
      }
    }
    if (those.size() > 0 && faults.isNone()) {
      faults.meet(those.toArray(), moved, workers);
    }
    return faults;
  }

  /** Finds the least of the moved facets that meets another: all facets are asked which of those they are near. */
  private void meet(int[] those, boolean[] moved, Workers workers) {
    int[] some = new int[3 * those.length];
    for (int i = 0; i < those.length; i++) {
      System.arraycopy(corners, 3 * those[i], some, 3 * i, 3);
    }
    BoxTree tree = BoxTree.of(BoxTree.boxesOfFacets(xyz, some), workers);
    AtomicInteger least = new AtomicInteger(moved.length);
    workers.split(moved.length, AT_ONCE, (from, to) -> {
      for (int g = from; g < to; g++) {
        meet(g, tree, those, moved, least);
      }
    });
    first = least.get() < moved.length ? 3 * least.get() : -1;
  }

  private void meet(int g, BoxTree tree, int[] those, boolean[] moved, AtomicInteger least) {
    tree.forEachOverlap(least(g, 0), least(g, 1), least(g, 2), greatest(g, 0), greatest(g, 1), greatest(g, 2), i -> {
      int f = those[i];
      if (f < least.get() && (moved[g] ? f < g : f != g) && isImproper(f, g)) {
        least.accumulateAndGet(f, Math::min);
      }
    });
  }

  boolean isNone() {
    return first < 0;
  }

  /** A vertex of the first fault. */
  int vertex() {
    return corners[first];
  }

  /** Whether no facet goes through another and none has lost its area: some merely touch. */
  boolean areTouches() {
    return !isNone() && !crossing;
  }

  /** Vertices with which facets touch others. */
  Set<Integer> touching() {
    return touching;
  }

  private void checkArea(int f) {
    if (!GridFacets.hasArea(xyz, corners, f)) {
      first = first < 0 ? 3 * f : first;
      crossing = true;
    }
  }

  private void check(int f, int g) {
    if (isImproper(f, g)) {
      first = first < 0 ? 3 * f : first;
      // both are asked, whichever comes first: each may have corners in the other's plane
      boolean touch = touches(f, g);
      crossing |= !touches(g, f) && !touch;
    }
  }

  private boolean isImproper(int f, int g) {
    return FacetContact.improper(xyz, corners, f, g);
  }

  /** Whether a facet lies on one side of another's plane but for corners in it, which are noted. */
  private boolean touches(int f, int g) {
    int[] side = new int[3];
    int sum = 0;
    int apart = 0;
    for (int k = 0; k < 3; k++) {
      side[k] = side(corners[3 * g], corners[3 * g + 1], corners[3 * g + 2], corners[3 * f + k]);
      sum += side[k];
      apart += Math.abs(side[k]);
    }
    if (apart == 0 || Math.abs(sum) != apart) {
      return false;
    }
    for (int k = 0; k < 3; k++) {
      if (side[k] == 0 && !GridFacets.isCorner(corners, corners[3 * f + k], g)) {
        touching.add(corners[3 * f + k]);
      }
    }
    return true;
  }

  private int side(int a, int b, int c, int d) {
    return Sign.side(xyz, a, b, c, d);
  }

  private int least(int f, int axis) {
    return Math.min(at(f, 0, axis), Math.min(at(f, 1, axis), at(f, 2, axis)));
  }

  private int greatest(int f, int axis) {
    return Math.max(at(f, 0, axis), Math.max(at(f, 1, axis), at(f, 2, axis)));
  }

  private int at(int f, int k, int axis) {
    return xyz[3 * corners[3 * f + k] + axis];
  }
}
