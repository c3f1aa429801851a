package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.function.IntConsumer;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.frame.TouchException;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Place;

/**
 * Puts corners clear of one another before they are rounded, where rounding them as they are makes facets meet.
 *
 * <p>Before rounding no facet meets another. Facets can come to meet only when a vertex comes to a facet or an edge to an
 * edge, and rounding brings two points nearer by the root of three at most. So corners of facets that meet are moved ({@link
 * Relaxation}) until all such pairs about them are apart by more, or until rounding no longer makes them meet. Facets stay
 * as many and joined as they were: walls and gaps thinner than the grid become as thick as it can tell.
 *
 * <p>Nothing depends on the order of facets: pairs are told in an order of their corners.
 */
final class Spreading {
  /** Pairs nearer than this touch, grid steps: places are known to a thousandth of it. */
  private static final double TOUCH = 0x1p-190;
  /** Steps before pairs are looked for anew and it is tried whether rounding does now. */
  private static final int STEPS = 5;
  /** Pairs that are looked at: in that many steps no others come so near that they count. */
  private static final int REACH = (int) Math.ceil(Relaxation.APART + 2 * STEPS * Relaxation.STRIDE);
  /** The farthest a corner goes along each axis, grid steps: a micrometre. Most of those seen went 2, the farthest 15. */
  private static final int ROAM = 16;
  /** How often, before giving up: most of those seen needed 8 at most, the slowest a hundred. */
  private static final int ROUNDS = 200;

  private final Rounded given;
  private final Frame frame;
  private final int[] corners;
  private final BoxTree tree;
  private final FacetsAt facets;
  /** Places on the grid. */
  private final int[] grid;
  /** Facets that are asked whether they meet others: they have a corner that moved. */
  private final boolean[] asked;
  private final Places places;
  private final Relaxation relaxation;

  private Spreading(Rounded given, Frame frame) {
    this.given = given;
    this.frame = frame;
    corners = given.corners();
    grid = given.xyz().clone();
    facets = new FacetsAt(given.moved().length, corners);
    tree = BoxTree.of(roamed(BoxTree.boxesOfFacets(grid, corners)));
    asked = new boolean[corners.length / 3];
    places = new Places(given);
    relaxation = new Relaxation(places, given.moved().length);
  }

  private static int[] roamed(int[] boxes) {
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] += i % 6 < 3 ? -ROAM : ROAM;
    }
    return boxes;
  }

  /**
   * Where the vertices of facets are put, so that none meet: x, y, z of each, grid units.
   *
   * @param frame the axes that they are in
   * @throws UnsettledException if corners would go too far or too often
   * @throws TouchException if some touched before they were rounded
   */
  static int[] of(Rounded given, Frame frame) {
    return new Spreading(given, frame).spread();
  }

  private int[] spread() {
    for (int f = 0; f < asked.length; f++) {
      asked[f] = given.moved()[corners[3 * f]] || given.moved()[corners[3 * f + 1]] || given.moved()[corners[3 * f + 2]];
    }
    for (int round = 0; freeFaulty(); round++) {
      if (round == ROUNDS || !isWithin()) {
        throw new UnsettledException(frame.out(Place.of(grid, relaxation.freed().get(0))));
      }
      NearPairs pairs = pairs();
      pairs.measure();
      pairs.forEach(this::checkTouch);
      for (int i = 0; i < STEPS; i++) {
        relaxation.step(pairs);
      }
      pairs.measure();
      pairs.forEach(this::freeClose);
      round();
    }
    return grid;
  }

  /** Frees the corners of facets that meet and are asked, or meet one that is; false where there are none. */
  private boolean freeFaulty() {
    boolean[] any = {false};
    for (int f = 0; f < asked.length; f++) {
      if (asked[f]) {
        Interrupt.check();
        int facet = f;
        tree.forEachOverlap(GridFacets.box(grid, corners, facet, 0), 0, g -> {
          if ((g >= facet || !asked[g]) && isFault(facet, g)) {
            any[0] = true;
            forEachCorner(facet, relaxation::free);
            forEachCorner(g, relaxation::free);
          }
        });
      }
    }
    Arrays.fill(asked, false);
    for (int v : relaxation.freed().toArray()) {
      facets.forEach(v, f -> asked[f] = true);
    }
    return any[0];
  }

  private boolean isFault(int f, int g) {
    if (f == g) {
      return !GridFacets.hasArea(grid, corners, f);
    }
    return isOneTwice(f, g) || GridFacets.areImproper(grid, corners, f, g);
  }

  /** Whether different corners of two facets lie in one place. */
  private boolean isOneTwice(int f, int g) {
    for (int c = 3 * f; c < 3 * f + 3; c++) {
      for (int d = 3 * g; d < 3 * g + 3; d++) {
        int v = corners[c];
        int w = corners[d];
        if (v != w && Arrays.equals(grid, 3 * v, 3 * v + 3, grid, 3 * w, 3 * w + 3)) {
          return true;
        }
      }
    }
    return false;
  }

  private void forEachCorner(int f, IntConsumer told) {
    for (int c = 3 * f; c < 3 * f + 3; c++) {
      told.accept(corners[c]);
    }
  }

  /** Whether no corner has gone too far. */
  private boolean isWithin() {
    for (int v : relaxation.freed().toArray()) {
      for (int k = 3 * v; k < 3 * v + 3; k++) {
        if (Math.abs(grid[k] - given.xyz()[k]) > ROAM) {
          return false;
        }
      }
    }
    return true;
  }

  private NearPairs pairs() {
    NearPairs pairs = new NearPairs(corners, places, REACH, relaxation::isFree, facets::least);
    for (int f = 0; f < asked.length; f++) {
      if (asked[f]) {
        Interrupt.check();
        int facet = f;
        forEachCorner(facet, places::know);
        tree.forEachOverlap(GridFacets.box(grid, corners, facet, REACH), 0, g -> {
          if (g > facet || g < facet && !asked[g]) {
            forEachCorner(g, places::know);
            pairs.add(facet, g);
          }
        });
      }
    }
    return pairs;
  }

  /** Moved corners keep at least a part of every gap: where there is none, there was none. */
  private void checkTouch(Approach pair) {
    if (pair.distance < TOUCH) {
      throw TouchException.near(frame.out(Place.of(grid, pair.corner[0])));
    }
  }

  private void freeClose(Approach pair) {
    if (pair.distance < Relaxation.APART) {
      for (int v : pair.corner) {
        relaxation.free(v);
      }
    }
  }

  private void round() {
    for (int v : relaxation.freed().toArray()) {
      for (int k = 0; k < 3; k++) {
        grid[3 * v + k] = places.rounded(v, k);
      }
    }
  }
}
