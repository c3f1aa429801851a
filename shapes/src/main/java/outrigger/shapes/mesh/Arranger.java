package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;

/**
 * Finds every segment that the faces leave on each other's planes.
 *
 * <p>On the plane of a face lie the edges of that face, left there by the faces across them, and the stretches in which
 * faces of other operands cross or touch it. Both are told in the same terms: which face, and on which sides of the
 * plane it stands.
 */
final class Arranger {
  private final Faces faces;
  private final Spans spans;
  private final boolean soup;
  private final List<List<Segment>> own = new ArrayList<>();
  private final List<List<Segment>> foreign = new ArrayList<>();

  private Arranger(Faces faces, boolean soup) {
    this.faces = faces;
    this.soup = soup;
    spans = new Spans(faces);
    for (int p = 0; p < faces.planeCount(); p++) {
      own.add(new ArrayList<>());
      foreign.add(new ArrayList<>());
    }
  }

  /**
   * All segments, plane by plane.
   *
   * @param tree the boxes of the faces
   * @param soup whether faces of one operand may cross each other and do not know their neighbours
   */
  static Arranger of(Faces faces, BoxTree tree, boolean soup) {
    Arranger arranger = new Arranger(faces, soup);
    if (!soup) {
      for (int f = 0; f < faces.faceCount(); f++) {
        arranger.addEdges(faces.face(f));
      }
    }
    tree.selfPairs((f, g) -> {
      Interrupt.check();
      arranger.meet(f, g);
      return true;
    });
    return arranger;
  }

  /** The segments of a plane. */
  List<Segment> segments(int plane) {
    List<Segment> all = new ArrayList<>(own.get(plane));
    all.addAll(apart(foreign.get(plane), faces.plane(plane)));
    return all;
  }

  private void addEdges(Face face) {
    Plane p = faces.plane(face.plane);
    for (int e = 0; e < face.edges(); e++) {
      Face other = faces.face(face.across[e]);
      if (other.plane == face.plane) {
        continue;
      }
      Plane q = faces.plane(other.plane);
      int axis = Spans.axisOf(p, q);
      ExactPoint a = faces.point(face.from[e]).in(face.plane, other.plane, -1);
      ExactPoint b = faces.point(face.to[e]).in(face.plane, other.plane, -1);
      // the other face runs the edge from b to a, its matter to the left: above where b->a goes along n x its normal
      int way = ExactPoint.compare(a, b, axis);
      boolean above = way == Spans.direction(p, q, axis) == other.up;
      own.get(face.plane).add(segment(face.plane, face.across[e], a, b, above, !above));
    }
  }

  private void meet(int f, int g) {
    Face face = faces.face(f);
    Face other = faces.face(g);
    if (face.plane == other.plane || !soup && face.operand == other.operand) {
      return;
    }
    Plane p = faces.plane(face.plane);
    Plane q = faces.plane(other.plane);
    if (p.isParallel(q) || isBeside(other, p) || isBeside(face, q)) {
      return;
    }
    int axis = Spans.axisOf(p, q);
    List<Span> onP = spans.of(other, face.plane, axis);
    if (onP.isEmpty()) {
      return;
    }
    List<Span> onQ = spans.of(face, other.plane, axis);
    for (Span s : onP) {
      for (Span t : onQ) {
        ExactPoint from = ExactPoint.compare(s.from(), t.from(), axis) >= 0 ? s.from() : t.from();
        ExactPoint to = ExactPoint.compare(s.to(), t.to(), axis) <= 0 ? s.to() : t.to();
        if (ExactPoint.compare(from, to, axis) < 0) {
          add(face.plane, g, s, from, to);
          add(other.plane, f, t, from, to);
        }
      }
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

  private void add(int plane, int face, Span span, ExactPoint from, ExactPoint to) {
    if (!span.own()) {
      foreign.get(plane).add(segment(plane, face, from, to, span.above(), span.below()));
    }
  }

  private Segment segment(int plane, int f, ExactPoint a, ExactPoint b, boolean above, boolean below) {
    Plane p = faces.plane(plane);
    Face face = faces.face(f);
    Plane q = faces.plane(face.plane);
    int u = Sheet.firstAxis(p);
    int v = Sheet.secondAxis(p);
    int way = Spans.direction(p, q, u);
    if (way == 0) {
      way = Spans.direction(p, q, v);
    }
    int change = way > 0 == face.up ? -1 : 1;
    int order = ExactPoint.compare(a, b, u);
    if (order == 0) {
      order = ExactPoint.compare(a, b, v);
    }
    return order < 0 ? new Segment(a, b, f, change, above, below) : new Segment(b, a, f, change, above, below);
  }

  /** Makes segments that one face left by way of several others count once where they overlap. */
  private static List<Segment> apart(List<Segment> segments, Plane plane) {
    int u = Sheet.firstAxis(plane);
    int v = Sheet.secondAxis(plane);
    Comparator<ExactPoint> along = (p, q) -> {
      int c = ExactPoint.compare(p, q, u);
      return c != 0 ? c : ExactPoint.compare(p, q, v);
    };
    List<Segment> sorted = new ArrayList<>(segments);
    sorted.sort(Comparator.comparingInt(Segment::face).thenComparing(Segment::from, along));
    List<Segment> result = new ArrayList<>(sorted.size());
    Segment before = null;
    for (Segment s : sorted) {
      if (before != null && before.face() == s.face() && along.compare(s.from(), before.to()) < 0) {
        if (along.compare(s.to(), before.to()) <= 0) {
          continue;
        }
        s = new Segment(before.to(), s.to(), s.face(), s.change(), s.above(), s.below());
      }
      result.add(s);
      before = s;
    }
    return result;
  }

}
