package outrigger.shapes.mesh.wire;

import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.mesh.meet.Stretch;

/** Turns what the wire walker learns of edges and stretches into directed edges of the outline. */
final class WireOutline {
  private final Faces faces;
  private final Contacts contacts;
  private final WireNotes notes;

  WireOutline(Faces faces, Contacts contacts, WireNotes notes) {
    this.faces = faces;
    this.contacts = contacts;
    this.notes = notes;
  }

  WireNotes notes() {
    return notes;
  }

  /**
   * A piece of a face's own rim.
   *
   * @param group that of the face as it is
   * @param from where it begins, as the notes have it
   * @param to where it ends
   * @param label 1 where the face bounds the result, -1 where it does so turned over, 0 where it does not
   */
  void add(int group, int label, int from, int to) {
    if (label != 0) {
      notes.add(label > 0 ? group : Group.turned(group), label > 0 ? from : to, label > 0 ? to : from);
    }
  }

  /**
   * A piece of a stretch, from its beginning towards its end.
   *
   * @param state where the expression holds round it, as {@link Surroundings#state} puts it
   */
  void add(Stretch s, int state, int from, int to) {
    boolean none = (state & 1) != 0;
    boolean first = (state & 2) != 0;
    boolean second = (state & 4) != 0;
    boolean both = (state & 8) != 0;
    if (!contacts.needsSheet(s.f, s)) {
      add(faces.groupOf(s.f), label(both, second), label(first, none), from, to);
    }
    if (!contacts.needsSheet(s.g, s)) {
      add(faces.groupOf(s.g), label(both, first), label(second, none), to, from);
    }
  }

  private static int label(boolean in, boolean out) {
    return in == out ? 0 : in ? 1 : -1;
  }

  private void add(int group, int left, int right, int from, int to) {
    if (left != right) {
      add(group, left, from, to);
      add(group, right, to, from);
    }
  }
}
