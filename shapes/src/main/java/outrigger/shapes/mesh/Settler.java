package outrigger.shapes.mesh;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

/**
 * Brings rounded facets to rest: where rounding made facets cross, touch or vanish, they are resolved again, exactly,
 * and rounded again, until none do.
 */
final class Settler {
  /** Passes before giving up; real parts were seen to need at most two. */
  private static final int PASSES = 6;

  private Settler() {}

  /**
   * A mesh in which no facet meets another but at common corners and edges.
   *
   * @throws ShapeException if the passes do not settle it, or nothing thick enough is left
   */
  static Mesh settle(Kernel.Rounded facets) {
    return settleAny(facets).orElseThrow(() -> new ShapeException(
        "what is left of the solid is thinner than the grid of 61 nm", "Check the sizes and places of what is cut."));
  }

  /**
   * The same, empty where rounding leaves nothing.
   *
   * @throws ShapeException if the passes do not settle it
   */
  static Optional<Mesh> settleAny(Kernel.Rounded facets) {
    Kernel.Rounded now = facets;
    for (int pass = 0;; pass++) {
      int[] corners = withoutCollapsed(now);
      if (corners.length == 0) {
        return Optional.empty();
      }
      int fault = fault(now, corners);
      if (fault < 0) {
        return Optional.of(Mesh.of(now.xyz(), corners));
      }
      if (pass == PASSES) {
        throw unsettled(now.xyz(), corners[fault]);
      }
      Mesh mesh = Mesh.of(now.xyz(), corners);
      now = Kernel.resolve(mesh.xyz(), withArea(mesh.xyz(), mesh.corners()));
    }
  }

  private static ShapeException unsettled(int[] xyz, int vertex) {
    return new ShapeException(String.format(Locale.ROOT,
        "rounding to the grid makes facets meet near (%.3f, %.3f, %.3f) mm", xyz[3 * vertex] * Grid.STEP,
        xyz[3 * vertex + 1] * Grid.STEP, xyz[3 * vertex + 2] * Grid.STEP),
        "Move or turn one of the parts there a little, so that they meet less narrowly.");
  }

  /** Facets two corners of which fell together are gone; their neighbours then share an edge. */
  private static int[] withoutCollapsed(Kernel.Rounded facets) {
    int[] c = facets.corners();
    int[] kept = new int[c.length];
    int n = 0;
    for (int i = 0; i < c.length; i += 3) {
      if (!same(facets.xyz(), c[i], c[i + 1]) && !same(facets.xyz(), c[i + 1], c[i + 2])
          && !same(facets.xyz(), c[i + 2], c[i])) {
        System.arraycopy(c, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static boolean same(int[] xyz, int v, int w) {
    return Arrays.equals(xyz, 3 * v, 3 * v + 3, xyz, 3 * w, 3 * w + 3);
  }

  private static boolean hasArea(int[] xyz, int[] corners, int i) {
    int a = 3 * corners[i];
    int b = 3 * corners[i + 1];
    int c = 3 * corners[i + 2];
    return Plane.through(xyz[a], xyz[a + 1], xyz[a + 2], xyz[b], xyz[b + 1], xyz[b + 2], xyz[c], xyz[c + 1],
        xyz[c + 2]) != null;
  }

  private static int[] withArea(int[] xyz, int[] corners) {
    int[] kept = new int[corners.length];
    int n = 0;
    for (int i = 0; i < corners.length; i += 3) {
      if (hasArea(xyz, corners, i)) {
        System.arraycopy(corners, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  /**
   * Place in {@code corners} of a facet with a rounded corner that lost its area or meets another where it must not; -1
   * where there is none. What did not move meets as exactly as it was made.
   */
  private static int fault(Kernel.Rounded facets, int[] corners) {
    int[] xyz = facets.xyz();
    boolean[] moved = new boolean[corners.length / 3];
    boolean any = false;
    for (int f = 0; f < moved.length; f++) {
      for (int k = 0; k < 3; k++) {
        moved[f] |= facets.moved()[corners[3 * f + k]];
      }
      any |= moved[f];
      if (moved[f] && !hasArea(xyz, corners, 3 * f)) {
        return 3 * f;
      }
    }
    return any ? meeting(xyz, corners, moved) : -1;
  }

  private static int meeting(int[] xyz, int[] corners, boolean[] moved) {
    BoxTree tree = BoxTree.ofFacets(xyz, corners);
    int[] found = {-1};
    for (int f = 0; f < moved.length && found[0] < 0; f++) {
      if (moved[f]) {
        Interrupt.check();
        int facet = f;
        int a = 3 * corners[3 * f];
        int b = 3 * corners[3 * f + 1];
        int c = 3 * corners[3 * f + 2];
        tree.forEachOverlap(least(xyz, a, b, c, 0), least(xyz, a, b, c, 1), least(xyz, a, b, c, 2),
            greatest(xyz, a, b, c, 0), greatest(xyz, a, b, c, 1), greatest(xyz, a, b, c, 2), g -> {
              if (found[0] < 0 && (!moved[g] || g > facet) && FacetContact.improper(xyz, a / 3, b / 3, c / 3,
                  corners[3 * g], corners[3 * g + 1], corners[3 * g + 2])) {
                found[0] = 3 * facet;
              }
            });
      }
    }
    return found[0];
  }

  private static int least(int[] xyz, int a, int b, int c, int axis) {
    return Math.min(xyz[a + axis], Math.min(xyz[b + axis], xyz[c + axis]));
  }

  private static int greatest(int[] xyz, int a, int b, int c, int axis) {
    return Math.max(xyz[a + axis], Math.max(xyz[b + axis], xyz[c + axis]));
  }
}
