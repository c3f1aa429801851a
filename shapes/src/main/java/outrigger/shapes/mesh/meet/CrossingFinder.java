package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  /** Farther apart, in grid units, than rounding can hide: a place in doubles is within 2^-24 of itself. */
  private static final double APART = 0x1p-20;

  private final Faces faces;
  private final Hiding hiding;
  private final Map<Meeting, ExactPoint> meetings = new HashMap<>();
  /** Of each stretch on a crowded face what of it is hidden; none on other faces. */
  private HiddenParts[] hidden = {};

  /** Three planes, in order of their numbers. */
  private record Meeting(int p, int q, int r) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Meeting m && p == m.p && q == m.q && r == m.r;
    }

    /** Spread wide: of numbers that run up to a thousand, what a record makes up lets hundreds of triples fall together. */
    @Override
    public int hashCode() {
      int hash = (p * 0x9E3779B1 ^ q) * 0x9E3779B1 ^ r;
      return hash * 0x9E3779B1;
    }
  }

  private CrossingFinder(Faces faces, Hiding hiding) {
    this.faces = faces;
    this.hiding = hiding;
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
          finder.examine(clean.get(i), onFace.get(clean.get(i)), contacts);
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

  private void examine(int f, List<Stretch> stretches, Contacts contacts) {
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
      stretches.get(i).cross(f, found.get(i));
    }
  }

  private boolean examineAll(int f, List<Stretch> stretches, List<List<Stretch.Crossing>> found) {
    for (int i = 0; i < stretches.size(); i++) {
      for (int j = i + 1; j < stretches.size(); j++) {
        if (!examine(f, stretches, i, j, found)) {
          return false;
        }
      }
    }
    return true;
  }

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
        bound(s, start, end, boxes, 6 * count);
        shown[count++] = i;
      }
    }
    boolean clean = BoxTree.of(Arrays.copyOf(boxes, 6 * count)).selfPairs((i, j) -> {
      Interrupt.check();
      return examine(f, stretches, shown[i], shown[j], found);
    });
    hidden = new HiddenParts[0];
    return clean;
  }

  /** The box, with room to spare, of what of a stretch lies between two shares of the way. */
  private static void bound(Stretch s, double start, double end, int[] boxes, int at) {
    for (int k = 0; k < 3; k++) {
      double from = s.from.at.rough(k);
      double way = s.to.at.rough(k) - from;
      double a = start == 0 ? s.from.at.grid(k) : from + start * way;
      double b = end == 1 ? s.to.at.grid(k) : from + end * way;
      boxes[at + k] = (int) Math.floor(Math.min(a, b)) - 1;
      boxes[at + 3 + k] = (int) Math.ceil(Math.max(a, b)) + 1;
    }
  }

  /** Whether a stretch is seen to be hidden where a plane that parts its ends meets it. */
  private boolean isHidden(HiddenParts parts, Stretch s, Plane plane) {
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
  private boolean examine(int f, List<Stretch> stretches, int i, int j, List<List<Stretch.Crossing>> found) {
    Stretch s = stretches.get(i);
    Stretch t = stretches.get(j);
    Face a = faces.face(s.other(f));
    Face b = faces.face(t.other(f));
    if (a.operand == b.operand || isApart(s, t)) {
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
    if (hidden.length > 0 && (isHidden(hidden[i], s, q) || isHidden(hidden[j], t, p))) {
      return true;
    }
    ExactPoint at = meeting(own, a.plane, b.plane);
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

  /** Whether the boxes of two stretches lie farther apart than rounding could hide. */
  private static boolean isApart(Stretch s, Stretch t) {
    for (int k = 0; k < 3; k++) {
      double sa = s.from.at.rough(k);
      double sb = s.to.at.rough(k);
      double ta = t.from.at.rough(k);
      double tb = t.to.at.rough(k);
      if (Math.max(sa, sb) < Math.min(ta, tb) - APART || Math.max(ta, tb) < Math.min(sa, sb) - APART) {
        return true;
      }
    }
    return false;
  }

  /** Whether an end of a stretch lies on another, and is not hidden. */
  private boolean touches(int f, Stretch s, ExactPoint end, Stretch other, int axis) {
    return isWithin(end, other, axis) && !isHidden(f, s, other, end, end);
  }

  private boolean isHidden(int f, Stretch s, Stretch t, ExactPoint from, ExactPoint to) {
    return hiding.hides(f, s.other(f), from, to) || hiding.hides(f, t.other(f), from, to);
  }

  private static boolean isWithin(ExactPoint p, Stretch s, int axis) {
    return ExactPoint.compare(s.from.at, p, axis) * ExactPoint.compare(p, s.to.at, axis) >= 0;
  }

  /** Whether two stretches of one line overlap, and not all of that is hidden. */
  private boolean overlap(int f, Stretch s, Stretch t, int axis) {
    ExactPoint low = later(low(s, axis), low(t, axis), axis);
    ExactPoint high = sooner(high(s, axis), high(t, axis), axis);
    return ExactPoint.compare(low, high, axis) <= 0 && !isHidden(f, s, t, low, high);
  }

  private static ExactPoint low(Stretch s, int axis) {
    return sooner(s.from.at, s.to.at, axis);
  }

  private static ExactPoint high(Stretch s, int axis) {
    return later(s.from.at, s.to.at, axis);
  }

  private static ExactPoint later(ExactPoint p, ExactPoint q, int axis) {
    return ExactPoint.compare(p, q, axis) >= 0 ? p : q;
  }

  private static ExactPoint sooner(ExactPoint p, ExactPoint q, int axis) {
    return ExactPoint.compare(p, q, axis) <= 0 ? p : q;
  }

  private ExactPoint meeting(int p, int q, int r) {
    int low = Math.min(p, Math.min(q, r));
    int high = Math.max(p, Math.max(q, r));
    return meetings.computeIfAbsent(new Meeting(low, p + q + r - low - high, high),
        m -> ExactPoint.meeting(faces.plane(m.p), faces.plane(m.q), faces.plane(m.r)).in(m.p, m.q, m.r));
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
