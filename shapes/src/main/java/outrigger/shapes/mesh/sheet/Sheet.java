package outrigger.shapes.mesh.sheet;

import java.util.Arrays;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.WindingTaker;
import outrigger.shapes.mesh.meet.Segment;
import outrigger.shapes.mesh.triangulation.ConstrainedTriangulation;
import outrigger.shapes.mesh.triangulation.Triangulation;

/**
 * One plane with all that lies in it or crosses it there: cut into cells, and the cells that bound the result found.
 *
 * <p>The segments are laid into a triangulation. Stepping from triangle to triangle across them changes the winding
 * numbers just above and just below the plane by what the segments say. Where the operands' faces cover the plane, one
 * look in each connected piece gives the numbers to start from. A triangle belongs to the result's boundary where the
 * expression holds on exactly one side of it.
 */
final class Sheet {
  /** Not part of the boundary. */
  static final byte NONE = 0;
  /** Boundary that looks the way of the plane's normal: matter is below. */
  static final byte UP = 1;
  /** Boundary that looks the other way. */
  static final byte DOWN = -1;

  /**
   * Up to how many segments triangles are left as they come. Measured: with fewer, flips cost more than the shorter walks to
   * a point save; with more, points are inserted before any segment is laid, in an order that needs few flips.
   */
  private static final int FEW = 512;

  /** Takes edges of outlines. */
  interface EdgeTaker {
    void add(int group, ExactPoint from, ExactPoint to);
  }

  private final Faces faces;
  private final ConstrainedTriangulation marks = new ConstrainedTriangulation();
  private final Triangulation tri = marks.triangulation();
  private int planeNumber;
  private List<Segment> segments = List.of();
  /** Boxes of loops and faces on the plane that are not laid; null where there are none. */
  private BoxTree unlaid;
  /** Of each triangle which way it bounds the result: {@link #NONE}, {@link #UP} or {@link #DOWN}. */
  private byte[] label = new byte[64];

  /** An empty sheet, to be laid again and again. */
  Sheet(Faces faces) {
    this.faces = faces;
  }

  /**
   * Arranges the segments of a plane; what was here before is gone.
   *
   * @param notLaid the boxes of loops and faces on the plane that are not among them; null if there are none
   */
  void lay(int plane, List<Segment> onPlane, BoxTree notLaid) {
    planeNumber = plane;
    segments = onPlane;
    unlaid = notLaid;
    Plane p = faces.plane(plane);
    marks.reset(p.firstAxis(), p.secondAxis(), plane, this::crossing);
    tri.keepDelaunay(segments.size() > FEW);
    int[] starts = segments.size() <= FEW ? new int[0]
        : tri.insertSpread(segments.size(), i -> tri.insert(segments.get(i).from()));
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      int a = starts.length > 0 ? starts[i] : tri.insert(s.from());
      boolean isNext = i + 1 < starts.length && s.to() == segments.get(i + 1).from();
      marks.lay(a, isNext ? starts[i + 1] : tri.insert(s.to()), i, line(i));
    }
    if (label.length < tri.triangleCount()) {
      label = new byte[2 * tri.triangleCount()];
    }
    Arrays.fill(label, 0, tri.triangleCount(), NONE);
  }

  private ExactPoint crossing(int s, int t) {
    return ExactPoint.meeting(faces.plane(planeNumber), faces.plane(line(s)), faces.plane(line(t)))
        .in(planeNumber, line(s), line(t));
  }

  /** A line of the sheet is known by the number of the plane that crosses it there. */
  private int line(int segment) {
    return faces.face(segments.get(segment).face()).plane;
  }

  Triangulation triangulation() {
    return tri;
  }

  /** Whether a point may lie in a loop or face that was not laid, and so not see what holds in its cell of the sheet. */
  boolean isInUnlaid(ExactPoint q) {
    return unlaid != null && boxesAt(unlaid, q) > 0;
  }

  /** How many boxes hold a point. */
  static int boxesAt(BoxTree boxes, ExactPoint q) {
    int[] count = {0};
    boxes.forEachOverlap(q.grid(0), q.grid(1), q.grid(2), q.grid(0), q.grid(1), q.grid(2), i -> count[0]++);
    return count[0];
  }

  int planeNumber() {
    return planeNumber;
  }

  void setLabel(int triangle, byte value) {
    label[triangle] = value;
  }

  /** Tells all edges that bound the labelled triangles, what bounds the result to their left seen from outside. */
  void outline(EdgeTaker to) {
    for (int t = 0; t < tri.triangleCount(); t++) {
      for (int h = Triangulation.edge(t); label[t] != NONE && h < Triangulation.edge(t) + 3; h++) {
        if (label[Triangulation.triangle(tri.twin(h))] != label[t]) {
          ExactPoint a = tri.point(tri.origin(h));
          ExactPoint b = tri.point(tri.destination(h));
          boolean up = label[t] == UP;
          to.add(Group.of(planeNumber, up), up ? a : b, up ? b : a);
        }
      }
    }
  }

  /** Tells what changes in stepping over a half-edge from its left to its right. */
  void cross(int h, WindingTaker change) {
    cross(h, false, change);
  }

  /** The same, but only as far as faces in the plane begin or end there. */
  void crossRims(int h, WindingTaker change) {
    cross(h, true, change);
  }

  private void cross(int h, boolean rimsOnly, WindingTaker change) {
    int node = tri.mark(h);
    if (node == Triangulation.FREE) {
      return;
    }
    boolean along = node > 0;
    for (node = Math.abs(node); node != Triangulation.FREE; node = marks.rest(node)) {
      Segment s = segments.get(marks.segment(node));
      int d = along ? s.change() : -s.change();
      if (s.rim() || !rimsOnly) {
        change.add(faces.face(s.face()).operand, s.above() ? d : 0, s.below() ? d : 0);
      }
    }
  }

  /**
   * Whether beyond a half-edge the numbers must be taken anew: it leaves an operand that hides something inside it, enters
   * one that does so outside of it, or a face begins or ends there, for on either side other things may be hidden.
   */
  boolean goesStale(int h, Hiding hiding) {
    int node = tri.mark(h);
    boolean along = node > 0;
    for (node = Math.abs(node); node != Triangulation.FREE; node = marks.rest(node)) {
      Segment s = segments.get(marks.segment(node));
      boolean leaves = along == s.change() < 0;
      if (s.rim() && hiding.hidesAny() || hiding.hidesBehind(faces.face(s.face()).operand, leaves)) {
        return true;
      }
    }
    return false;
  }
}
