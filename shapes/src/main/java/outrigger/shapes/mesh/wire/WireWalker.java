package outrigger.shapes.mesh.wire;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.HalfEdges;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.inside.Membership;
import outrigger.shapes.mesh.inside.WindingCount;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.mesh.meet.Piercing;
import outrigger.shapes.mesh.meet.Stretch;
import outrigger.shapes.num.Interrupt;

/**
 * Outlines the faces that need no sheet, by walking along their rims and along the stretches in them.
 *
 * <p>The walk goes round each loop of a face just inside it and knows, in a {@link Membership}, which other operands hold
 * there; at every {@link Piercing} one of them begins or ends. From face to face it steps across edges that are not
 * blocked, so one look along a ray serves a whole shell. At piercings the {@link Stretch}es are followed likewise. A piece
 * belongs to an outline where the expression, with the walker's own operand in it and out of it, says that the surface is
 * the result's on one side of the piece and not on the other.
 */
final class WireWalker {
  /** Weights of two ends for a point between them; others are tried where the first lies on a face by chance. */
  private static final int[][] WEIGHTS = {{1, 1}, {1, 2}, {3, 1}, {5, 7}, {11, 4}, {13, 29}, {97, 89}};

  private final Faces faces;
  private final HalfEdges halfEdges;
  private final Contacts contacts;
  private final Hiding hiding;
  private final Locator locator;
  private final Membership place;
  private final Piercing[][] onEdge;
  private final boolean[] seen;
  /** Of each stretch the operand, and one, on whose walk it was last followed here. */
  private final int[] followedFor;
  /** Where the walk is noted. */
  private WireOutline outline;
  private int[] start = new int[64];
  private int[] at = new int[64];
  private int depth;
  /** The operand whose shell is walked. */
  private int own;
  /** The last {@link #label}, and after how many changes of the place it was taken. */
  private int label;
  private long labelledAt;

  /**
   * A walker for one thread.
   *
   * @param onEdge of each edge, by the lower of its half-edges, the piercings along that one; null where there are none
   * @param seen of each loop whether it was walked along; loops of one operand are walked by one walker at a time
   */
  WireWalker(Faces faces, Contacts contacts, Hiding hiding, Locator locator, Membership.Tree tree, Piercing[][] onEdge,
      boolean[] seen, int stretches) {
    this.faces = faces;
    this.contacts = contacts;
    this.hiding = hiding;
    this.locator = locator;
    this.onEdge = onEdge;
    this.seen = seen;
    halfEdges = faces.halfEdges();
    place = new Membership(tree);
    followedFor = new int[stretches];
  }

  /** Walks what can be reached of an operand from corners that nothing touches, or else from edges that are not blocked. */
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
    return outline.notes();
  }

  /** Walks the shell that a half-edge belongs to, as far as it can be reached; without a point, one on it is chosen. */
  private void walkFrom(int h, ExactPoint corner) {
    enter(corner != null ? locator.around(corner, own, own) : lookFromEdge(h));
    walkShell(h);
  }

  /** Takes all winding numbers anew. */
  private void enter(WindingCount found) {
    place.clear();
    found.replay(this::change, 1);
    labelledAt = -1;
  }

  /** Away from all sheets an operand winds as often above as below. */
  private void change(int operand, int above, int below) {
    place.add(operand, above);
  }

  /** Looks from the piece of an edge just after its start: what holds there holds at that corner of the face too. */
  private WindingCount lookFromEdge(int h) {
    Piercing[] passed = onEdge[halfEdges.edge(h)];
    ExactPoint a = faces.point(faces.from(h));
    ExactPoint b = passed == null ? faces.point(faces.to(h))
        : h == halfEdges.edge(h) ? passed[0].at : passed[passed.length - 1].at;
    return lookBetween(a, b, own, own);
  }

  private WindingCount lookBetween(ExactPoint a, ExactPoint b, int operand, int other) {
    for (int[] weight : WEIGHTS) {
      try {
        return locator.around(ExactPoint.mean(a, weight[0], b, weight[1], b, weight[1]), operand, other);
      } catch (Locator.OnFace chance) {
        // the next weights give another point of the same piece
      }
    }
    throw new IllegalStateException("every point tried on an edge lies on a face");
  }

  /**
   * Looks from where operands meet: between there and the next change that is known, others may change where that is hidden.
   * Where another one passes through the point itself, looks from beside it.
   */
  private WindingCount lookAt(ExactPoint at, ExactPoint near, int operand, int other, int... passed) {
    try {
      return locator.around(at, operand, other, passed);
    } catch (Locator.OnFace chance) {
      return lookBetween(at, near, operand, other);
    }
  }

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
    int label = flat ? 0 : label();
    if (passed == null && label == 0) {
      return;
    }
    int from = WireNotes.end(faces.from(h));
    boolean along = h == halfEdges.edge(h);
    for (int i = 0; passed != null && i < passed.length;) {
      int next = beyond(passed, i, along);
      pass(passed, i, next, h);
      int nextLabel = flat ? 0 : label();
      if (nextLabel != label) {
        int to = outline.notes().end(at(passed, i, along).at);
        outline.add(group, label, from, to);
        from = to;
        label = nextLabel;
      }
      i = next;
    }
    outline.add(group, label, from, WireNotes.end(faces.to(h)));
  }

  /** Whether the shell bounds the result here as it is (1), turned over (-1) or not at all (0). */
  private int label() {
    if (place.changes() != labelledAt) {
      boolean out = place.inside();
      place.add(own, 1);
      boolean in = place.inside();
      place.add(own, -1);
      label = in == out ? 0 : in ? 1 : -1;
      labelledAt = place.changes();
    }
    return label;
  }

  private static Piercing at(Piercing[] passed, int i, boolean along) {
    return passed[along ? i : passed.length - 1 - i];
  }

  /** The number of the first piercing beyond one, those at the same point left out. */
  private static int beyond(Piercing[] passed, int i, boolean along) {
    int next = i + 1;
    while (next < passed.length && at(passed, next, along).at.equals(at(passed, i, along).at)) {
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
  private void pass(Piercing[] passed, int from, int to, int h) {
    boolean along = h == halfEdges.edge(h);
    boolean several = to - from > 1;
    for (int i = from; i < to; i++) {
      Piercing p = at(passed, i, along);
      Face pierced = faces.face(p.face);
      boolean rises = faces.side(faces.from(h), faces.plane(pierced.plane)) < 0;
      boolean leaves = rises == pierced.up;
      int before = place.winding(pierced.operand);
      if (several || isStale(pierced.operand, leaves, before)) {
        enter(lookAt(p.at, showsAhead(pierced.operand, leaves) ? ahead(h, passed, to) : behind(h, passed, from), own, own,
            operands(passed, from, to, along)));
        before = leaves ? 1 : 0;
      }
      place.add(pierced.operand, -place.winding(pierced.operand));
      followBoth(p, h, along);
      place.add(pierced.operand, before + (leaves ? -1 : 1));
    }
    if (several) {
      enter(lookBetween(at(passed, from, along).at, ahead(h, passed, to), own, own));
    }
  }

  /** Whether the numbers are not to be relied on at the surface of an operand that winds so often before it. */
  private boolean isStale(int operand, boolean leaves, int before) {
    return hiding.hidesBehind(operand, leaves) || before != 0 != leaves && hiding.hidesAny();
  }

  /** Whether it is beyond the surface of an operand that something may show. */
  private boolean showsAhead(int operand, boolean leaves) {
    return hiding.hidesBehind(operand, leaves) || leaves && !hiding.hidesBehind(operand, false);
  }

  /** The operands pierced by some piercings. */
  private int[] operands(Piercing[] passed, int from, int to, boolean along) {
    int[] operands = new int[to - from];
    for (int i = from; i < to; i++) {
      operands[i - from] = faces.face(at(passed, i, along).face).operand;
    }
    return operands;
  }

  /** Where a half-edge is pierced for the i-th time, or its end. */
  private ExactPoint ahead(int h, Piercing[] passed, int i) {
    return i == passed.length ? faces.point(faces.to(h)) : at(passed, i, h == halfEdges.edge(h)).at;
  }

  /** Where it was pierced before the i-th time, or its start. */
  private ExactPoint behind(int h, Piercing[] passed, int i) {
    return i == 0 ? faces.point(faces.from(h)) : at(passed, i - 1, h == halfEdges.edge(h)).at;
  }

  private void followBoth(Piercing p, int h, boolean along) {
    follow(along ? p.own : p.twin, p);
    if (!contacts.isBlocked(h)) {
      follow(along ? p.twin : p.own, p);
    }
  }

  /** Follows a stretch that no walk came by. */
  WireNotes followFromRay(Stretch s, WireNotes notes) {
    outline = new WireOutline(faces, contacts, notes);
    own = faces.face(s.f).operand;
    ExactPoint end = s.crossings().isEmpty() ? s.to.at : s.crossings().get(0).at();
    WindingCount found = lookBetween(s.from.at, end, faces.face(s.f).operand, faces.face(s.g).operand);
    enter(found);
    follow(s, s.from);
    return outline.notes();
  }

  /** Follows a chain of stretches from one end, with both operands that cross there counted as absent before. */
  private void follow(Stretch first, Piercing end) {
    if (!isToFollow(first)) {
      return;
    }
    int[] here = place.numbers();
    Stretch s = first;
    Piercing p = end;
    while (isToFollow(s)) {
      followedFor[s.number] = own + 1;
      boolean along = p == s.from;
      trace(s, along);
      p = along ? s.to : s.from;
      s = contacts.isBlocked(p.edge) ? null : p.beyond(s);
    }
    place.set(here);
  }

  private boolean isToFollow(Stretch s) {
    return s != null && !s.done && s.isKnown() && followedFor[s.number] != own + 1;
  }

  /** Says of each piece of a stretch what it bounds. */
  private void trace(Stretch s, boolean along) {
    int n = s.crossings().size();
    WireNotes notes = outline.notes();
    notes.beginStretch(s);
    int from = notes.end((along ? s.from : s.to).at);
    int state = state(s);
    for (int i = 0; i < n; i++) {
      Stretch.Crossing c = s.crossings().get(along ? i : n - 1 - i);
      ExactPoint beyond = i + 1 < n ? s.crossings().get(along ? i + 1 : n - 2 - i).at() : (along ? s.to : s.from).at;
      cross(s, c, along ? c.change() : -c.change(), beyond);
      int next = state(s);
      if (next != state) {
        int to = notes.end(c.at());
        outline.add(s, state, along ? from : to, along ? to : from);
        from = to;
        state = next;
      }
    }
    int to = notes.end((along ? s.to : s.from).at);
    outline.add(s, state, along ? from : to, along ? to : from);
    notes.endStretch();
  }

  private void cross(Stretch s, Stretch.Crossing c, int change, ExactPoint beyond) {
    if (!isStale(c.operand(), change < 0, place.winding(c.operand()))) {
      place.add(c.operand(), change);
    } else if (!c.at().equals(beyond)) {
      enter(lookAt(c.at(), beyond, faces.face(s.f).operand, faces.face(s.g).operand, c.operand()));
      place.add(c.operand(), (change > 0 ? 1 : 0) - place.winding(c.operand()));
    }
  }

  /** Whether the expression holds outside both operands (bit 0), in the first (1), in the second (2), in both (3). */
  private int state(Stretch s) {
    int a = faces.face(s.f).operand;
    int b = faces.face(s.g).operand;
    int state = place.inside() ? 1 : 0;
    place.add(a, 1);
    state |= place.inside() ? 2 : 0;
    place.add(b, 1);
    state |= place.inside() ? 8 : 0;
    place.add(a, -1);
    state |= place.inside() ? 4 : 0;
    place.add(b, -1);
    return state;
  }
}
