package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Workers;

/**
 * Brings rounded facets to rest: as they are where rounding did no harm, or cut anew where they meet; and where that does
 * not do, with corners put clear of each other before they are rounded.
 *
 * <p>What touched before any rounding is left to touch, for whoever asked for it to mend.
 */
public final class Settler {
  /** Times that facets which meet are cut anew. What has not come to rest then seldom does. */
  private static final int PASSES = 2;
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;
  /**
   * Corners above which the first look is at the facets that were rounded, and only the second at whether all are sound:
   * there a proof in vain costs more. Any number would do.
   */
  private static final int MANY = 60_000;

  private final Rounded given;
  private final Frame frame;
  private final Workers workers;
  private final Predicate<Mesh> isSound;
  private boolean atRest;
  /** The mesh at rest, in the axes given; empty where nothing is left, and until then. */
  private Optional<Mesh> mesh = Optional.empty();

  /**
   * Of some facets, and looks whether they come to rest without moving corners by more than rounding does.
   *
   * @param given facets in a frame, that met no other before they were rounded but at common corners and edges
   * @param frame that frame; meshes are brought back to the axes given
   * @param isSound whether a mesh is known to be one in which facets meet only so; false may mean that nobody knows
   */
  public Settler(Rounded given, Frame frame, Workers workers, Predicate<Mesh> isSound) {
    this.given = given;
    this.frame = frame;
    this.workers = workers;
    this.isSound = isSound;
    atRest = rests();
  }

  /** Whether a mesh touches itself. */
  public static boolean touchesItself(Mesh mesh) {
    return !Faults.areNone(mesh) || Fans.isPinched(mesh);
  }

  /** Whether the facets are at rest: as they were rounded or cut anew, unless the mesh was asked for. */
  public boolean isAtRest() {
    return atRest;
  }

  /**
   * A mesh in which no facet meets another but at common corners and edges, unless it did before it was rounded; empty where
   * rounding leaves nothing thicker than the grid.
   *
   * @throws outrigger.shapes.mesh.settle.UnsettledException if corners cannot be put clear of each other
   * @throws outrigger.shapes.mesh.frame.TouchException if facets that rounding made meet touched before
   */
  public Optional<Mesh> mesh() {
    if (!atRest) {
      mesh = spread();
      atRest = true;
    }
    return mesh;
  }

  /** Whether facets that are rounded, and a few times cut anew where they meet, come to rest in a mesh, which it keeps. */
  private boolean rests() {
    Rounded now = given;
    for (int pass = 0;; pass++) {
      int[] corners = withoutCollapsed(now);
      if (corners.length == 0) {
        mesh = Optional.empty();
        return true;
      }
      Mesh rounded = Mesh.of(now.xyz(), corners, workers);
      boolean whole = pass == 0 && !fellTogether(rounded);
      if (whole && corners.length <= MANY) {
        mesh = finished(rounded);
        if (mesh.filter(isSound).isPresent()) {
          return true;
        }
      }
      boolean[] moved = movedFacets(now, corners);
      if (Faults.areNone(rounded.xyz(), rounded.corners(), moved, workers)) {
        mesh = finished(rounded);
        return whole || mesh.filter(isSound).isPresent() || !mesh.map(Settler::touchesItself).orElse(false);
      } else if (pass == PASSES) {
        return false;
      }
      now = resolved(rounded.xyz(), rounded.corners(), moved);
    }
  }

  /** Resolved again, without the facets that have no area. */
  private Rounded resolved(int[] xyz, int[] corners, boolean[] moved) {
    int[] kept = new int[corners.length];
    boolean[] keptMoved = new boolean[moved.length];
    int n = 0;
    for (int f = 0; f < moved.length; f++) {
      if (GridFacets.hasArea(xyz, corners, f)) {
        System.arraycopy(corners, 3 * f, kept, 3 * n, 3);
        keptMoved[n++] = moved[f];
      }
    }
    return Kernel.resolve(xyz, Arrays.copyOf(kept, 3 * n), Arrays.copyOf(keptMoved, n), workers);
  }

  /** With corners clear of each other, and without what is thinner than the grid. */
  private Optional<Mesh> spread() {
    int[] thick = Slivers.without(given.xyz(), given.corners());
    if (thick.length == 0) {
      return Optional.empty();
    }
    int[] xyz = Spreading.of(new Rounded(given.xyz(), thick, given.moved(), given::before), frame);
    Optional<Mesh> finished = finished(Mesh.of(xyz, thick, workers));
    // shown all the same: who proves it need not do so again
    finished.filter(isSound);
    return finished;
  }

  /** The mesh as it is handed on. Nothing that was not rounded is thinner than the grid. */
  private Optional<Mesh> finished(Mesh mesh) {
    return (isRounded() ? withoutSlivers(mesh) : Optional.of(mesh)).map(frame::out);
  }

  /** Whether a corner of a facet was; where outlines cross but nothing is left, points were that no facet has. */
  private boolean isRounded() {
    for (int corner : given.corners()) {
      if (given.moved()[corner]) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Mesh> withoutSlivers(Mesh mesh) {
    int[] corners = Slivers.without(mesh.xyz(), mesh.corners());
    return corners.length == 0 ? Optional.empty() : corners.length == 3 * mesh.facetCount() ? Optional.of(mesh)
        : Optional.of(Mesh.of(mesh.xyz(), corners));
  }

  /** Whether different vertices came to lie in one place. */
  private boolean fellTogether(Mesh mesh) {
    boolean[] used = new boolean[given.moved().length];
    int count = 0;
    for (int v : given.corners()) {
      count += used[v] ? 0 : 1;
      used[v] = true;
    }
    return mesh.vertexCount() < count;
  }

  private static boolean[] movedFacets(Rounded facets, int[] corners) {
    boolean[] moved = new boolean[corners.length / 3];
    for (int i = 0; i < corners.length; i++) {
      moved[i / 3] |= facets.moved()[corners[i]];
    }
    return moved;
  }

  /** Facets two corners of which fell together are gone; their neighbours then share an edge. */
  private int[] withoutCollapsed(Rounded facets) {
    int[] c = facets.corners();
    if (!isAnyCollapsed(facets)) {
      return c;
    }
    int[] kept = new int[c.length];
    int n = 0;
    for (int i = 0; i < c.length; i += 3) {
      if (!isCollapsed(facets, i)) {
        System.arraycopy(c, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private boolean isAnyCollapsed(Rounded facets) {
    AtomicBoolean any = new AtomicBoolean();
    workers.split(facets.corners().length / 3, AT_ONCE, (from, to) -> {
      for (int f = from; f < to && !any.get(); f++) {
        if (isCollapsed(facets, 3 * f)) {
          any.set(true);
        }
      }
    });
    return any.get();
  }

  private static boolean isCollapsed(Rounded facets, int i) {
    int[] c = facets.corners();
    return isOne(facets.xyz(), c[i], c[i + 1]) || isOne(facets.xyz(), c[i + 1], c[i + 2])
        || isOne(facets.xyz(), c[i + 2], c[i]);
  }

  private static boolean isOne(int[] xyz, int v, int w) {
    return Arrays.equals(xyz, 3 * v, 3 * v + 3, xyz, 3 * w, 3 * w + 3);
  }
}
