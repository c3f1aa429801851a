package outrigger.shapes.mesh.meet;

import java.util.List;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.HalfEdges;
import outrigger.shapes.num.IntList;

/**
 * Which faces need a sheet because others touch them, and where one may step across an edge from face to face.
 *
 * <p>A face keeps clear of a contact that only reaches its rim: just inside the rim nothing changes. But along an edge
 * that lies in another face, the two sides of the edge need not see the same; such an edge is <i>blocked</i>.
 *
 * <p>Several threads may note contacts: what is noted is never taken back.
 */
public final class Contacts {
  private final Faces faces;
  /** Of each face whether it needs a sheet. */
  private final boolean[] marked;
  /** Of each half-edge whether it may lie in a face of another operand. */
  private final boolean[] blocked;
  /** Of each corner whether it lies in the plane of a face that its own face is in contact with. */
  private final boolean[] touched;
  private boolean anyBlocked;

  /** Of faces of which nothing is noted yet. */
  public Contacts(Faces faces) {
    this.faces = faces;
    marked = new boolean[faces.faceCount()];
    blocked = new boolean[faces.halfEdges().size()];
    touched = new boolean[faces.vertexCount()];
  }

  /** Whether a face needs a sheet. */
  public boolean needsSheet(int face) {
    return marked[face];
  }

  /** Whether the sheet of a face is to tell what a stretch on it bounds: else walking along it does. */
  public boolean needsSheet(int face, Stretch stretch) {
    return marked[face] && !stretch.isFree(face);
  }

  /** The faces that need a sheet, by their planes; null where a plane has none. */
  List<List<Integer>> onPlanes() {
    List<List<Integer>> onPlane = Lists.none(faces.planeCount());
    for (int f = 0; f < marked.length; f++) {
      if (marked[f]) {
        Lists.add(f, faces.planeOf(f), onPlane);
      }
    }
    return onPlane;
  }

  /** Whether the two sides of an edge may see different things. */
  public boolean isBlocked(int halfEdge) {
    return blocked[halfEdge];
  }

  /** Whether a corner may lie in a face of another operand. */
  public boolean isTouched(int vertex) {
    return touched[vertex];
  }

  /** A face needs a sheet. */
  public void mark(int face) {
    marked[face] = true;
  }

  /**
   * Two faces are in contact.
   *
   * @param intoF whether the contact reaches inside the first
   * @param intoG whether it reaches inside the second
   */
  void meet(int f, int g, boolean intoF, boolean intoG) {
    if (intoF) {
      mark(f);
    }
    if (intoG) {
      mark(g);
    }
    touch(faces.face(f), faces.plane(faces.face(g).plane));
    touch(faces.face(g), faces.plane(faces.face(f).plane));
  }

  private void touch(Face face, Plane plane) {
    for (int e = 0; e < face.edges(); e++) {
      if (faces.side(face.from[e], plane) == 0) {
        touched[face.from[e]] = true;
        if (faces.side(face.to[e], plane) == 0) {
          int h = face.first + e;
          anyBlocked = true;
          blocked[h] = true;
          blocked[faces.halfEdges().twin(h)] = true;
        }
      }
    }
  }

  /**
   * Gives a sheet also to the faces at a blocked edge across which their operand goes on flat, to faces with a rim that is
   * blocked all round, and to all that go on flat from one with a sheet.
   */
  void spread() {
    if (anyBlocked) {
      spreadFromBlocked();
    }
    spreadFlat();
  }

  private void spreadFromBlocked() {
    HalfEdges halfEdges = faces.halfEdges();
    for (int h = 0; h < blocked.length; h++) {
      if (blocked[h] && isFlat(h)) {
        marked[halfEdges.face(h)] = true;
      }
    }
    boolean[] open = new boolean[halfEdges.loopCount()];
    for (int h = 0; h < blocked.length; h++) {
      open[halfEdges.loop(h)] |= !blocked[h];
    }
    for (int h = 0; h < blocked.length; h++) {
      marked[halfEdges.face(h)] |= !open[halfEdges.loop(h)];
    }
  }

  /** Whether the neighbour across an edge lies in the same plane. */
  public boolean isFlat(int h) {
    HalfEdges halfEdges = faces.halfEdges();
    return faces.planeOf(halfEdges.face(h)) == faces.planeOf(halfEdges.face(halfEdges.twin(h)));
  }

  /** Gives a sheet to every face whose operand goes on flat from it into one that has. */
  void spreadFlat() {
    IntList queue = new IntList();
    for (int f = 0; f < marked.length; f++) {
      if (marked[f]) {
        queue.add(f);
      }
    }
    for (int head = 0; head < queue.size(); head++) {
      Face face = faces.face(queue.get(head));
      for (int g : face.across) {
        if (!marked[g] && faces.face(g).plane == face.plane) {
          marked[g] = true;
          queue.add(g);
        }
      }
    }
  }
}
