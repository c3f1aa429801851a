package outrigger.shapes.mesh;

import java.util.Arrays;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.FacetContact;

/**
 * The facets of a soup that meet others only as facets of a sound mesh do, in common corners and edges: they stay whole, and
 * only the planes of the others need sheets.
 *
 * <p>From facet to facet across an edge that only those two have, the same holds on either side. So one look tells for all
 * that hang together whether they bound what is wound round, from which side, or not.
 */
final class Untouched {
  private static final int[][] WEIGHTS = {{1, 1, 1}, {1, 2, 3}, {5, 3, 1}, {2, 7, 11}, {13, 29, 17}, {97, 89, 83}};

  private final Faces faces;
  private final Contacts contacts;
  private int[] queue = new int[16];

  private Untouched(Faces faces, Contacts contacts) {
    this.faces = faces;
    this.contacts = contacts;
  }

  /**
   * Marks all facets of a soup that need a sheet, and links the others.
   *
   * @param boxes the boxes of the facets
   * @param moved of each facet whether it may meet others improperly; two that may not do not
   */
  static Untouched of(Faces faces, BoxTree tree, int[] boxes, int[] xyz, boolean[] moved, Contacts contacts) {
    Untouched untouched = new Untouched(faces, contacts);
    for (int f = 0; f < moved.length; f++) {
      if (moved[f]) {
        Interrupt.check();
        int facet = f;
        int b = 6 * f;
        tree.forEachOverlap(boxes[b], boxes[b + 1], boxes[b + 2], boxes[b + 3], boxes[b + 4], boxes[b + 5], g -> {
          if (g > facet || g < facet && !moved[g]) {
            untouched.meet(facet, g, xyz);
          }
        });
      }
    }
    untouched.link();
    untouched.spread();
    return untouched;
  }

  private void meet(int f, int g, int[] xyz) {
    int[] a = faces.face(f).from;
    int[] b = faces.face(g).from;
    if (FacetContact.improper(xyz, a[0], a[1], a[2], b[0], b[1], b[2])) {
      contacts.mark(f);
      contacts.mark(g);
    }
  }

  /** Links facets over edges that two have; those at any other edge are touched. */
  private void link() {
    HalfEdges halfEdges = faces.halfEdges();
    int[] twin = halfEdges.twins(0, 0, faces.vertexCount());
    for (int h = 0; h < twin.length; h++) {
      if (twin[h] < 0) {
        contacts.mark(halfEdges.face(h));
      } else {
        halfEdges.setTwin(h, twin[h]);
      }
    }
  }

  /** A sheet is for all of its plane. */
  private void spread() {
    boolean[] plane = new boolean[faces.planeCount()];
    for (int f = 0; f < faces.faceCount(); f++) {
      plane[faces.face(f).plane] |= contacts.needsSheet(f);
    }
    for (int f = 0; f < faces.faceCount(); f++) {
      if (plane[faces.face(f).plane]) {
        contacts.mark(f);
      }
    }
  }

  /** Adds what the untouched facets bound. */
  void outline(Locator locator, Outline outline) {
    boolean[] seen = new boolean[faces.faceCount()];
    CornerNumbers numbers = new CornerNumbers(faces, outline);
    for (int f = 0; f < seen.length; f++) {
      if (!seen[f] && !contacts.needsSheet(f)) {
        Interrupt.check();
        int way = way(f, locator);
        int size = gather(f, seen);
        for (int i = 0; i < size && way != 0; i++) {
          add(queue[i], way, numbers, outline);
        }
      }
    }
  }

  /** Whether a facet bounds what is wound round as it is (1), turned over (-1) or not at all (0). */
  private int way(int f, Locator locator) {
    for (int[] weight : WEIGHTS) {
      try {
        return way(f, weight, locator);
      } catch (Locator.OnFace chance) {
        // another facet touches this one there: the next weights give another point
      }
    }
    throw new IllegalStateException("every point tried on a facet lies on another");
  }

  private int way(int f, int[] weight, Locator locator) {
    Face face = faces.face(f);
    int[] sides = new int[2];
    locator.look(ExactPoint.mean(faces.point(face.from[0]), weight[0], faces.point(face.from[1]), weight[1],
        faces.point(face.from[2]), weight[2]), face.plane).replay((operand, above, below) -> {
          sides[0] += above;
          sides[1] += below;
        }, 1);
    boolean outside = sides[face.up ? 0 : 1] > 0;
    boolean inside = sides[face.up ? 1 : 0] > 0;
    return inside == outside ? 0 : inside ? 1 : -1;
  }

  /** Puts all untouched facets that hang together with one into the queue; returns how many. */
  private int gather(int first, boolean[] seen) {
    HalfEdges halfEdges = faces.halfEdges();
    int size = 0;
    queue[size++] = first;
    seen[first] = true;
    for (int i = 0; i < size; i++) {
      int h = faces.face(queue[i]).first;
      for (int e = h; e < h + 3; e++) {
        int g = halfEdges.face(halfEdges.twin(e));
        if (!seen[g] && !contacts.needsSheet(g)) {
          seen[g] = true;
          if (size == queue.length) {
            queue = Arrays.copyOf(queue, 2 * size);
          }
          queue[size++] = g;
        }
      }
    }
    return size;
  }

  private void add(int f, int way, CornerNumbers numbers, Outline outline) {
    Face face = faces.face(f);
    for (int e = 0; e < 3; e++) {
      if (faces.face(faces.halfEdges().face(faces.halfEdges().twin(face.first + e))).plane != face.plane) {
        int a = numbers.of(face.from[e]);
        int b = numbers.of(face.to[e]);
        outline.add(Outline.group(face.plane, face.up == way > 0), way > 0 ? a : b, way > 0 ? b : a);
      }
    }
  }
}
