package outrigger.shapes.mesh.triangulation;

import java.util.ArrayDeque;
import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;

/**
 * Lays segments into a {@link Triangulation} as marked edges.
 *
 * <p>Segments may share pieces, cross and end on each other: where one crosses a marked edge, the exact point of
 * crossing becomes a vertex. Each marked edge carries the list of all segments that run along it.
 */
public final class ConstrainedTriangulation {
  /** Gives the exact point where two segments that properly cross meet. */
  public interface Crossing {
    ExactPoint of(int segment, int other);
  }

  /** For segments whose lines have no number. */
  static final int NO_LINE = -1;

  private final Triangulation tri = new Triangulation();
  private Crossing crossing;
  /** Lists of segments, each node a segment and the rest of its list; 0 is the empty list. */
  private int[] segment = new int[16];
  private int[] rest = new int[16];
  private int nodes = 1;
  /** Edges in the way of the piece that is being laid, by their ends: flips give half-edges other numbers. */
  private final ArrayDeque<int[]> crossed = new ArrayDeque<>();

  /** Starts anew on a plane with these axes. */
  public void reset(int firstAxis, int secondAxis, int plane, Crossing by) {
    tri.reset(firstAxis, secondAxis, plane);
    crossing = by;
    nodes = 1;
  }

  /** The triangulation that segments are laid into. */
  public Triangulation triangulation() {
    return tri;
  }

  /** Segment of a list node. */
  public int segment(int node) {
    return segment[node];
  }

  /** The list after a node; 0 at its end. */
  public int rest(int node) {
    return rest[node];
  }

  /**
   * Lays a segment between two vertices.
   *
   * @param id number of the segment
   * @param line number of the line it lies on, which vertices may be known to lie on; or {@link #NO_LINE}
   */
  public void lay(int from, int to, int id, int line) {
    int a = from;
    while (a != to) {
      a = step(a, to, id, line);
    }
  }

  /** Turn of a third vertex against a segment's way, without arithmetic where it is known to lie on its line. */
  private int turn(int a, int b, int c, int line) {
    return tri.points().isKnownOn(c, line) ? 0 : tri.turn(a, b, c);
  }

  /** Lays the first piece of a segment and returns the vertex it ends in. */
  private int step(int a, int b, int id, int line) {
    int h = wedge(a, b, line);
    int first = tri.destination(h);
    if (first == b || turn(a, b, first, line) == 0) {
      append(h, id);
      return first;
    }
    crossed.clear();
    int e = Triangulation.next(h);
    while (true) {
      if (tri.mark(e) != Triangulation.FREE) {
        int z = tri.insertOn(e, crossing.of(segment[Math.abs(tri.mark(e))], id));
        if (crossed.isEmpty()) {
          append(tri.find(a, z), id);
          tri.legalize();
        } else {
          tri.legalize();
          lay(a, z, id, line);
        }
        return z;
      }
      crossed.add(new int[] {tri.origin(e), tri.destination(e)});
      int back = tri.twin(e);
      int apex = tri.origin(Triangulation.previous(back));
      int side = turn(a, b, apex, line);
      if (side == 0) {
        clear(a, apex);
        append(tri.find(a, apex), id);
        tri.legalize();
        return apex;
      }
      // e ran from its right end to its left one; so does the edge it leaves the next triangle by
      e = side > 0 ? Triangulation.next(back) : Triangulation.previous(back);
    }
  }

  /**
   * Half-edge a -> x at a whose end lies on the way to b, or to the right of it while the next one's lies to the left.
   */
  private int wedge(int a, int b, int line) {
    int h = tri.out(a);
    while (true) {
      int x = tri.destination(h);
      if (x == b) {
        return h;
      }
      int sx = turn(a, b, x, line);
      if (sx == 0 && isAhead(a, b, x)) {
        return h;
      }
      if (sx < 0) {
        int y = tri.origin(Triangulation.previous(h));
        if (turn(a, b, y, line) > 0) {
          return h;
        }
      }
      h = tri.twin(Triangulation.previous(h));
    }
  }

  /** Of three points in line: seen along the axis on which the first two are farther apart, where doubles tell. */
  private boolean isAhead(int a, int b, int x) {
    ExactPoint pa = tri.point(a);
    ExactPoint pb = tri.point(b);
    int u = tri.points().u();
    int v = tri.points().v();
    int axis = Math.abs(pb.rough(u) - pa.rough(u)) >= Math.abs(pb.rough(v) - pa.rough(v)) ? u : v;
    int way = ExactPoint.compare(pb, pa, axis);
    if (way == 0) {
      axis = u + v - axis;
      way = ExactPoint.compare(pb, pa, axis);
    }
    return way == ExactPoint.compare(tri.point(x), pa, axis);
  }

  /** Flips crossed edges away until a and b are joined. */
  private void clear(int a, int b) {
    while (!crossed.isEmpty()) {
      int[] pair = crossed.poll();
      int h = tri.find(pair[0], pair[1]);
      if (!tri.isConvex(h)) {
        crossed.add(pair);
        continue;
      }
      int c = tri.origin(Triangulation.previous(h));
      int d = tri.origin(Triangulation.previous(tri.twin(h)));
      tri.flip(h);
      if (c != a && c != b && d != a && d != b && tri.turn(a, b, c) * tri.turn(a, b, d) < 0) {
        crossed.add(new int[] {c, d});
      }
    }
  }

  /** Puts a segment at the head of the list that a half-edge is marked with. */
  private void append(int h, int id) {
    if (nodes == segment.length) {
      segment = Arrays.copyOf(segment, 2 * nodes);
      rest = Arrays.copyOf(rest, 2 * nodes);
    }
    segment[nodes] = id;
    rest[nodes] = Math.abs(tri.mark(h));
    tri.setMark(h, nodes++);
  }
}
