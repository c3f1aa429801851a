package outrigger.shapes.mesh.wire;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.HalfEdges;
import outrigger.shapes.mesh.meet.Arranger;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.mesh.meet.Piercing;
import outrigger.shapes.mesh.meet.Stretch;
import outrigger.shapes.num.Interrupt;

/**
 * Outlines the faces that need no sheet, by walking along their rims and along the stretches in them.
 *
 * <p>The walk goes round each loop of a face just inside it and knows, from its {@link Surroundings}, which other operands
 * hold there; at every {@link Piercing} one of them begins or ends. From face to face it steps across edges that are not
 * blocked, so one look along a ray serves a whole shell. At piercings a {@link StretchWalker} follows the stretches. A piece
 * belongs to an outline where the expression, with the walker's own operand in it and out of it, says that the surface is
 * the result's on one side of the piece and not on the other.
 */
final class WireWalker {
  private final Faces faces;
  private final HalfEdges halfEdges;
  private final Contacts contacts;
  private final Surroundings place;
  private final StretchWalker stretches;
  private final Piercing[][] onEdge;
  private final boolean[] seen;
  /** Where the walk is noted. */
  private WireOutline outline;
  /** Of the loops that are being walked along, {@code depth} of them, the first half-edge and the next one to pass. */
  private int[] start = new int[64];
  private int[] at = new int[64];
  private int depth;
  /** The operand whose shell is walked. */
  private int own;

  /**
   * A walker for one thread.
   *
   * @param place the thread's own
   * @param onEdge of each edge, by the lower of its half-edges, the piercings along that one; null where there are none
   * @param seen of each loop whether it was walked along; loops of one operand are walked by one walker at a time
   */
  WireWalker(Faces faces, Arranger arranger, Surroundings place, Piercing[][] onEdge, boolean[] seen) {
    this.faces = faces;
    contacts = arranger.contacts();
    this.onEdge = onEdge;
    this.seen = seen;
    halfEdges = faces.halfEdges();
    this.place = place;
    stretches = new StretchWalker(faces, contacts, place, arranger.stretches().size());
  }

  /**
   * Walks what can be reached of an operand from corners that nothing touches, or from edges that are not blocked.
   *
   * @return the notes given, with what was found added
   */
  WireNotes walk(int operand, boolean fromCorners, WireNotes notes) {
    own = operand;
    outline = new WireOutline(faces, contacts, notes);
    int end = faces.firstEdge(operand + 1);
    for (int h = faces.firstEdge(operand); h < end; h++) {
      if (!seen[halfEdges.loop(h)] && !contacts.needsSheet(halfEdges.face(h))
          && (fromCorners ? !contacts.isTouched(faces.from(h)) : !contacts.isBlocked(h))) {
        Interrupt.check();
        walkFrom(h, fromCorners ? faces.point(faces.from(h)) : null);
      }
    }
    return notes;
  }

  /** Walks the shell that a half-edge belongs to, as far as it can be reached; without a point, one on it is chosen. */
  private void walkFrom(int h, ExactPoint corner) {
    if (corner != null) {
      place.enterAtCorner(corner, own);
    } else {
      enterFromEdge(h);
    }
    walkShell(h);
  }

  /** Takes the numbers on the piece of an edge just after its start: what holds there holds at that corner too. */
  private void enterFromEdge(int h) {
    Piercing[] passed = onEdge[halfEdges.edge(h)];
    ExactPoint a = faces.point(faces.from(h));
    ExactPoint b = passed == null ? faces.point(faces.to(h))
        : h == halfEdges.edge(h) ? passed[0].at : passed[passed.length - 1].at;
    place.enterBetween(a, b, own, own);
  }

  /**
   * Walks along the loop of a half-edge and, across edges that are not blocked, along all loops that can be reached: into a
   * neighbour first, then on along the edge between.
   */
  private void walkShell(int h) {
    push(h);
    while (depth > 0) {
      int here = at[depth - 1];
      int twin = halfEdges.twin(here);
      if (!contacts.isBlocked(here) && !seen[halfEdges.loop(twin)] && !contacts.needsSheet(halfEdges.face(twin))) {
        // the twin ends where this edge starts: its loop is walked from there, back to there
        push(halfEdges.next(twin));
        continue;
      }
      pass(here);
      int next = halfEdges.next(here);
      at[depth - 1] = next;
      if (next == start[depth - 1]) {
        depth--;
      }
    }
  }

  /** Begins to walk along the loop of a half-edge. */
  private void push(int h) {
    if (depth == start.length) {
      start = Arrays.copyOf(start, 2 * depth);
      at = Arrays.copyOf(at, 2 * depth);
    }
    seen[halfEdges.loop(h)] = true;
    start[depth] = h;
    at[depth++] = h;
  }

  /** Goes along one half-edge, from piercing to piercing. */
  private void pass(int h) {
    int group = faces.groupOf(halfEdges.face(h));
    boolean flat = contacts.isFlat(h);
    Piercing[] passed = onEdge[halfEdges.edge(h)];
    int label = flat ? 0 : place.label(own);
    if (passed == null && label == 0) {
      return;
    }
    int from = WireNotes.end(faces.from(h));
    boolean along = h == halfEdges.edge(h);
    for (int i = 0; passed != null && i < passed.length;) {
      int next = beyond(passed, i, along);
      stepOver(passed, i, next, h);
      int nextLabel = flat ? 0 : place.label(own);
      if (nextLabel != label) {
        int to = outline.notes().end(nth(passed, i, along).at);
        outline.add(group, label, from, to);
        from = to;
        label = nextLabel;
      }
      i = next;
    }
    outline.add(group, label, from, WireNotes.end(faces.to(h)));
  }

  /** The i-th of the piercings along an edge that a half-edge comes by, as it runs. */
  private static Piercing nth(Piercing[] passed, int i, boolean along) {
    return passed[along ? i : passed.length - 1 - i];
  }

  /** The number of the first piercing beyond one, those at the same point left out. */
  private static int beyond(Piercing[] passed, int i, boolean along) {
    int next = i + 1;
    while (next < passed.length && nth(passed, next, along).at.equals(nth(passed, i, along).at)) {
      next++;
    }
    return next;
  }

  /**
   * Steps over piercings at one point: follows the stretches there, and enters or leaves the operands pierced.
   *
   * <p>On leaving one that hides something inside it the numbers are taken anew, and on entering one that does so outside of
   * it; so they are on entering one that seems to hold already, or leaving one that does not seem to: it was left, or
   * entered, where that was hidden. Several change at one point only where all but one are hidden.
   */
  private void stepOver(Piercing[] passed, int from, int to, int h) {
    boolean along = h == halfEdges.edge(h);
    boolean several = to - from > 1;
    for (int i = from; i < to; i++) {
      Piercing p = nth(passed, i, along);
      Face pierced = faces.face(p.face);
      boolean rises = faces.side(faces.from(h), faces.plane(pierced.plane)) < 0;
      boolean leaves = rises == pierced.up;
      int before = place.winding(pierced.operand);
      if (several || place.isStale(pierced.operand, leaves, before)) {
        ExactPoint near = place.showsAhead(pierced.operand, leaves) ? ahead(h, passed, to) : behind(h, passed, from);
        place.enterAt(p.at, near, own, own, operands(passed, from, to, along));
        before = leaves ? 1 : 0;
      }
      place.add(pierced.operand, -place.winding(pierced.operand));
      followBoth(p, h, along);
      place.add(pierced.operand, before + (leaves ? -1 : 1));
    }
    if (several) {
      place.enterBetween(nth(passed, from, along).at, ahead(h, passed, to), own, own);
    }
  }

  /** The operands pierced by some piercings. */
  private int[] operands(Piercing[] passed, int from, int to, boolean along) {
    int[] operands = new int[to - from];
    for (int i = from; i < to; i++) {
      operands[i - from] = faces.face(nth(passed, i, along).face).operand;
    }
    return operands;
  }

  /** Where a half-edge is pierced for the i-th time, or its end. */
  private ExactPoint ahead(int h, Piercing[] passed, int i) {
    return i == passed.length ? faces.point(faces.to(h)) : nth(passed, i, h == halfEdges.edge(h)).at;
  }

  /** Where it was pierced before the i-th time, or its start. */
  private ExactPoint behind(int h, Piercing[] passed, int i) {
    return i == 0 ? faces.point(faces.from(h)) : nth(passed, i - 1, h == halfEdges.edge(h)).at;
  }

  /** Follows the stretches that begin or end at a piercing, on the face of a half-edge and beyond it. */
  private void followBoth(Piercing p, int h, boolean along) {
    stretches.follow(along ? p.own : p.twin, p, own, outline);
    if (!contacts.isBlocked(h)) {
      stretches.follow(along ? p.twin : p.own, p, own, outline);
    }
  }

  /** Follows a stretch that no walk came by. */
  WireNotes followFromLook(Stretch s, WireNotes notes) {
    stretches.followFromLook(s, new WireOutline(faces, contacts, notes));
    return notes;
  }
}
