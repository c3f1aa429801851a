package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;

/**
 * Meets all faces of different operands with each other and sorts out how they meet.
 *
 * <p>Where two faces pass clean through each other they leave {@link Stretch}es between {@link Piercing}s. Any other
 * meeting is a contact: one of them stands on the other, ends in it, lies flush with it. A face into whose inside a
 * contact reaches is marked for its {@link Sheet}, as is one that is flush with another; a face merely touched at its rim
 * is not. See {@link Contacts}.
 */
final class Arranger {
  private final Faces faces;
  private final int[] boxes;
  private final Spans spans;
  private final boolean soup;
  private final Hiding hiding;
  private final ConvexOperands convex;
  private final Contacts contacts;
  private final SheetSegments segments;
  private final RoughStretch rough;
  private final LongMap piercingNumbers;
  private final List<Piercing> piercings = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();

  private Arranger(Faces faces, int[] boxes, Contacts contacts, ConvexOperands convex, Hiding hiding, boolean soup) {
    this.faces = faces;
    this.boxes = boxes;
    this.hiding = hiding;
    this.convex = convex;
    this.soup = soup;
    spans = new Spans(faces);
    piercingNumbers = new LongMap(faces.halfEdges().size() / 4);
    this.contacts = contacts;
    segments = new SheetSegments(faces);
    rough = new RoughStretch(faces);
  }

  /**
   * Meets all pairs of faces.
   *
   * @param boxes the boxes of the faces
   * @param hiding what need not be met
   */
  static Arranger of(Faces faces, BoxTree tree, int[] boxes, ConvexOperands convex, Hiding hiding) {
    Arranger arranger = new Arranger(faces, boxes, new Contacts(faces), convex, hiding, false);
    tree.pairsAcross(faces.operands(), (a, b) -> false, (f, g) -> {
      Interrupt.check();
      arranger.meet(f, g);
      return true;
    });
    arranger.contacts.spread();
    CrossingFinder.find(faces, hiding, arranger.contacts, arranger.stretches);
    arranger.markStale();
    return arranger;
  }

  /**
   * Meets the faces of a soup, which may cross each other and do not know their neighbours, as far as they need sheets.
   *
   * @param boxes the boxes of the faces
   * @param contacts which of them do
   */
  static Arranger ofSoup(Faces faces, BoxTree tree, int[] boxes, ConvexOperands convex, Hiding hiding, Contacts contacts) {
    Arranger arranger = new Arranger(faces, boxes, contacts, convex, hiding, true);
    for (int f = 0; f < faces.faceCount(); f++) {
      if (contacts.needsSheet(f)) {
        Interrupt.check();
        int face = f;
        int b = 6 * f;
        tree.forEachOverlap(boxes[b], boxes[b + 1], boxes[b + 2], boxes[b + 3], boxes[b + 4], boxes[b + 5], g -> {
          if (g > face || g < face && !contacts.needsSheet(g)) {
            arranger.meet(Math.min(face, g), Math.max(face, g));
          }
        });
      }
    }
    return arranger;
  }

  Contacts contacts() {
    return contacts;
  }

  /** All stretches, each once. */
  List<Stretch> stretches() {
    return stretches;
  }

  /** All piercings, each once. */
  List<Piercing> piercings() {
    return piercings;
  }

  /** What the contacts leave on the planes. */
  SheetSegments segments() {
    return segments;
  }

  /**
   * Gives sheets to faces at an edge along which numbers cannot be taken anew, as {@link Hiding} asks for, because another
   * face touches it.
   */
  private void markStale() {
    for (Piercing p : piercings) {
      if (hiding.hidesAny() && contacts.isBlocked(p.edge)) {
        contacts.mark(faces.halfEdges().face(p.edge));
        contacts.mark(faces.halfEdges().face(faces.halfEdges().twin(p.edge)));
      }
    }
    contacts.spreadFlat();
  }

  private void meet(int f, int g) {
    Face face = faces.face(f);
    Face other = faces.face(g);
    if (!soup && (face.operand == other.operand || hiding.isHidden(f) || hiding.isHidden(g))) {
      return;
    }
    if (face.plane == other.plane) {
      if (!soup && !convex.areApart(face, other) && !convex.areApart(other, face)) {
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
    Section large = small == null ? null : longer ? section(face, other.plane, axis, small)
        : section(other, face.plane, axis, small);
    if (large != null) {
      meet(f, g, longer ? small : large, longer ? large : small, axis);
    }
  }

  private int extent(int f, int axis) {
    return boxes[6 * f + 3 + axis] - boxes[6 * f + axis];
  }

  /** What a plane cuts out of a face, as far as a section on the same line asks for it. */
  private Section section(Face face, int plane, int axis, Section of) {
    return rough.goesThrough(face, faces.plane(plane), axis, of) ? Section.through(axis) : spans.section(face, plane, axis);
  }

  private void meet(int f, int g, Section onP, Section onQ, int axis) {
    ExactPoint low = ExactPoint.compare(onP.low(), onQ.low(), axis) >= 0 ? onP.low() : onQ.low();
    ExactPoint high = ExactPoint.compare(onP.high(), onQ.high(), axis) <= 0 ? onP.high() : onQ.high();
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
          addStretch(f, g, axis, later ? piercing(s.fromEdge(), f, from) : piercing(t.fromEdge(), g, from),
              sooner ? piercing(s.toEdge(), f, to) : piercing(t.toEdge(), g, to));
        }
      }
    }
  }

  /** Of a soup it is known already which faces need a sheet. */
  private void addSegment(int on, int face, Span span, ExactPoint from, ExactPoint to) {
    if (!soup || contacts.needsSheet(on)) {
      segments.add(on, face, span, from, to);
    }
  }

  private Piercing piercing(int halfEdge, int face, ExactPoint at) {
    long key = LongMap.edge(faces.halfEdges().edge(halfEdge), face);
    int number = piercingNumbers.get(key);
    if (number < 0) {
      number = piercings.size();
      piercingNumbers.put(key, number);
      piercings.add(new Piercing(at, faces.halfEdges().edge(halfEdge), face));
    }
    return piercings.get(number);
  }

  private void addStretch(int f, int g, int axis, Piercing low, Piercing high) {
    Face face = faces.face(f);
    Face other = faces.face(g);
    int way = Spans.direction(faces.plane(face.plane), faces.plane(other.plane), axis);
    Stretch stretch = way > 0 == (face.up == other.up) ? new Stretch(f, g, low, high) : new Stretch(f, g, high, low);
    stretches.add(stretch);
    attach(low, stretch);
    attach(high, stretch);
  }

  private void attach(Piercing piercing, Stretch stretch) {
    int face = faces.halfEdges().face(piercing.edge);
    if (face == stretch.f || face == stretch.g) {
      piercing.own = stretch;
    } else {
      piercing.twin = stretch;
    }
  }

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
