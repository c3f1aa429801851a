package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.num.Interrupt;

/**
 * Meets all faces of different operands with each other and sorts out how they meet.
 *
 * <p>Where two faces pass clean through each other they leave {@link Stretch}es between {@link Piercing}s. Any other
 * meeting is a contact: one of them stands on the other, ends in it, lies flush with it. A face into whose inside a
 * contact reaches is marked for its {@code Sheet}, as is one that is flush with another; a face merely touched at its rim
 * is not. See {@link Contacts}.
 */
public final class Arranger implements FacePairs.Meetings {
  private final Faces faces;
  private final Hiding hiding;
  private final Contacts contacts;
  private final SheetSegments segments;
  /** Numbers of the piercings, by edge and face. */
  private final EdgeMeetings piercingNumbers;
  private final List<Piercing> piercings = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();
  /** Of each plane the faces that its sheet is laid of; null where it needs none. */
  private List<List<Integer>> sheets = List.of();
  /** What sheets do without; null for a soup, of which nothing is looked for. */
  private FreeLoops free;

  private Arranger(Faces faces, Contacts contacts, Hiding hiding) {
    this.faces = faces;
    this.hiding = hiding;
    piercingNumbers = new EdgeMeetings(faces.halfEdges().size());
    this.contacts = contacts;
    segments = new SheetSegments(faces);
  }

  /**
   * Meets all pairs of faces.
   *
   * @param boxes the boxes of the faces
   * @param hiding what need not be met
   */
  public static Arranger of(Faces faces, BoxTree tree, int[] boxes, Hiding hiding) {
    Arranger arranger = new Arranger(faces, new Contacts(faces), hiding);
    if (faces.workers().threads() == 1) {
      tree.pairsAcross(faces.operands(), (a, b) -> false,
          new FacePairs(faces, boxes, arranger.contacts, hiding, false, arranger));
    } else {
      tree.pairsAcross(faces.operands(), (a, b) -> false, faces.workers(),
          () -> new NotedMeetings(faces, boxes, arranger.contacts, hiding), noted -> noted.tell(arranger));
    }
    arranger.contacts.spread();
    CrossingFinder.find(faces, hiding, arranger.contacts, arranger.stretches);
    arranger.markBlockedPiercings();
    arranger.sheets = arranger.contacts.onPlanes();
    arranger.free = FreeLoops.find(faces, arranger.contacts, arranger.stretches, arranger.segments, arranger.sheets);
    return arranger;
  }

  /**
   * Meets the faces of a soup, which may cross each other and do not know their neighbours, as far as they need sheets.
   *
   * @param boxes the boxes of the faces
   * @param contacts which of them do
   */
  public static Arranger ofSoup(Faces faces, BoxTree tree, int[] boxes, Hiding hiding, Contacts contacts) {
    Arranger arranger = new Arranger(faces, contacts, hiding);
    FacePairs pairs = new FacePairs(faces, boxes, contacts, hiding, true, arranger);
    for (int f = 0; f < faces.faceCount(); f++) {
      if (contacts.needsSheet(f)) {
        Interrupt.check();
        int face = f;
        tree.forEachOverlap(boxes, f, g -> {
          if (g > face || g < face && !contacts.needsSheet(g)) {
            pairs.visit(Math.min(face, g), Math.max(face, g));
          }
        });
      }
    }
    arranger.sheets = contacts.onPlanes();
    return arranger;
  }

  /** Which faces need a sheet. */
  public Contacts contacts() {
    return contacts;
  }

  /** Of each plane the faces that its sheet is laid of; null where it needs none. */
  public List<List<Integer>> sheets() {
    return sheets;
  }

  /** The faces of a plane that its sheet does without. */
  public List<Integer> loneFaces(int plane) {
    return free == null ? List.of() : free.loneOn(plane);
  }

  /** The boxes of the free loops and lone faces that are not laid into a plane's sheet; null where there are none. */
  public BoxTree unlaid(int plane) {
    return free == null ? null : free.boxesOn(plane);
  }

  /** All stretches, each once. */
  public List<Stretch> stretches() {
    return stretches;
  }

  /** All piercings, each once. */
  public List<Piercing> piercings() {
    return piercings;
  }

  /** Adds stretches on faces with a sheet, but for free loops, to the segments there; each thread does some planes. */
  public void addStretches() {
    faces.workers().parts(faces.planeCount(), (from, to) -> {
      for (Stretch s : stretches) {
        addStretch(s, s.f, from, to);
        addStretch(s, s.g, from, to);
      }
    });
  }

  private void addStretch(Stretch s, int f, int fromPlane, int toPlane) {
    if (contacts.needsSheet(f, s) && faces.planeOf(f) >= fromPlane && faces.planeOf(f) < toPlane) {
      segments.add(f, s);
    }
  }

  /** What the contacts leave on the planes. */
  public SheetSegments segments() {
    return segments;
  }

  /**
   * Gives sheets to both faces at an edge that is pierced and that another face touches, where anything is hidden: a walk
   * would have to take its numbers anew at the piercing ({@link Hiding}), and beside such an edge it cannot.
   */
  private void markBlockedPiercings() {
    for (Piercing p : piercings) {
      if (hiding.hidesAny() && contacts.isBlocked(p.edge)) {
        contacts.mark(faces.halfEdges().face(p.edge));
        contacts.mark(faces.halfEdges().face(faces.halfEdges().twin(p.edge)));
      }
    }
    contacts.spreadFlat();
  }

  /** The piercing of an edge through a face, a new one where it was not met before. */
  private Piercing piercing(int halfEdge, int face, ExactPoint at) {
    int edge = faces.halfEdges().edge(halfEdge);
    int number = piercingNumbers.number(edge, face);
    if (number < 0) {
      number = piercingNumbers.add(edge, face);
      piercings.add(new Piercing(at, edge, face));
    }
    return piercings.get(number);
  }

  @Override
  public void segment(int on, int face, Span span, ExactPoint from, ExactPoint to) {
    segments.add(on, face, span, from, to);
  }

  @Override
  public void stretch(int f, int g, int axis, FacePairs.End lower, FacePairs.End upper) {
    Piercing low = piercing(lower.halfEdge(), lower.face(), lower.at());
    Piercing high = piercing(upper.halfEdge(), upper.face(), upper.at());
    Face face = faces.face(f);
    Face other = faces.face(g);
    int way = Plane.direction(faces.plane(face.plane), faces.plane(other.plane), axis);
    boolean upward = way > 0 == (face.up == other.up);
    Stretch stretch = new Stretch(stretches.size(), f, g, upward ? low : high, upward ? high : low);
    stretches.add(stretch);
    attach(low, stretch);
    attach(high, stretch);
  }

  /** Notes at the end of a stretch that it begins or ends there. */
  private void attach(Piercing piercing, Stretch stretch) {
    int face = faces.halfEdges().face(piercing.edge);
    if (face == stretch.f || face == stretch.g) {
      piercing.own = stretch;
    } else {
      piercing.twin = stretch;
    }
  }
}
