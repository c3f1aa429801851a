package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.exact.Sign;

/**
 * Finds where a face meets a plane that is not its own.
 *
 * <p>Each edge of the face is looked at by the sides of its two ends, of nine cases: where it changes side, the face
 * begins or ends along the line there; where it only starts from the line, it does so on one side of the line alone.
 * Counting both sides of the line apart makes touching, standing on and crossing one rule.
 */
final class Spans {
  private final Faces faces;
  /** Crossings of edges with planes off the grid: each is asked for by both faces at the edge, for two sheets. */
  private final Map<Crossing, ExactPoint> crossings = new HashMap<>();

  private record Crossing(long edge, int plane) {
    /** Mixed well: the two halves of an edge's number are alike. */
    @Override
    public int hashCode() {
      long h = edge * 0x9E3779B97F4A7C15L + plane * 0xC2B2AE3D27D4EB4FL;
      return (int) (h >>> 32);
    }
  }

  private record Event(ExactPoint at, boolean above, boolean below, boolean own) {}

  Spans(Faces faces) {
    this.faces = faces;
  }

  /** An axis along which the line common to two planes advances; the planes must not be parallel. */
  static int axisOf(Plane p, Plane q) {
    int best = -1;
    double length = -1;
    for (int k = 0; k < 3; k++) {
      double rough = Math.abs((double) p.normal((k + 1) % 3) * q.normal((k + 2) % 3)
          - (double) p.normal((k + 2) % 3) * q.normal((k + 1) % 3));
      if (rough > length && direction(p, q, k) != 0) {
        best = k;
        length = rough;
      }
    }
    return best;
  }

  /** Sign of the component of p's normal x q's normal along an axis. */
  static int direction(Plane p, Plane q, int axis) {
    int i = (axis + 1) % 3;
    int j = (axis + 2) % 3;
    return Sign.minor(p.normal(i), p.normal(j), q.normal(i), q.normal(j));
  }

  /** Stretches of a face on a plane, in order along an axis. */
  List<Span> of(Face face, int planeNumber, int axis) {
    Plane plane = faces.plane(planeNumber);
    List<Event> events = events(face, planeNumber, plane);
    if (events.size() < 2) {
      return List.of();
    }
    events.sort((p, q) -> ExactPoint.compare(p.at, q.at, axis));
    List<Span> spans = new ArrayList<>(events.size() / 2);
    boolean above = false;
    boolean below = false;
    boolean own = false;
    for (int i = 0; i + 1 < events.size(); i++) {
      Event event = events.get(i);
      above ^= event.above;
      below ^= event.below;
      own ^= event.own;
      ExactPoint next = events.get(i + 1).at;
      if ((above || below) && ExactPoint.compare(event.at, next, axis) < 0) {
        spans.add(new Span(event.at, next, above, below, own));
      }
    }
    return spans;
  }

  private List<Event> events(Face face, int planeNumber, Plane plane) {
    List<Event> events = new ArrayList<>(4);
    for (int e = 0; e < face.edges(); e++) {
      int a = face.from[e];
      int b = face.to[e];
      int sa = faces.side(a, plane);
      int sb = faces.side(b, plane);
      int across = face.across[e] < 0 ? -1 : faces.face(face.across[e]).plane;
      if (sa * sb < 0) {
        events.add(new Event(crossing(face, e, planeNumber), true, true, false));
      } else if (sa == 0 && sb == 0) {
        if (across == planeNumber) {
          events.add(new Event(faces.point(a), false, false, true));
          events.add(new Event(faces.point(b), false, false, true));
        }
      } else if (sa == 0) {
        events.add(new Event(faces.point(a).in(face.plane, across, planeNumber), sb > 0, sb < 0, false));
      } else if (sb == 0) {
        events.add(new Event(faces.point(b).in(face.plane, across, planeNumber), sa > 0, sa < 0, false));
      }
    }
    return events;
  }

  private ExactPoint crossing(Face face, int e, int plane) {
    int a = Math.min(face.from[e], face.to[e]);
    int b = Math.max(face.from[e], face.to[e]);
    return crossings.computeIfAbsent(new Crossing(LongMap.edge(a, b), plane), c -> {
      ExactPoint at = ExactPoint.crossing(faces.x(a), faces.y(a), faces.z(a), faces.x(b), faces.y(b), faces.z(b),
          faces.plane(plane));
      return at.in(face.plane, face.across[e] < 0 ? -1 : faces.face(face.across[e]).plane, plane);
    });
  }
}
