package outrigger.shapes.mesh.spatial;

import java.util.Arrays;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.face.HalfEdges;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.inside.InnerLook;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.mesh.outline.CornerNumbers;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.num.Interrupt;

/**
 * The facets of a soup that meet others only as facets of a sound mesh do, in common corners and edges: they stay as they
 * are or go whole, and only the planes of the others need sheets. Where few are touched, as where a few corners out of many
 * were rounded, the rest costs next to nothing.
 *
 * <p>Where parts touched before they were rounded, a corner may lie on an edge between one that is touched and one that is
 * not. So the neighbours of those that are touched are outlined with them, and their edges may be split; only what lies
 * beyond them stays as it is.
 *
 * <p>From facet to facet across an edge that only those two have, the same holds on either side. So one look tells for all
 * that hang together whether they bound what is wound round, from which side, or not. Where one that stays as it is has
 * a neighbour that is outlined, its edge is pinned there.
 */
final class Untouched {
  private final Faces faces;
  private final Contacts contacts;
  /** Of each facet whether it is untouched and has a neighbour that is not. */
  private final boolean[] beside;
  /** Facets that hang together, as {@link #gather} found them last. */
  private int[] queue = new int[16];
  /** Corners of the facets that stay, and how many. */
  private final int[] kept;
  private int keptCount;

  /** The facets of a soup that {@link TouchedFacets} left unmarked. */
  Untouched(Faces faces, Contacts contacts) {
    this.faces = faces;
    this.contacts = contacts;
    beside = new boolean[faces.faceCount()];
    kept = new int[3 * faces.faceCount()];
    markBeside();
  }

  /** Finds the untouched facets with a touched neighbour, and has their planes numbered. */
  private void markBeside() {
    HalfEdges halfEdges = faces.halfEdges();
    for (int f = 0; f < beside.length; f++) {
      for (int h = 3 * f; contacts.needsSheet(f) && h < 3 * f + 3; h++) {
        if (halfEdges.twin(h) >= 0) {
          int next = halfEdges.face(halfEdges.twin(h));
          beside[next] = !contacts.needsSheet(next);
        }
      }
    }
    for (int f = 0; f < beside.length; f++) {
      if (beside[f]) {
        // making it numbers its plane
        faces.face(f);
      }
    }
  }

  /**
   * Keeps those that bound what is wound round: those beside touched ones in the outline, all others as they are and in the
   * order they have, with their edges to the former pinned in the outline.
   *
   * @param numbers of corners in the outline
   */
  void keep(Locator locator, Outline outline, CornerNumbers numbers) {
    int[] ways = ways(locator);
    for (int f = 0; f < ways.length; f++) {
      if (ways[f] != 0 && beside[f]) {
        outlineFacet(f, ways[f] > 0, outline, numbers);
      } else if (ways[f] != 0) {
        keepFacet(3 * f, ways[f] > 0, outline, numbers);
      }
    }
  }

  /** Of each facet how it stays, as {@link #way} has it; 0 for those that need a sheet. */
  private int[] ways(Locator locator) {
    int[] ways = new int[faces.faceCount()];
    boolean[] seen = new boolean[ways.length];
    for (int f = 0; f < ways.length; f++) {
      seen[f] = contacts.needsSheet(f);
    }
    for (int f = 0; f < ways.length; f++) {
      if (!seen[f]) {
        Interrupt.check();
        int way = way(f, locator);
        int size = gather(f, seen);
        for (int i = 0; i < size; i++) {
          ways[queue[i]] = way;
        }
      }
    }
    return ways;
  }

  /** Whether a facet bounds what is wound round as it is (1), turned over (-1) or not at all (0). */
  private int way(int f, Locator locator) {
    Face face = faces.face(f);
    int[] sides = new int[2];
    InnerLook.of(locator, faces.point(face.from[0]), faces.point(face.from[1]), faces.point(face.from[2]), face.plane,
        q -> false).replay((operand, above, below) -> {
          sides[0] += above;
          sides[1] += below;
        }, 1);
    boolean outside = sides[face.up ? 0 : 1] > 0;
    boolean inside = sides[face.up ? 1 : 0] > 0;
    return inside == outside ? 0 : inside ? 1 : -1;
  }

  /** Puts all facets not seen that hang together with one into the queue; returns how many. */
  private int gather(int first, boolean[] seen) {
    HalfEdges halfEdges = faces.halfEdges();
    int size = 0;
    queue[size++] = first;
    seen[first] = true;
    for (int i = 0; i < size; i++) {
      int h = 3 * queue[i];
      for (int e = h; e < h + 3; e++) {
        int g = halfEdges.twin(e) / 3;
        if (!seen[g]) {
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

  /** Adds the edges of a facet to the outline, but for those to others that are outlined like it and lie in its plane. */
  private void outlineFacet(int f, boolean asItIs, Outline outline, CornerNumbers numbers) {
    HalfEdges halfEdges = faces.halfEdges();
    Face face = faces.face(f);
    for (int h = face.first; h < face.first + 3; h++) {
      int next = halfEdges.face(halfEdges.twin(h));
      if (!beside[next] || faces.face(next).plane != face.plane) {
        int from = numbers.of(halfEdges.from(h));
        int to = numbers.of(halfEdges.to(h));
        outline.add(Group.of(face.plane, face.up == asItIs), asItIs ? from : to, asItIs ? to : from);
      }
    }
  }

  /** Keeps the facet with a half-edge, and pins its edges to facets that are outlined. */
  private void keepFacet(int first, boolean asItIs, Outline outline, CornerNumbers numbers) {
    HalfEdges halfEdges = faces.halfEdges();
    for (int h = first; h < first + 3; h++) {
      kept[keptCount++] = halfEdges.from(asItIs ? h : 2 * first + 2 - h);
      if (beside[halfEdges.face(halfEdges.twin(h))]) {
        int from = numbers.of(halfEdges.from(h));
        int to = numbers.of(halfEdges.to(h));
        outline.pin(asItIs ? from : to, asItIs ? to : from);
      }
    }
  }

  /**
   * The facets that stay, with the soup's vertices, and after them those that were made of the others.
   *
   * @param numbers of corners in the outline of the others
   */
  Rounded join(Rounded others, int[] xyz, CornerNumbers numbers) {
    int vertices = xyz.length / 3;
    int[] vertexOf = new int[others.moved().length];
    Arrays.setAll(vertexOf, v -> vertices + v);
    for (int v = 0; v < vertices; v++) {
      if (numbers.known(v) >= 0) {
        vertexOf[numbers.known(v)] = v;
      }
    }
    int[] corners = Arrays.copyOf(kept, keptCount + others.corners().length);
    for (int i = keptCount; i < corners.length; i++) {
      corners[i] = vertexOf[others.corners()[i - keptCount]];
    }
    int[] places = Arrays.copyOf(xyz, xyz.length + others.xyz().length);
    System.arraycopy(others.xyz(), 0, places, xyz.length, others.xyz().length);
    boolean[] moved = new boolean[vertices + others.moved().length];
    System.arraycopy(others.moved(), 0, moved, vertices, others.moved().length);
    return new Rounded(places, corners, moved);
  }
}
