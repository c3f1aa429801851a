package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Attempt;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.frame.TouchException;
import outrigger.shapes.mesh.frame.UnsettledException;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Place;
import outrigger.shapes.num.ShapeException;

/**
 * Brings rounded facets to rest: where rounding made facets cross, touch or vanish, they are resolved again, exactly,
 * and rounded again, until none do; facets that still meet after some passes are told apart by nudging their corners, and
 * where rounding made the surface touch itself, that is parted by a grid step.
 *
 * <p>What touched before any rounding is left to touch, for whoever asked for it to mend.
 */
public final class Settler {
  /** Passes before giving up. Those that need more were seen to grow without end. */
  private static final int PASSES = 8;
  /** Times the facets' corners there were at first, and some more for small parts, beyond which passes are given up. */
  private static final int GROWTH = 3;
  /** The first pass in which corners are nudged: most parts have come to rest by then, of the others few facets meet. */
  private static final int NUDGED = 2;
  /** Corners that passes may add to any part. */
  private static final int ROOM = 1_000;
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;
  /**
   * Corners above which the first look is at the facets that were rounded, and only the second at whether all are sound:
   * there a proof in vain costs more. Any number would do.
   */
  private static final int MANY = 60_000;

  private final Rounded given;
  private final Attempt attempt;
  private final Predicate<Mesh> isSound;
  private boolean lookedForTouch;
  /** The mesh last shown. */
  private Optional<Mesh> shown = Optional.empty();

  private Settler(Rounded given, Attempt attempt, Predicate<Mesh> isSound) {
    this.given = given;
    this.attempt = attempt;
    this.isSound = isSound;
  }

  /**
   * A mesh in which no facet meets another but at common corners and edges, unless it did before it was rounded.
   *
   * @param attempt how corners are rounded; facets are in its frame, the mesh is brought back to the axes given
   * @param isSound whether such a mesh is known to be one in which facets meet only so; false may mean that nobody knows
   * @throws ShapeException if the passes do not settle it, or nothing thick enough is left
   */
  public static Mesh settle(Rounded facets, Attempt attempt, Predicate<Mesh> isSound) {
    return settleAny(facets, attempt, isSound).orElseThrow(() -> new ShapeException(
        "what is left of the solid is thinner than the grid of 61 nm", "Check the sizes and places of what is cut."));
  }

  /**
   * The same, empty where rounding leaves nothing.
   *
   * @throws ShapeException if the passes do not settle it
   */
  public static Optional<Mesh> settleAny(Rounded facets, Attempt attempt, Predicate<Mesh> isSound) {
    return new Settler(facets, attempt, isSound).settle();
  }

  /** Whether a mesh touches itself, or its facets do not pair so that one could tell. */
  public static boolean touchesItself(Mesh mesh) {
    try {
      return touch(mesh) >= 0;
    } catch (UnsettledException untold) {
      return true;
    }
  }

  private Optional<Mesh> settle() {
    return attempt.remedy() == Attempt.Remedy.SPREAD ? spread() : inPasses();
  }

  /** Without what is thinner than the grid, and with corners clear of each other. */
  private Optional<Mesh> spread() {
    checkTouch();
    int[] thick = Slivers.without(given.xyz(), given.corners());
    if (thick.length == 0) {
      return Optional.empty();
    }
    Rounded facets = Spreading.of(new Rounded(given.xyz(), thick, given.moved(), given::before), attempt.frame());
    Mesh mesh = Mesh.of(facets.xyz(), facets.corners(), attempt.workers());
    return isSound(mesh) ? shown : atRest(mesh);
  }

  private Optional<Mesh> inPasses() {
    Rounded now = given;
    for (int pass = 0;; pass++) {
      int[] corners = withoutCollapsed(now);
      if (corners.length == 0) {
        return Optional.empty();
      }
      Mesh mesh = Mesh.of(now.xyz(), corners, attempt.workers());
      boolean whole = pass > 0 || !fellTogether(now, mesh);
      if (pass == 0 && whole && corners.length <= MANY && isSound(mesh)) {
        return shown;
      }
      boolean[] moved = movedFacets(now, corners);
      int[] xyz = mesh.xyz();
      int[] inMesh = mesh.corners();
      Faults faults = Faults.firstOf(xyz, inMesh, moved, attempt.workers());
      if (faults.isNone()) {
        if (pass == 0 && whole) {
          return finished(mesh);
        } else if (isSound(mesh)) {
          return shown;
        }
        Optional<Rounded> parted = pass == PASSES ? Optional.empty() : parted(mesh);
        if (parted.isEmpty()) {
          return atRest(mesh);
        }
        now = parted.get();
      } else if (pass == PASSES || corners.length > GROWTH * given.corners().length + ROOM) {
        checkTouch();
        throw new UnsettledException(Place.of(xyz, faults.vertex()));
      } else {
        now = attempt.remedy() == Attempt.Remedy.THIN ? thinned(mesh, moved, pass) : mended(mesh, moved, pass);
      }
    }
  }

  /** A mesh to which nothing more is done: one that rounding has made touch itself is to be rounded otherwise. */
  private Optional<Mesh> atRest(Mesh mesh) {
    Optional<Mesh> left = isRounded(given) ? withoutSlivers(mesh) : Optional.empty();
    int touch = left.map(Settler::touch).orElse(-1);
    if (touch >= 0 && ExactTouch.find(given) < 0) {
      throw new UnsettledException(Place.of(left.get().xyz(), touch));
    }
    return finished(mesh);
  }

  /** A vertex at which a mesh touches itself, or -1. */
  private static int touch(Mesh mesh) {
    Faults faults = Faults.of(mesh);
    return faults.isNone() ? Fans.of(mesh.xyz(), mesh.corners()).touch() : faults.vertex();
  }

  private boolean isSound(Mesh mesh) {
    shown = finished(mesh);
    return shown.filter(isSound).isPresent();
  }

  /** The mesh as it is handed on. Nothing that was not rounded is thinner than the grid. */
  private Optional<Mesh> finished(Mesh mesh) {
    return (isRounded(given) ? withoutSlivers(mesh) : Optional.of(mesh)).map(attempt.frame()::out);
  }

  /** The mesh with its touches parted, or nudged where that does not do; nothing where there are none or they stay. */
  private Optional<Rounded> parted(Mesh mesh) {
    Faults faults = Faults.of(mesh);
    Optional<Rounded> parted = faults.isNone() || faults.areTouches() ? Parting.part(mesh, faults.touching())
        : Optional.empty();
    if (parted.isPresent() || !faults.isNone()) {
      checkTouch();
    }
    return parted.isPresent() || faults.isNone() ? parted
        : Optional.of(Nudger.of(mesh)).filter(Nudger::isMended).map(Nudger::facets);
  }

  private Rounded mended(Mesh mesh, boolean[] moved, int pass) {
    return pass < NUDGED ? resolved(mesh.xyz(), mesh.corners(), moved) : nudged(mesh, moved);
  }

  /** Without thin facets where some meet, and mended otherwise where that does not mend all. */
  private Rounded thinned(Mesh mesh, boolean[] moved, int pass) {
    checkTouch();
    ThinFacets thin = ThinFacets.of(mesh, moved);
    Rounded facets = thin.facets();
    return thin.isMended() ? facets
        : mended(Mesh.of(facets.xyz(), facets.corners()), movedFacets(facets, facets.corners()), pass);
  }

  /** Nudged, and resolved again where that does not mend all. */
  private Rounded nudged(Mesh mesh, boolean[] moved) {
    checkTouch();
    Nudger nudger = Nudger.of(mesh);
    Rounded facets = nudger.facets();
    if (nudger.isMended()) {
      return facets;
    }
    boolean[] nudged = movedFacets(facets, facets.corners());
    for (int f = 0; f < nudged.length; f++) {
      nudged[f] |= moved[f];
    }
    Mesh welded = Mesh.of(facets.xyz(), facets.corners());
    return resolved(welded.xyz(), welded.corners(), nudged);
  }

  /** Resolved again, without the facets that have no area. */
  private Rounded resolved(int[] xyz, int[] corners, boolean[] moved) {
    if (!isAny(moved.length, f -> !GridFacets.hasArea(xyz, corners, f))) {
      return Kernel.resolve(xyz, corners, moved, attempt.workers());
    }
    int[] kept = new int[corners.length];
    boolean[] keptMoved = new boolean[moved.length];
    int n = 0;
    for (int f = 0; f < moved.length; f++) {
      if (GridFacets.hasArea(xyz, corners, f)) {
        System.arraycopy(corners, 3 * f, kept, 3 * n, 3);
        keptMoved[n++] = moved[f];
      }
    }
    return Kernel.resolve(xyz, Arrays.copyOf(kept, 3 * n), Arrays.copyOf(keptMoved, n), attempt.workers());
  }

  /** Whether a corner of a facet was; where outlines cross but nothing is left, points were that no facet has. */
  private static boolean isRounded(Rounded facets) {
    for (int corner : facets.corners()) {
      if (facets.moved()[corner]) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Mesh> withoutSlivers(Mesh mesh) {
    int[] corners = Slivers.without(mesh);
    return corners.length == 0 ? Optional.empty() : corners.length == 3 * mesh.facetCount() ? Optional.of(mesh)
        : Optional.of(Mesh.of(mesh.xyz(), corners));
  }

  /** What touched before it was rounded is refused, not parted. */
  private void checkTouch() {
    int v = lookedForTouch ? -1 : ExactTouch.find(given);
    lookedForTouch = true;
    if (v >= 0) {
      throw TouchException.near(attempt.frame().out(Place.of(given.xyz(), v)));
    }
  }

  /** Whether different vertices came to lie in one place. */
  private static boolean fellTogether(Rounded facets, Mesh mesh) {
    boolean[] used = new boolean[facets.moved().length];
    int count = 0;
    for (int v : facets.corners()) {
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
    if (!isAny(c.length / 3, f -> isCollapsed(facets.xyz(), c, 3 * f))) {
      return c;
    }
    int[] kept = new int[c.length];
    int n = 0;
    for (int i = 0; i < c.length; i += 3) {
      if (!isCollapsed(facets.xyz(), c, i)) {
        System.arraycopy(c, i, kept, n, 3);
        n += 3;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  /** Whether any of some facets is such. */
  private boolean isAny(int facets, IntPredicate such) {
    AtomicBoolean any = new AtomicBoolean();
    attempt.workers().split(facets, AT_ONCE, (from, to) -> {
      for (int f = from; f < to && !any.get(); f++) {
        if (such.test(f)) {
          any.set(true);
        }
      }
    });
    return any.get();
  }

  private static boolean isCollapsed(int[] xyz, int[] corners, int i) {
    return same(xyz, corners[i], corners[i + 1]) || same(xyz, corners[i + 1], corners[i + 2])
        || same(xyz, corners[i + 2], corners[i]);
  }

  private static boolean same(int[] xyz, int v, int w) {
    return Arrays.equals(xyz, 3 * v, 3 * v + 3, xyz, 3 * w, 3 * w + 3);
  }
}
