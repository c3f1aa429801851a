package outrigger.shapes.mesh.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Twins;
import outrigger.shapes.mesh.frame.TouchException;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.num.Place;

/** Sees to it that every edge of an outline has one that runs the other way, splitting edges at corners within them. */
final class EdgeMatcher {
  /** Lists of edges that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private final Outline outline;
  private final boolean soup;

  /**
   * For one outline.
   *
   * @param soup whether more than two faces may meet along an edge, to be parted when they are on the grid
   */
  EdgeMatcher(Outline outline, boolean soup) {
    this.outline = outline;
    this.soup = soup;
  }

  /**
   * Matches all edges.
   *
   * @throws TouchException if more than two faces meet along an edge
   */
  void match() {
    if (areTwins()) {
      return;
    }
    LongMap map = edgeMap();
    Set<Integer> corners = new HashSet<>();
    for (int k = 0; k < lists(); k++) {
      IntList edges = list(k);
      for (int i = 0; i < edges.size(); i += 2) {
        if (!isMatched(map, edges.get(i), edges.get(i + 1))) {
          corners.add(edges.get(i));
          corners.add(edges.get(i + 1));
        }
      }
    }
    if (!corners.isEmpty()) {
      split(corners, map);
      checkAll(edgeMap());
    }
  }

  /** Whether each edge has just one that runs the other way, and none the same way: nearly always so. */
  private boolean areTwins() {
    int[] starts = new int[lists() + 1];
    for (int k = 0; k < lists(); k++) {
      starts[k + 1] = starts[k] + list(k).size() / 2;
    }
    int[] from = new int[starts[lists()]];
    int[] to = new int[from.length];
    outline.workers().split(lists(), AT_ONCE, (first, end) -> {
      for (int k = first; k < end; k++) {
        IntList edges = list(k);
        for (int i = 0; i < edges.size(); i += 2) {
          from[starts[k] + i / 2] = edges.get(i);
          to[starts[k] + i / 2] = edges.get(i + 1);
        }
      }
    });
    for (int twin : Twins.of(from, to, outline.vertexCount(), outline.workers())) {
      if (twin < 0) {
        return false;
      }
    }
    return true;
  }

  /** How many lists of edges there are: one a group, and that of the pinned ones. */
  private int lists() {
    return outline.groups().size() + 1;
  }

  private IntList list(int k) {
    return k == outline.groups().size() ? outline.pinned() : outline.edges(outline.groups().get(k));
  }

  /** Whether an edge runs as often one way as the other. */
  private static boolean isMatched(LongMap map, int a, int b) {
    return map.get(LongMap.edge(b, a)) == map.get(LongMap.edge(a, b));
  }

  /** How many times, less one, an edge runs each way. */
  private LongMap edgeMap() {
    LongMap map = new LongMap(3 * outline.vertexCount());
    for (int k = 0; k < lists(); k++) {
      IntList edges = list(k);
      for (int i = 0; i < edges.size(); i += 2) {
        long edge = LongMap.edge(edges.get(i), edges.get(i + 1));
        int before = map.put(edge, 0);
        if (before >= 0 && soup) {
          map.put(edge, before + 1);
        } else if (before >= 0) {
          ExactPoint a = outline.point(edges.get(i));
          ExactPoint b = outline.point(edges.get(i + 1));
          throw TouchException.along(place(a), place(b));
        }
      }
    }
    return map;
  }

  private static Place place(ExactPoint p) {
    return new Place((int) p.grid(0), (int) p.grid(1), (int) p.grid(2));
  }

  private void checkAll(LongMap map) {
    for (int k = 0; k < lists(); k++) {
      IntList edges = list(k);
      for (int i = 0; i < edges.size(); i += 2) {
        if (!isMatched(map, edges.get(i), edges.get(i + 1))) {
          throw new IllegalStateException("an edge of the result has no partner near "
              + place(outline.point(edges.get(i))).mm() + " and " + place(outline.point(edges.get(i + 1))).mm());
        }
      }
    }
  }

  /** Splits edges that are not matched at those of some corners that lie within them. */
  private void split(Set<Integer> corners, LongMap map) {
    List<Integer> byX = new ArrayList<>(corners);
    byX.sort(Comparator.<Integer>comparingDouble(c -> outline.point(c).rough(0)).thenComparingInt(c -> c));
    for (int k = 0; k < outline.groups().size(); k++) {
      int g = outline.groups().get(k);
      IntList edges = outline.edges(g);
      IntList result = new IntList();
      for (int i = 0; i < edges.size(); i += 2) {
        int a = edges.get(i);
        int b = edges.get(i + 1);
        if (isMatched(map, a, b)) {
          result.add(a);
          result.add(b);
        } else {
          splitEdge(a, b, within(a, b, byX, outline.plane(g)), result);
        }
      }
      outline.replace(g, result);
    }
  }

  private void splitEdge(int a, int b, List<Integer> corners, IntList result) {
    ExactPoint pa = outline.point(a);
    int axis = widest(pa, outline.point(b));
    int way = ExactPoint.compare(pa, outline.point(b), axis);
    corners.sort((c, d) -> -way * ExactPoint.compare(outline.point(c), outline.point(d), axis));
    int from = a;
    for (int c : corners) {
      result.add(from);
      result.add(c);
      from = c;
    }
    result.add(from);
    result.add(b);
  }

  /** The corners, given in order of x, that lie strictly between two others on their line. */
  private List<Integer> within(int a, int b, List<Integer> byX, Plane plane) {
    ExactPoint pa = outline.point(a);
    ExactPoint pb = outline.point(b);
    double lo = Math.min(pa.rough(0), pb.rough(0)) - 1;
    double hi = Math.max(pa.rough(0), pb.rough(0)) + 1;
    int first = 0;
    int end = byX.size();
    while (first < end) {
      int mid = (first + end) >>> 1;
      if (outline.point(byX.get(mid)).rough(0) < lo) {
        first = mid + 1;
      } else {
        end = mid;
      }
    }
    List<Integer> found = new ArrayList<>();
    for (int i = first; i < byX.size() && outline.point(byX.get(i)).rough(0) <= hi; i++) {
      int c = byX.get(i);
      if (c != a && c != b && isWithin(outline.point(c), pa, pb, plane)) {
        found.add(c);
      }
    }
    return found;
  }

  private static boolean isWithin(ExactPoint c, ExactPoint a, ExactPoint b, Plane plane) {
    int axis = widest(a, b);
    return ExactPoint.compare(a, c, axis) * ExactPoint.compare(c, b, axis) > 0 && c.side(plane) == 0
        && ExactPoint.turn(a, b, c, plane.firstAxis(), plane.secondAxis()) == 0;
  }

  /** The axis along which two points are farthest apart, by doubles, and apart at all. */
  private static int widest(ExactPoint a, ExactPoint b) {
    int best = 0;
    for (int k = 1; k < 3; k++) {
      if (ExactPoint.compare(a, b, best) == 0
          || Math.abs(a.rough(k) - b.rough(k)) > Math.abs(a.rough(best) - b.rough(best))) {
        best = k;
      }
    }
    return best;
  }
}
