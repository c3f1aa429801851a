package outrigger.shapes.check;

import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.exact.Sign;

/** Finds facets that meet other than in a common corner or edge. Facets without area are left out. */
final class Contacts {
  /** The search ends after so many: a mesh crossing itself everywhere would have the square of its facets. */
  static final int ENOUGH = 100_000;

  private final Surface surface;
  private final Findings findings;
  private int met;

  private Contacts(Surface surface, Findings findings) {
    this.surface = surface;
    this.findings = findings;
  }

  static void find(Surface surface, BoxTree tree, Findings findings) {
    Contacts contacts = new Contacts(surface, findings);
    boolean[] flat = new boolean[surface.facets()];
    for (int f = 0; f < flat.length; f++) {
      flat[f] = !surface.hasArea(f);
    }
    if (!tree.selfPairs((f, g) -> flat[f] || flat[g] || contacts.visit(f, g))) {
      findings.skip("facets that meet, beyond the first " + ENOUGH + ": the search ended there");
    }
  }

  private boolean visit(int f, int g) {
    if (!FacetContact.improper(surface.xyz(), surface.corners(), f, g)) {
      return true;
    }
    if (!sameCorners(f, g)) {
      findings.add(Rule.CONTACT, middle(f, g, 0), middle(f, g, 1), middle(f, g, 2),
          () -> "facet " + (f + 1) + " " + surface.facetWords(f) + " mm and facet " + (g + 1) + " "
              + surface.facetWords(g) + " mm " + how(f, g));
    }
    return ++met < ENOUGH;
  }

  /** Such a pair is found as a duplicate already. */
  private boolean sameCorners(int f, int g) {
    return isCorner(surface.corner(f, 0), g) && isCorner(surface.corner(f, 1), g) && isCorner(surface.corner(f, 2), g);
  }

  private boolean isCorner(int v, int g) {
    return v == surface.corner(g, 0) || v == surface.corner(g, 1) || v == surface.corner(g, 2);
  }

  private String how(int f, int g) {
    int s0 = surface.side(f, surface.corner(g, 0));
    int s1 = surface.side(f, surface.corner(g, 1));
    int s2 = surface.side(f, surface.corner(g, 2));
    if (s0 == 0 && s1 == 0 && s2 == 0) {
      return "lie in one plane and overlap or touch";
    }
    int t0 = surface.side(g, surface.corner(f, 0));
    int t1 = surface.side(g, surface.corner(f, 1));
    int t2 = surface.side(g, surface.corner(f, 2));
    return straddles(s0, s1, s2) && straddles(t0, t1, t2) && !isEdgeOnEdge(f, g) ? "cross each other"
        : "touch where they share no corner or edge";
  }

  /** Whether a plane through an edge of either leaves the facets on two sides: of two that meet, the edges then cross. */
  private boolean isEdgeOnEdge(int f, int g) {
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        int a = surface.corner(f, i);
        int b = surface.corner(f, (i + 1) % 3);
        int c = surface.corner(g, j);
        if (side(a, b, c, surface.corner(g, (j + 1) % 3)) == 0
            && side(a, b, c, surface.corner(f, (i + 2) % 3)) * side(a, b, c, surface.corner(g, (j + 2) % 3)) < 0) {
          return true;
        }
      }
    }
    return false;
  }

  private int side(int a, int b, int c, int v) {
    return Sign.side(surface.xyz(), a, b, c, v);
  }

  private static boolean straddles(int s, int t, int u) {
    return Math.min(s, Math.min(t, u)) < 0 && Math.max(s, Math.max(t, u)) > 0;
  }

  /** Middle of what the two facets' boxes have in common: a place near the contact. */
  private double middle(int f, int g, int axis) {
    return (Math.max(extreme(f, axis, -1), extreme(g, axis, -1))
        + Math.min(extreme(f, axis, 1), extreme(g, axis, 1))) / 2.0;
  }

  /** Greatest coordinate of a facet, or the least if {@code sign} is -1. */
  private int extreme(int f, int axis, int sign) {
    int[] p = surface.xyz();
    return sign * Math.max(sign * p[3 * surface.corner(f, 0) + axis],
        Math.max(sign * p[3 * surface.corner(f, 1) + axis], sign * p[3 * surface.corner(f, 2) + axis]));
  }
}
