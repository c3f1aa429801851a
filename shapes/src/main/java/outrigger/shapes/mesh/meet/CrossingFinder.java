package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.inside.HiddenParts;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Shares;

/**
 * Finds where the stretches on one face cross: there three faces of three operands meet.
 *
 * <p>A face on which stretches of different operands touch instead, or three cross in one point, is marked for its sheet:
 * four planes meet there by chance or on purpose, and the walk along the stretches could not tell in which order. Faces are
 * examined side by side, each thread with a finder of its own.
 */
final class CrossingFinder {
  /** Up to how many stretches all pairs are looked at without a tree of their boxes. Own choice, not sharp. */
  private static final int FEW = 12;
  /**
   * From how many stretches on it is first looked what of each is hidden. Crossings grow with the square of the stretches,
   * and where many crowd nearly all are hidden; on fewer the look costs more than it saves. Not sharp.
   */
  private static final int CROWD = 64;

  private final Faces faces;
  private final Hiding hiding;
  private final PlaneMeetings meetings;
  /** Of each stretch on the crowded face that is examined what of it is hidden; none on other faces. */
  private HiddenParts[] hidden = {};

  private CrossingFinder(Faces faces, Hiding hiding) {
    this.faces = faces;
    this.hiding = hiding;
    meetings = new PlaneMeetings(faces);
  }

  /** Finds all crossings of the stretches that faces without a sheet need, and marks faces that turn out to need one. */
  static void find(Faces faces, Hiding hiding, Contacts contacts, List<Stretch> stretches) {
    List<List<Stretch>> onFace = onFaces(faces, stretches);
    IntList clean = new IntList();
    for (int f = 0; f < faces.faceCount(); f++) {
      if (onFace.get(f) != null && !contacts.needsSheet(f)) {
        clean.add(f);
      }
    }
    Shares shares = Shares.of(faces.workers(), clean.size(), i -> onFace.get(clean.get(i)).size());
    shares.<Void>each(() -> {
      CrossingFinder finder = new CrossingFinder(faces, hiding);
      return (from, to) -> {
        for (int i = from; i < to; i++) {
          Interrupt.check();
          finder.examineFace(clean.get(i), onFace.get(clean.get(i)), contacts);
        }
        return null;
      };
    });
  }

  private static List<List<Stretch>> onFaces(Faces faces, List<Stretch> stretches) {
    List<List<Stretch>> onFace = Lists.none(faces.faceCount());
    faces.workers().parts(faces.faceCount(), (from, to) -> {
      for (Stretch s : stretches) {
        if (s.f >= from && s.f < to) {
          Lists.add(s, s.f, onFace);
        }
        if (s.g >= from && s.g < to) {
          Lists.add(s, s.g, onFace);
        }
      }
    });
    return onFace;
  }

  private void examineFace(int f, List<Stretch> stretches, Contacts contacts) {
    List<List<Stretch.Crossing>> found = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      found.add(List.of());
    }
    boolean clean = stretches.size() <= FEW ? examineAll(f, stretches, found) : examineNear(f, stretches, found);
    for (int i = 0; clean && i < found.size(); i++) {
      clean = sort(f, stretches.get(i), found.get(i));
    }
    if (!clean) {
      contacts.mark(f);
      return;
    }
    for (int i = 0; i < found.size(); i++) {
      stretches.get(i).setCrossings(f, found.get(i));
    }
  }

  /** Looks at all pairs of stretches; false if two touch otherwise than by crossing. */
  private boolean examineAll(int f, List<Stretch> stretches, List<List<Stretch.Crossing>> found) {
    for (int i = 0; i < stretches.size(); i++) {
      for (int j = i + 1; j < stretches.size(); j++) {
        if (!examinePair(f, stretches, i, j, found)) {
          return false;
        }
      }
    }
    return true;
  }

  /** The same for pairs whose boxes overlap and, on a crowded face, of which not all is hidden. */
  private boolean examineNear(int f, List<Stretch> stretches, List<List<Stretch.Crossing>> found) {
    int n = stretches.size();
    int[] boxes = new int[6 * n];
    hidden = new HiddenParts[n < CROWD ? 0 : n];
    int[] shown = new int[n];
    int count = 0;
    for (int i = 0; i < n; i++) {
      Stretch s = stretches.get(i);
      double start = 0;
      double end = 1;
      if (hidden.length > 0) {
        hidden[i] = hiding.hiddenParts(f, s.other(f), s.from.at, s.to.at);
        start = hidden[i].start();
        end = start < 1 ? hidden[i].end() : 0;
      }
      if (start < end) {
        s.bound(start, end, boxes, 6 * count);
        shown[count++] = i;
      }
    }
    boolean clean = BoxTree.of(Arrays.copyOf(boxes, 6 * count)).selfPairs((i, j) -> {
      Interrupt.check();
      return examinePair(f, stretches, shown[i], shown[j], found);
    });
    hidden = new HiddenParts[0];
    return clean;
  }

  /** Whether a stretch is seen to be hidden where a plane that parts its ends meets it. */
  private boolean isHiddenAt(Plane plane, Stretch s, HiddenParts parts) {
    double first = 0;
    double last = 0;
    double size = 0;
    for (int k = 0; k < 3; k++) {
      first += (double) plane.normal(k) * s.from.at.rough(k);
      last += (double) plane.normal(k) * s.to.at.rough(k);
      size += Math.abs((double) plane.normal(k));
    }
    first -= plane.roughD();
    last -= plane.roughD();
    // as in Walls: ends are within 2^-24, so each offset is within 1.5 * 2^-24 of that sum
    double doubt = size * 0x1p-23;
    double apart = Math.abs(first - last);
    if (apart < 8 * doubt) {
      return false;
    }
    double share = first / (first - last);
    double off = 2 * doubt / apart;
    return parts.holds(share - off, share + off);
  }

  /** Looks at two stretches on a face; false if they touch otherwise than by crossing. */
  private boolean examinePair(int f, List<Stretch> stretches, int i, int j, List<List<Stretch.Crossing>> found) {
    Stretch s = stretches.get(i);
    Stretch t = stretches.get(j);
    Face a = faces.face(s.other(f));
    Face b = faces.face(t.other(f));
    if (a.operand == b.operand || s.isApart(t)) {
      return true;
    }
    int own = faces.face(f).plane;
    if (a.plane == b.plane) {
      return !overlap(f, s, t, Spans.axisOf(faces.plane(own), faces.plane(a.plane)));
    }
    Plane p = faces.plane(a.plane);
    Plane q = faces.plane(b.plane);
    int sFrom = s.from.at.side(q);
    int sTo = s.to.at.side(q);
    if (sFrom * sTo > 0) {
      return true;
    }
    int tFrom = t.from.at.side(p);
    int tTo = t.to.at.side(p);
    if (tFrom * tTo > 0) {
      return true;
    }
    if (sFrom * sTo == 0 || tFrom * tTo == 0) {
      int along = Spans.axisOf(faces.plane(own), p);
      int across = Spans.axisOf(faces.plane(own), q);
      return !(sFrom == 0 && touches(f, s, s.from.at, t, across) || sTo == 0 && touches(f, s, s.to.at, t, across)
          || tFrom == 0 && touches(f, t, t.from.at, s, along) || tTo == 0 && touches(f, t, t.to.at, s, along));
    }
    if (hidden.length > 0 && (isHiddenAt(q, s, hidden[i]) || isHiddenAt(p, t, hidden[j]))) {
      return true;
    }
    ExactPoint at = meetings.of(own, a.plane, b.plane);
    add(found, i, new Stretch.Crossing(at, b.operand, b.up == sFrom < 0 ? -1 : 1));
    add(found, j, new Stretch.Crossing(at, a.operand, a.up == tFrom < 0 ? -1 : 1));
    return true;
  }

  private static void add(List<List<Stretch.Crossing>> found, int i, Stretch.Crossing crossing) {
    if (found.get(i).isEmpty()) {
      found.set(i, new ArrayList<>(2));
    }
    found.get(i).add(crossing);
  }

  /** Whether an end of a stretch lies on another, and is not hidden. */
  private boolean touches(int f, Stretch s, ExactPoint end, Stretch other, int axis) {
    return other.holds(end, axis) && !isHidden(f, s, other, end, end);
  }

  /** Whether what two stretches on a face have in common, from one point to another, is hidden. */
  private boolean isHidden(int f, Stretch s, Stretch t, ExactPoint from, ExactPoint to) {
    return hiding.hides(f, s.other(f), from, to) || hiding.hides(f, t.other(f), from, to);
  }

  /** Whether two stretches of one line overlap, and not all of that is hidden. */
  private boolean overlap(int f, Stretch s, Stretch t, int axis) {
    ExactPoint low = Stretch.later(s.low(axis), t.low(axis), axis);
    ExactPoint high = Stretch.sooner(s.high(axis), t.high(axis), axis);
    return ExactPoint.compare(low, high, axis) <= 0 && !isHidden(f, s, t, low, high);
  }

  /** Brings crossings in order; false if two fall together. */
  private boolean sort(int f, Stretch stretch, List<Stretch.Crossing> crossings) {
    if (crossings.size() < 2) {
      return true;
    }
    int axis = Spans.axisOf(faces.plane(faces.face(stretch.f).plane), faces.plane(faces.face(stretch.g).plane));
    int way = ExactPoint.compare(stretch.from.at, stretch.to.at, axis);
    crossings.sort((c, d) -> -way * ExactPoint.compare(c.at(), d.at(), axis));
    for (int i = 1; i < crossings.size(); i++) {
      ExactPoint at = crossings.get(i).at();
      if (ExactPoint.compare(crossings.get(i - 1).at(), at, axis) == 0 && !hiding.hides(f, stretch.other(f), at, at)) {
        return false;
      }
    }
    return true;
  }
}
