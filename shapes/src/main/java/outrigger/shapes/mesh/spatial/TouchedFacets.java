package outrigger.shapes.mesh.spatial;

import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.HalfEdges;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Shares;
import outrigger.shapes.num.Workers;

/**
 * Marks the facets of a soup that need sheets: those that meet others otherwise than in common corners and edges, those at
 * an edge that not just two facets have, and all that lie in one plane with any of these ({@link Coplanar}).
 */
final class TouchedFacets {
  /** Half-edges that are worth a thread. */
  private static final int AT_ONCE = 1 << 15;

  private final Faces faces;
  private final int[] xyz;
  private final Contacts contacts;

  /**
   * For a soup.
   *
   * @param xyz x, y, z of each vertex in grid units
   * @param contacts where they are marked
   */
  TouchedFacets(Faces faces, int[] xyz, Contacts contacts) {
    this.faces = faces;
    this.xyz = xyz;
    this.contacts = contacts;
  }

  /**
   * Marks them all, and links facets over edges that just two have.
   *
   * @param boxes the boxes of the facets
   * @param mayMeet of each facet whether it may meet others improperly; two that may not do not
   */
  void mark(BoxTree tree, int[] boxes, boolean[] mayMeet, Workers workers) {
    Shares.of(workers, mayMeet.length, f -> mayMeet[f] ? 1 : 0).each(() -> (from, to) -> {
      meetAll(tree, boxes, mayMeet, from, to);
      return to;
    });
    link(workers);
    new Coplanar(faces, xyz).spread(contacts, workers);
  }

  /** Compares those from one up to another that may meet others with all that are near. */
  private void meetAll(BoxTree tree, int[] boxes, boolean[] mayMeet, int from, int to) {
    for (int f = from; f < to; f++) {
      if (mayMeet[f]) {
        Interrupt.check();
        int facet = f;
        tree.forEachOverlap(boxes, f, g -> {
          if (g > facet || g < facet && !mayMeet[g]) {
            meet(facet, g);
          }
        });
      }
    }
  }

  private void meet(int f, int g) {
    HalfEdges h = faces.halfEdges();
    if (FacetContact.improper(xyz, h.from(3 * f), h.from(3 * f + 1), h.from(3 * f + 2), h.from(3 * g), h.from(3 * g + 1),
        h.from(3 * g + 2))) {
      contacts.mark(f);
      contacts.mark(g);
    }
  }

  /** Links facets over edges that two have; those at any other edge are touched. */
  private void link(Workers workers) {
    HalfEdges halfEdges = faces.halfEdges();
    int[] twin = halfEdges.twins(0, halfEdges.size(), 0, faces.vertexCount(), workers);
    workers.split(twin.length, AT_ONCE, (from, to) -> {
      for (int h = from; h < to; h++) {
        if (twin[h] < 0) {
          contacts.mark(halfEdges.face(h));
        } else {
          halfEdges.setTwin(h, twin[h]);
        }
      }
    });
  }
}
