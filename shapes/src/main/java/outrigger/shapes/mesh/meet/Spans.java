package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.EdgeBlocks;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.inside.RoughStretch;

/** Cuts faces by planes, remembering the points where edges pass through them. */
final class Spans {
  private final Faces faces;
  /** Crossings of edges with planes: each is asked for by both faces at the edge, for every face of the plane. */
  private final EdgeMeetings known;
  private final List<ExactPoint> crossings = new ArrayList<>();

  Spans(Faces faces) {
    this.faces = faces;
    known = new EdgeMeetings(faces.halfEdges().size());
  }

  /** An axis along which the line common to two planes advances; the planes must not be parallel. */
  static int axisOf(Plane p, Plane q) {
    int best = -1;
    double length = -1;
    for (int k = 0; k < 3; k++) {
      double rough = Math.abs((double) p.normal((k + 1) % 3) * q.normal((k + 2) % 3)
          - (double) p.normal((k + 2) % 3) * q.normal((k + 1) % 3));
      if (rough > length && Plane.direction(p, q, k) != 0) {
        best = k;
        length = rough;
      }
    }
    return best;
  }

  /** What a plane cuts out of a face, in order along an axis; null where the face lies beside the plane. */
  Section section(Face face, int planeNumber, int axis) {
    return section(face, planeNumber, axis, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /**
   * The same, as far as it can have something in common with another section on the same line: what clearly lies beyond the
   * ends of that one is not worked out, and counts as one place far away. Null too where nothing is left.
   */
  Section section(Face face, int planeNumber, int axis, Section other) {
    return section(face, planeNumber, axis, other.low().rough(axis) - RoughStretch.APART,
        other.high().rough(axis) + RoughStretch.APART);
  }

  private Section section(Face face, int planeNumber, int axis, double least, double most) {
    Plane plane = faces.plane(planeNumber);
    List<Section.Place> places = null;
    EdgeBlocks blocks = face.blocks(faces);
    boolean isWhole = most == Double.POSITIVE_INFINITY;
    boolean comes = false;
    int end = 0;
    int sb = 0;
    for (int e = EdgeBlocks.next(blocks, 0, plane, axis, most); e < face.edges();
        e = EdgeBlocks.next(blocks, e + 1, plane, axis, most)) {
      int sa = e > 0 && e == end && face.from[e] == face.to[e - 1] ? sb : faces.side(face.from[e], plane);
      sb = faces.side(face.to[e], plane);
      end = e + 1;
      if (sa * sb > 0) {
        continue;
      }
      double at = sa * sb == 0 || isWhole ? least : roughCrossing(face.from[e], face.to[e], plane, axis);
      if (at < least) {
        comes = !comes;
      } else if (at <= most) {
        places = places == null ? new ArrayList<>(4) : places;
        add(places, face, e, sa, sb, planeNumber);
      }
    }
    if (places == null) {
      return comes ? Section.through(axis) : null;
    }
    return isWhole ? new Section(places, axis) : Section.part(places, axis, comes);
  }

  /** About where along an axis an edge passes through a plane; how near, {@link RoughStretch} says. */
  private double roughCrossing(int a, int b, Plane plane, int axis) {
    int start = faces.coordinate(a, axis);
    return start + faces.roughShare(a, b, plane) * (faces.coordinate(b, axis) - start);
  }

  private void add(List<Section.Place> places, Face face, int e, int sa, int sb, int planeNumber) {
    int a = face.from[e];
    int b = face.to[e];
    int across = face.across[e] < 0 ? -1 : faces.face(face.across[e]).plane;
    if (sa * sb < 0) {
      places.add(new Section.Place(crossing(face, e, planeNumber), face.first + e, true, true, false));
    } else if (sa == 0 && sb == 0) {
      if (across == planeNumber) {
        places.add(new Section.Place(faces.point(a), -1, false, false, true));
        places.add(new Section.Place(faces.point(b), -1, false, false, true));
      }
    } else if (sa == 0) {
      places.add(new Section.Place(faces.point(a).in(face.plane, across, planeNumber), -1, sb > 0, sb < 0, false));
    } else {
      places.add(new Section.Place(faces.point(b).in(face.plane, across, planeNumber), -1, sa > 0, sa < 0, false));
    }
  }

  private ExactPoint crossing(Face face, int e, int plane) {
    int twin = faces.halfEdges().twin(face.first + e);
    int edge = twin < 0 ? face.first + e : Math.min(twin, face.first + e);
    int number = known.number(edge, plane);
    if (number < 0) {
      number = known.add(edge, plane);
      int a = Math.min(face.from[e], face.to[e]);
      int b = Math.max(face.from[e], face.to[e]);
      crossings.add(ExactPoint.crossing(faces.x(a), faces.y(a), faces.z(a), faces.x(b), faces.y(b), faces.z(b),
          faces.plane(plane)).in(face.plane, face.across[e] < 0 ? -1 : faces.face(face.across[e]).plane, plane));
    }
    return crossings.get(number);
  }
}
