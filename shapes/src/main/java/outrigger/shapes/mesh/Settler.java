package outrigger.shapes.mesh;

import java.util.Arrays;
import java.util.Locale;
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
   * @throws ShapeException if the passes do not settle it
   */
  static Mesh settle(Kernel.Rounded facets) {
    Kernel.Rounded now = facets;
    for (int pass = 0; pass < PASSES; pass++) {
      Mesh mesh = Mesh.of(now.xyz(), withoutCollapsed(now));
      if (mesh.facetCount() == 0) {
        throw new ShapeException("what is left of the solid is thinner than the grid of 61 nm",
            "Check the sizes and places of what is cut.");
      }
      if (!now.moved() || fault(mesh) == null) {
        return mesh;
      }
      now = Kernel.resolve(mesh.xyz(), withArea(mesh));
    }
    int[] at = fault(Mesh.of(now.xyz(), withoutCollapsed(now)));
    throw new ShapeException(at == null ? "rounding to the grid did not settle" : String.format(Locale.ROOT,
        "rounding to the grid makes facets cross near (%.3f, %.3f, %.3f) mm", at[0] * Grid.STEP, at[1] * Grid.STEP,
        at[2] * Grid.STEP), "Move or turn one of the parts there a little, so that they meet less narrowly.");
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

  private static boolean hasArea(Mesh m, int f) {
    int a = m.corner(f, 0);
    int b = m.corner(f, 1);
    int c = m.corner(f, 2);
    return Plane.through(m.x(a), m.y(a), m.z(a), m.x(b), m.y(b), m.z(b), m.x(c), m.y(c), m.z(c)) != null;
  }

  private static int[] withArea(Mesh mesh) {
    int[] kept = new int[3 * mesh.facetCount()];
    int n = 0;
    for (int f = 0; f < mesh.facetCount(); f++) {
      if (hasArea(mesh, f)) {
        for (int k = 0; k < 3; k++) {
          kept[n++] = mesh.corner(f, k);
        }
      }
    }
    return Arrays.copyOf(kept, n);
  }

  /** A place where facets meet that must not, or where one has no area; null where there is none. */
  private static int[] fault(Mesh mesh) {
    int[] xyz = mesh.xyz();
    int[] corners = mesh.corners();
    for (int f = 0; f < mesh.facetCount(); f++) {
      if (!hasArea(mesh, f)) {
        return place(mesh, f);
      }
    }
    int[] found = {-1};
    BoxTree.ofFacets(xyz, corners).selfPairs((f, g) -> {
      Interrupt.check();
      if (FacetContact.improper(xyz, corners[3 * f], corners[3 * f + 1], corners[3 * f + 2], corners[3 * g],
          corners[3 * g + 1], corners[3 * g + 2])) {
        found[0] = f;
        return false;
      }
      return true;
    });
    return found[0] < 0 ? null : place(mesh, found[0]);
  }

  private static int[] place(Mesh mesh, int f) {
    int v = mesh.corner(f, 0);
    return new int[] {mesh.x(v), mesh.y(v), mesh.z(v)};
  }
}
