package outrigger.shapes.check;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.exact.Total;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.DisjointSets;

/**
 * Shells of a surface: facets joined over edges. Numbered in the order of their first facet.
 *
 * <p>A shell's sign is that of its exact volume. How deep it lies in the others is their winding number at one of its
 * vertices, by an upward ray; where the ray meets an edge or corner it passes as if moved by an infinitesimal to
 * greater x and a yet smaller one to greater y, so every edge is on one definite side of it.
 */
final class Shells {
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 14;

  private final Surface surface;
  private final int[] shellOf;
  private final int[] firstFacet;
  private final Total[] sixVolumes;

  private Shells(Surface surface, int[] shellOf, int[] firstFacet) {
    this.surface = surface;
    this.shellOf = shellOf;
    this.firstFacet = firstFacet;
    sixVolumes = new Total[firstFacet.length];
    for (int i = 0; i < sixVolumes.length; i++) {
      sixVolumes[i] = new Total();
    }
  }

  /** Shells from sets of facets. */
  static Shells of(Surface surface, DisjointSets sets) {
    return of(surface, sets, surface.facets(), f -> f, f -> f);
  }

  /** Shells from sets of regions, which are numbered in the order of their first facets. */
  static Shells of(Surface surface, Regions regions, DisjointSets sets) {
    return of(surface, sets, regions.count(), regions::of, r -> regions.facet(regions.start(r)));
  }

  /**
   * Shells from sets of pieces.
   *
   * @param piece of each facet the piece it is in
   * @param first of each piece the first facet
   */
  private static Shells of(Surface surface, DisjointSets sets, int pieces, IntUnaryOperator piece, IntUnaryOperator first) {
    int[] shellOfPiece = new int[pieces];
    int[] firstFacet = new int[pieces];
    int count = 0;
    for (int p = 0; p < pieces; p++) {
      int root = sets.find(p);
      if (root == p) {
        firstFacet[count] = first.applyAsInt(p);
        shellOfPiece[p] = count++;
      } else {
        shellOfPiece[p] = shellOfPiece[root];
      }
    }
    int[] shellOf = new int[surface.facets()];
    surface.workers().split(shellOf.length, AT_ONCE, (from, to) -> {
      for (int f = from; f < to; f++) {
        shellOf[f] = shellOfPiece[piece.applyAsInt(f)];
      }
    });
    Shells shells = new Shells(surface, shellOf, Arrays.copyOf(firstFacet, count));
    shells.weigh();
    return shells;
  }

  private void weigh() {
    for (int f = 0; f < shellOf.length; f++) {
      surface.addSixVolume(f, sixVolumes[shellOf[f]]);
    }
  }

  int count() {
    return firstFacet.length;
  }

  /** Shells of positive volume. */
  int outerCount() {
    int n = 0;
    for (Total t : sixVolumes) {
      n += t.signum() > 0 ? 1 : 0;
    }
    return n;
  }

  /** Six times the volume of all shells, grid units cubed. */
  Total sixVolume() {
    Total sum = new Total();
    for (Total t : sixVolumes) {
      sum.add(t);
    }
    return sum;
  }

  /** Holds each shell to its sign and depth. Only for a surface otherwise without fault. */
  void judge(Findings findings) {
    BoxTree tree = count() == 1 ? BoxTree.of(new int[0]) : BoxTree.ofFacets(surface.xyz(), surface.corners());
    for (int i = 0; i < firstFacet.length; i++) {
      int depth = count() == 1 ? 0 : windingOfOthers(tree, i);
      int v = surface.corner(firstFacet[i], 0);
      boolean outer = sixVolumes[i].signum() > 0;
      if (outer && depth != 0) {
        findings.addAt(Rule.NESTED, surface, v, () -> "the closed surface through " + surface.words(v)
            + " mm faces outward but lies " + inWhat(depth));
      } else if (!outer && depth == 0) {
        findings.addAt(Rule.INSIDE_OUT, surface, v, () -> "the closed surface through " + surface.words(v)
            + " mm is inside out: it faces inward, yet there is no solid round it that it could hollow out");
      } else if (!outer && depth != 1) {
        findings.addAt(Rule.NESTED, surface, v, () -> "the closed surface through " + surface.words(v)
            + " mm faces inward like a void but lies " + inWhat(depth));
      }
    }
  }

  private static String inWhat(int depth) {
    return depth > 0 ? "within " + depth + (depth == 1 ? " other solid" : " other solids at once")
        : "within a void or an inside-out surface that nothing solid surrounds";
  }

  private int windingOfOthers(BoxTree tree, int shell) {
    int v = surface.corner(firstFacet[shell], 0);
    int[] winding = new int[1];
    tree.forEachAlong(Axis.Z, surface.x(v), surface.y(v), surface.z(v), true, f -> {
      if (shellOf[f] != shell) {
        winding[0] += crossing(f, v);
      }
    });
    return winding[0];
  }

  /** What a facet above v adds to the winding number at v: 1 if the upward ray leaves through it, -1 if it enters. */
  private int crossing(int f, int v) {
    int up = Long.signum(surface.normal(f, 2));
    if (up == 0) {
      return 0;
    }
    int a = surface.corner(f, 0);
    int b = surface.corner(f, 1);
    int c = surface.corner(f, 2);
    if (turn(a, b, v) != up || turn(b, c, v) != up || turn(c, a, v) != up) {
      return 0;
    }
    int side = Sign.dot(surface.normal(f, 0), surface.normal(f, 1), surface.normal(f, 2), surface.x(v) - surface.x(a),
        surface.y(v) - surface.y(a), surface.z(v) - surface.z(a));
    return side == -up ? up : 0;
  }

  /** Turn of a, b and the moved v, seen from above; never 0 for an edge that is not upright. */
  private int turn(int a, int b, int v) {
    int t = Sign.turn(surface.x(a), surface.y(a), surface.x(b), surface.y(b), surface.x(v), surface.y(v));
    if (t != 0) {
      return t;
    }
    int dy = Integer.compare(surface.y(a), surface.y(b));
    return dy != 0 ? dy : Integer.compare(surface.x(b), surface.x(a));
  }
}
