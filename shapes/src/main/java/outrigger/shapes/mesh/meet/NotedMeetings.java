package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.inside.Hiding;

/** Meets pairs of faces on one of several threads and notes what comes of them, to be told in their order later on. */
final class NotedMeetings implements BoxTree.PartVisitor<NotedMeetings.Notes>, FacePairs.Meetings {
  private final FacePairs pairs;
  private List<Consumer<FacePairs.Meetings>> notes = new ArrayList<>();

  /** What came of some pairs. */
  record Notes(List<Consumer<FacePairs.Meetings>> notes) {
    void tell(FacePairs.Meetings to) {
      notes.forEach(note -> note.accept(to));
    }
  }

  NotedMeetings(Faces faces, int[] boxes, Contacts contacts, Hiding hiding) {
    pairs = new FacePairs(faces, boxes, contacts, hiding, false, this);
  }

  @Override
  public boolean visit(int f, int g) {
    return pairs.visit(f, g);
  }

  @Override
  public Notes take() {
    Notes taken = new Notes(notes);
    notes = new ArrayList<>();
    return taken;
  }

  @Override
  public void segment(int on, int face, Span span, ExactPoint from, ExactPoint to) {
    notes.add(meetings -> meetings.segment(on, face, span, from, to));
  }

  @Override
  public void stretch(int f, int g, int axis, FacePairs.End low, FacePairs.End high) {
    notes.add(meetings -> meetings.stretch(f, g, axis, low, high));
  }
}
