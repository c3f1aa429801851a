package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicBoolean;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Workers;

/** Whether anything is wrong with facets on the grid: some without area, or that meet other than in a corner or an edge. */
final class Faults {
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private Faults() {}

  /** Whether there are none in a mesh. */
  static boolean areNone(Mesh mesh) {
    boolean[] all = new boolean[mesh.facetCount()];
    Arrays.fill(all, true);
    return areNone(mesh.xyz(), mesh.corners(), all, Workers.of(1));
  }

  /** Whether facets with a moved corner have no part in any: what did not move meets as exactly as it was made. */
  static boolean areNone(int[] xyz, int[] corners, boolean[] moved, Workers workers) {
    IntList those = new IntList();
    for (int f = 0; f < moved.length; f++) {
      if (moved[f]) {
        if (!GridFacets.hasArea(xyz, corners, f)) {
          return false;
        }
        those.add(f);
      }
    }
    return those.size() == 0 || !meet(xyz, corners, those, moved, workers);
  }

  /** Whether a moved facet meets another improperly: all are asked which of the moved they are near. */
  private static boolean meet(int[] xyz, int[] corners, IntList those, boolean[] moved, Workers workers) {
    int[] some = new int[3 * those.size()];
    for (int i = 0; i < those.size(); i++) {
      System.arraycopy(corners, 3 * those.get(i), some, 3 * i, 3);
    }
    BoxTree tree = BoxTree.of(BoxTree.boxesOfFacets(xyz, some), workers);
    AtomicBoolean any = new AtomicBoolean();
    workers.split(moved.length, AT_ONCE, (from, to) -> {
      for (int g = from; g < to && !any.get(); g++) {
        Interrupt.check();
        int facet = g;
        tree.forEachOverlap(GridFacets.box(xyz, corners, g, 0), 0, i -> {
          int f = those.get(i);
          if ((moved[facet] ? f < facet : f != facet) && !any.get() && FacetContact.improper(xyz, corners, f, facet)) {
            any.set(true);
          }
        });
      }
    });
    return any.get();
  }
}
