package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;

/**
 * What lies on the planes of faces that need a sheet: their own edges, left there by the faces across them, and the pieces
 * of line in which faces of other operands cross or touch them. All are told in the same terms: which face, and on which
 * sides of the plane it stands.
 */
public final class SheetSegments {
  private final Faces faces;
  /** Of each plane what faces of others left on it. */
  private final List<List<Foreign>> foreign;

  /** A segment, and the face of the plane that it was found on. */
  private record Foreign(int on, Segment segment) {}

  SheetSegments(Faces faces) {
    this.faces = faces;
    foreign = Lists.none(faces.planeCount());
  }

  /** Adds what a face leaves on another's plane. */
  void add(int on, int face, Span span, ExactPoint from, ExactPoint to) {
    if (!span.own()) {
      add(on, face, from, to, span.above(), span.below());
    }
  }

  /** Adds a stretch where a face needs it for its sheet. */
  void add(int on, Stretch stretch) {
    add(on, stretch.other(on), stretch.from.at, stretch.to.at, true, true);
  }

  private void add(int on, int face, ExactPoint from, ExactPoint to, boolean above, boolean below) {
    int plane = faces.face(on).plane;
    boolean soup = faces.face(face).across[0] < 0;
    Lists.add(new Foreign(on, segment(plane, face, from, to, above, below, soup)), plane, foreign);
  }

  /** Gives the ends of all that other faces left on a plane so far. */
  void forEachLeft(int plane, BiConsumer<ExactPoint, ExactPoint> taker) {
    Lists.at(plane, foreign).forEach(left -> taker.accept(left.segment.from(), left.segment.to()));
  }

  /** About how many segments {@link #of} gives. */
  public int countOf(int plane, List<Integer> facesThere) {
    int count = Lists.at(plane, foreign).size();
    for (int f : facesThere) {
      count += faces.face(f).edges();
    }
    return count;
  }

  /** All segments of a plane that concern some of its faces. */
  public List<Segment> of(int plane, List<Integer> facesThere, Contacts contacts) {
    List<Segment> all = new ArrayList<>();
    for (int f : facesThere) {
      addEdges(faces.face(f), all);
    }
    List<Segment> others = new ArrayList<>();
    for (Foreign s : Lists.at(plane, foreign)) {
      if (contacts.needsSheet(s.on)) {
        others.add(s.segment);
      }
    }
    all.addAll(apart(others, faces.plane(plane)));
    return all;
  }

  private void addEdges(Face face, List<Segment> all) {
    Plane p = faces.plane(face.plane);
    for (int e = 0; e < face.edges(); e++) {
      if (face.across[e] < 0 || faces.face(face.across[e]).plane == face.plane) {
        continue;
      }
      Face other = faces.face(face.across[e]);
      Plane q = faces.plane(other.plane);
      int axis = Spans.axisOf(p, q);
      ExactPoint a = faces.point(face.from[e]).in(face.plane, other.plane, -1);
      ExactPoint b = faces.point(face.to[e]).in(face.plane, other.plane, -1);
      // the other face runs the edge from b to a, its matter to the left: above where b->a goes along n x its normal
      int way = ExactPoint.compare(a, b, axis);
      boolean above = way == Plane.direction(p, q, axis) == other.up;
      all.add(segment(face.plane, face.across[e], a, b, above, !above, true));
    }
  }

  /** What a face leaves between two points of a plane, brought in the sheet's order. */
  private Segment segment(int plane, int f, ExactPoint a, ExactPoint b, boolean above, boolean below, boolean rim) {
    Plane p = faces.plane(plane);
    Face face = faces.face(f);
    Plane q = faces.plane(face.plane);
    int u = p.firstAxis();
    int v = p.secondAxis();
    int way = Plane.direction(p, q, u);
    if (way == 0) {
      way = Plane.direction(p, q, v);
    }
    int change = way > 0 == face.up ? -1 : 1;
    return compare(a, b, u, v) < 0 ? new Segment(a, b, f, change, above, below, rim)
        : new Segment(b, a, f, change, above, below, rim);
  }

  /** The segments, so cut that what one face left twice, by way of two faces of the plane, counts once. */
  private static List<Segment> apart(List<Segment> segments, Plane plane) {
    int u = plane.firstAxis();
    int v = plane.secondAxis();
    List<Segment> sorted = new ArrayList<>(segments);
    sorted.sort((s, t) -> s.face() != t.face() ? Integer.compare(s.face(), t.face()) : compare(s.from(), t.from(), u, v));
    List<Segment> result = new ArrayList<>(sorted.size());
    Segment before = null;
    for (Segment s : sorted) {
      if (before != null && before.face() == s.face() && compare(s.from(), before.to(), u, v) < 0) {
        if (compare(s.to(), before.to(), u, v) <= 0) {
          continue;
        }
        s = new Segment(before.to(), s.to(), s.face(), s.change(), s.above(), s.below(), s.rim());
      }
      result.add(s);
      before = s;
    }
    return result;
  }

  /** Order of two points by their first coordinate, then their second. */
  private static int compare(ExactPoint p, ExactPoint q, int u, int v) {
    int first = ExactPoint.compare(p, q, u);
    return first != 0 ? first : ExactPoint.compare(p, q, v);
  }
}
