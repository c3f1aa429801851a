package outrigger.shapes.mesh;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import outrigger.shapes.num.ShapeException;

/**
 * Brings rounded facets to rest: where rounding made facets cross, touch or vanish, they are resolved again, exactly,
 * and rounded again, until none do; where it made the surface touch itself, that is parted by a grid step.
 *
 * <p>What touched before any rounding is left to touch, for whoever asked for it to mend.
 */
final class Settler {
  /** Passes before giving up. Those that need more were seen to grow without end. */
  private static final int PASSES = 8;
  /** Times the facets' corners there were at first, and some more for small parts, beyond which passes are given up. */
  private static final int GROWTH = 3;
  private static final int ROOM = 1_000;

  private Settler() {}

  /**
   * A mesh in which no facet meets another but at common corners and edges, unless it did before it was rounded.
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
      Mesh mesh = Mesh.of(now.xyz(), corners);
      Faults faults = Faults.firstOf(mesh, movedFacets(now, corners));
      if (!faults.isNone() && (pass == PASSES || corners.length > GROWTH * facets.corners().length + ROOM)) {
        throw unsettled(mesh, faults.vertex());
      }
      boolean rests = faults.isNone() && (pass == PASSES || pass == 0 && !fellTogether(now, mesh));
      Optional<Kernel.Rounded> next = rests ? Optional.empty() : faults.isNone() ? parted(mesh)
          : Optional.of(Kernel.resolve(mesh.xyz(), withArea(mesh.xyz(), mesh.corners())));
      if (next.isEmpty()) {
        return pass == 0 && !isRounded(facets) ? Optional.of(mesh) : withoutSlivers(mesh);
      }
      if (pass == 0) {
        checkTouch(facets);
      }
      now = next.get();
    }
  }

  /** The mesh with its touches parted; nothing where there are none or they cannot be. */
  private static Optional<Kernel.Rounded> parted(Mesh mesh) {
    Faults faults = Faults.of(mesh);
    return faults.isNone() || faults.areTouches() ? Parting.part(mesh, faults.touching()) : Optional.empty();
  }

  /** The mesh that {@link #settle} makes of facets if rounding made none of them meet; empty where it is known that it did. */
  static Optional<Mesh> untried(Kernel.Rounded facets) {
    int[] corners = withoutCollapsed(facets);
    if (corners.length == 0) {
      return Optional.empty();
    }
    Mesh mesh = Mesh.of(facets.xyz(), corners);
    return fellTogether(facets, mesh) ? Optional.empty() : isRounded(facets) ? withoutSlivers(mesh) : Optional.of(mesh);
  }

  private static boolean isRounded(Kernel.Rounded facets) {
    for (boolean moved : facets.moved()) {
      if (moved) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Mesh> withoutSlivers(Mesh mesh) {
    int[] corners = Slivers.without(mesh);
    return corners.length == 0 ? Optional.empty() : corners.length == mesh.corners().length ? Optional.of(mesh)
        : Optional.of(Mesh.of(mesh.xyz(), corners));
  }

  private static void checkTouch(Kernel.Rounded facets) {
    int v = ExactTouch.find(facets);
    if (v >= 0) {
      throw new ShapeException("parts touch only at a point or along a line here, near " + Place.of(facets.xyz(), v).mm()
          + ", which no print file can say", "Let them overlap by a tenth of a millimetre there, or move them apart.");
    }
  }

  private static ShapeException unsettled(Mesh mesh, int vertex) {
    return new ShapeException("rounding to the grid makes facets meet near " + Place.of(mesh.xyz(), vertex).mm(),
        "Move or turn one of the parts there a little, so that they meet less narrowly.");
  }

  /** Whether different vertices came to lie in one place. */
  private static boolean fellTogether(Kernel.Rounded facets, Mesh mesh) {
    boolean[] used = new boolean[facets.moved().length];
    int count = 0;
    for (int v : facets.corners()) {
      count += used[v] ? 0 : 1;
      used[v] = true;
    }
    return mesh.vertexCount() < count;
  }

  private static boolean[] movedFacets(Kernel.Rounded facets, int[] corners) {
    boolean[] moved = new boolean[corners.length / 3];
    for (int i = 0; i < corners.length; i++) {
      moved[i / 3] |= facets.moved()[corners[i]];
    }
    return moved;
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

  private static int[] withArea(int[] xyz, int[] corners) {
    int[] kept = new int[corners.length];
    int n = 0;
    for (int i = 0; i < corners.length; i += 3) {
      if (Faults.hasArea(xyz, corners, i)) {
        System.arraycopy(corners, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
  }
}
