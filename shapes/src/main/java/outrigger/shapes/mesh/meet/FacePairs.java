package outrigger.shapes.mesh.meet;

import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.RoughStretch;
import outrigger.shapes.num.Interrupt;

/**
 * Meets pairs of faces for an {@link Arranger}, one after the other. Which faces need a sheet is noted at once, in any
 * order; what comes of a pair is told in the order of the pairs. Each thread has one of its own.
 */
final class FacePairs implements BoxTree.PairVisitor {
  private final Faces faces;
  private final int[] boxes;
  private final Spans spans;
  private final boolean soup;
  private final Hiding hiding;
  private final Contacts contacts;
  private final RoughStretch rough;
  private final Meetings meetings;

  /**
   * An end of a stretch.
   *
   * @param halfEdge the half-edge that passes through a face there
   * @param face that face
   * @param at where
   */
  record End(int halfEdge, int face, ExactPoint at) {}

  /** Takes what comes of pairs. */
  interface Meetings {
    /** A face leaves a segment on the plane of another. */
    void segment(int on, int face, Span span, ExactPoint from, ExactPoint to);

    /** Two faces pass clean through each other from one end to another, upward along an axis. */
    void stretch(int f, int g, int axis, End low, End high);
  }

  /**
   * For the faces of solid operands, or the facets of a soup.
   *
   * @param boxes the boxes of the faces
   * @param soup whether they are facets that may cross others of their own operand, and know no neighbours
   * @param meetings takes what comes of the pairs
   */
  FacePairs(Faces faces, int[] boxes, Contacts contacts, Hiding hiding, boolean soup, Meetings meetings) {
    this.faces = faces;
    this.boxes = boxes;
    this.contacts = contacts;
    this.hiding = hiding;
    this.soup = soup;
    this.meetings = meetings;
    spans = new Spans(faces);
    rough = new RoughStretch(faces);
  }

  @Override
  public boolean visit(int f, int g) {
    Interrupt.check();
    meet(f, g);
    return true;
  }

  private void meet(int f, int g) {
    Face face = faces.face(f);
    Face other = faces.face(g);
    if (!soup && (face.operand == other.operand || hiding.isHidden(f) || hiding.isHidden(g))) {
      return;
    }
    if (face.plane == other.plane) {
      if (!soup && !hiding.areApart(face, other)) {
        contacts.mark(f);
        contacts.mark(g);
      }
      return;
    }
    Plane p = faces.plane(face.plane);
    Plane q = faces.plane(other.plane);
    if (p.isParallel(q) || isBeside(other, p) || isBeside(face, q)) {
      return;
    }
    int axis = Spans.axisOf(p, q);
    if (!soup && hiding.mayHide(f, g)) {
      rough.look(face, q, other, p, axis);
      if (rough.isNothing() || rough.isSomething() && hiding.hidesClearly(f, g, rough)) {
        return;
      }
    }
    boolean longer = extent(f, axis) > extent(g, axis);
    Section small = longer ? spans.section(other, face.plane, axis) : spans.section(face, other.plane, axis);
    Section large = small == null ? null : longer ? spans.section(face, other.plane, axis, small)
        : spans.section(other, face.plane, axis, small);
    if (large != null) {
      meetSections(f, g, longer ? small : large, longer ? large : small, axis);
    }
  }

  /** How far the box of a face reaches along an axis. */
  private int extent(int f, int axis) {
    return boxes[6 * f + 3 + axis] - boxes[6 * f + axis];
  }

  /** Meets two faces by what the plane of f cuts out of g (on p), and that of g out of f (on q). */
  private void meetSections(int f, int g, Section onP, Section onQ, int axis) {
    ExactPoint low = Stretch.later(onP.low(), onQ.low(), axis);
    ExactPoint high = Stretch.sooner(onP.high(), onQ.high(), axis);
    if (ExactPoint.compare(low, high, axis) > 0 || hiding.hides(f, g, low, high)) {
      return;
    }
    List<Span> ofG = onP.spans();
    List<Span> ofF = onQ.spans();
    boolean contact = soup || Section.isContact(onP, ofG, onQ, ofF);
    if (contact && !soup) {
      contacts.meet(f, g, onP.enters(ofG, ofF), onQ.enters(ofF, ofG));
    }
    for (Span s : ofG) {
      for (Span t : ofF) {
        boolean later = ExactPoint.compare(s.from(), t.from(), axis) >= 0;
        boolean sooner = ExactPoint.compare(s.to(), t.to(), axis) <= 0;
        ExactPoint from = later ? s.from() : t.from();
        ExactPoint to = sooner ? s.to() : t.to();
        if (ExactPoint.compare(from, to, axis) >= 0) {
          continue;
        }
        if (contact) {
          addSegment(f, g, s, from, to);
          addSegment(g, f, t, from, to);
        } else {
          meetings.stretch(f, g, axis, later ? new End(s.fromEdge(), f, from) : new End(t.fromEdge(), g, from),
              sooner ? new End(s.toEdge(), f, to) : new End(t.toEdge(), g, to));
        }
      }
    }
  }

  /** Of a soup it is known already which faces need a sheet. */
  private void addSegment(int on, int face, Span span, ExactPoint from, ExactPoint to) {
    if (!soup || contacts.needsSheet(on)) {
      meetings.segment(on, face, span, from, to);
    }
  }

  /** Whether all of a face lies strictly on one side of a plane. */
  private boolean isBeside(Face face, Plane plane) {
    int side = faces.side(face.from[0], plane);
    if (side == 0) {
      return false;
    }
    for (int v : face.from) {
      if (faces.side(v, plane) != side) {
        return false;
      }
    }
    return true;
  }
}
