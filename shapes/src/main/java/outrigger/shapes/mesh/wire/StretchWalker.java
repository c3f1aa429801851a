package outrigger.shapes.mesh.wire;

import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.mesh.meet.Piercing;
import outrigger.shapes.mesh.meet.Stretch;

/** Walks along chains of stretches, from where the walk round a shell comes by them or from a look of its own. */
final class StretchWalker {
  private final Faces faces;
  private final Contacts contacts;
  private final Surroundings place;
  /** Of each stretch the operand, and one, on whose walk it was last followed here. */
  private final int[] followedFor;

  /** A walker for one thread, that carries the place of another along. */
  StretchWalker(Faces faces, Contacts contacts, Surroundings place, int stretches) {
    this.faces = faces;
    this.contacts = contacts;
    this.place = place;
    followedFor = new int[stretches];
  }

  /** Follows a stretch that no walk came by. */
  void followFromLook(Stretch s, WireOutline outline) {
    ExactPoint end = s.crossings().isEmpty() ? s.to.at : s.crossings().get(0).at();
    place.enterBetween(s.from.at, end, first(s), second(s));
    follow(s, s.from, first(s), outline);
  }

  /**
   * Follows a chain of stretches from one end, with both operands that cross there counted as absent before.
   *
   * @param own the operand on whose walk it is; once for each
   */
  void follow(Stretch first, Piercing end, int own, WireOutline outline) {
    if (!isToFollow(first, own)) {
      return;
    }
    int[] here = place.numbers();
    Stretch s = first;
    Piercing p = end;
    while (isToFollow(s, own)) {
      followedFor[s.number] = own + 1;
      boolean along = p == s.from;
      trace(s, along, outline);
      p = along ? s.to : s.from;
      s = contacts.isBlocked(p.edge) ? null : p.beyond(s);
    }
    place.set(here);
  }

  private boolean isToFollow(Stretch s, int own) {
    return s != null && !s.done && s.isKnown() && followedFor[s.number] != own + 1;
  }

  /** Says of each piece of a stretch what it bounds. */
  private void trace(Stretch s, boolean along, WireOutline outline) {
    int n = s.crossings().size();
    WireNotes notes = outline.notes();
    notes.beginStretch(s);
    int from = notes.end((along ? s.from : s.to).at);
    int state = place.state(first(s), second(s));
    for (int i = 0; i < n; i++) {
      Stretch.Crossing c = s.crossings().get(along ? i : n - 1 - i);
      ExactPoint beyond = i + 1 < n ? s.crossings().get(along ? i + 1 : n - 2 - i).at() : (along ? s.to : s.from).at;
      cross(s, c, along ? c.change() : -c.change(), beyond);
      int next = place.state(first(s), second(s));
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
    if (!place.isStale(c.operand(), change < 0, place.winding(c.operand()))) {
      place.add(c.operand(), change);
    } else if (!c.at().equals(beyond)) {
      place.enterAt(c.at(), beyond, first(s), second(s), c.operand());
      place.add(c.operand(), (change > 0 ? 1 : 0) - place.winding(c.operand()));
    }
  }

  private int first(Stretch s) {
    return faces.face(s.f).operand;
  }

  private int second(Stretch s) {
    return faces.face(s.g).operand;
  }
}
