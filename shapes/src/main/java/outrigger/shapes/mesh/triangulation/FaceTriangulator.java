package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Shares;

/**
 * Cuts the faces of one plane and sense into facets: constrained Delaunay, no vertex added.
 *
 * <p>A face of n corners with h holes gives n + 2 h - 2 facets, the fewest there can be without new vertices. Faces are cut
 * side by side, each thread with a triangulator of its own.
 */
public final class FaceTriangulator {
  private static final ConstrainedTriangulation.Crossing NONE = (s, t) -> {
    throw new IllegalStateException("the outline of a face crosses itself");
  };

  /** Ends of the edges of a group that is one quadrangle. */
  private static final int QUADRANGLE = 8;

  private final Outline outline;
  private final FaceSweep sweep = new FaceSweep();
  private final ConstrainedTriangulation marks = new ConstrainedTriangulation();
  /** Facet corners of this run so far. */
  private final IntList corners = new IntList();
  /** Of each vertex of the outline the corner or vertex it is in the triangulation last made with it. */
  private final int[] place;

  private FaceTriangulator(Outline outline) {
    this.outline = outline;
    place = new int[outline.vertexCount()];
  }

  /** All facets of all groups, three vertices each, counter-clockwise seen from outside, in the order of the groups. */
  public static int[] triangulate(Outline outline) {
    IntList groups = outline.groups();
    List<int[]> runs = Shares.of(outline.workers(), groups.size(), i -> outline.edges(groups.get(i)).size()).each(() -> {
      FaceTriangulator own = new FaceTriangulator(outline);
      return own::triangulate;
    });
    return joined(runs);
  }

  private static int[] joined(List<int[]> runs) {
    int[] all = new int[runs.stream().mapToInt(run -> run.length).sum()];
    int size = 0;
    for (int[] run : runs) {
      System.arraycopy(run, 0, all, size, run.length);
      size += run.length;
    }
    return all;
  }

  /** The facets of some of the groups. */
  private int[] triangulate(int first, int end) {
    corners.clear();
    for (int i = first; i < end; i++) {
      int group = outline.groups().get(i);
      Interrupt.check();
      IntList edges = outline.edges(group);
      if (edges.size() == Outline.TRIANGLE) {
        addTriangle(edges);
      } else if (edges.size() != QUADRANGLE || !addQuadrangle(group, edges)) {
        addFaces(group, edges);
      }
    }
    return corners.toArray();
  }

  private void addTriangle(IntList edges) {
    int a = edges.get(0);
    int b = edges.get(1);
    add(a, b, edges.get(2) == b ? edges.get(3) : edges.get(5));
  }

  /** Cuts one convex quadrangle along its better diagonal; false where the edges are something else. */
  private boolean addQuadrangle(int group, IntList edges) {
    int[] loop = new int[4];
    loop[0] = edges.get(0);
    for (int i = 1; i < 4; i++) {
      loop[i] = after(edges, loop[i - 1]);
    }
    if (after(edges, loop[3]) != loop[0] || loop[2] == loop[0] || loop[3] == loop[1]) {
      return false;
    }
    Plane plane = outline.plane(group);
    int u = plane.firstAxis();
    int v = plane.secondAxis();
    int way = Group.isUp(group) ? 1 : -1;
    for (int i = 0; i < 4; i++) {
      if (way * ExactPoint.turn(point(loop, i), point(loop, i + 1), point(loop, i + 2), u, v) <= 0) {
        return false;
      }
    }
    int first = diagonal(loop, u, v, way);
    add(loop[first], loop[first + 1], loop[first + 2]);
    add(loop[first + 2], loop[(first + 3) % 4], loop[first]);
    return true;
  }

  /** Corner 0 or 1 that the better diagonal starts at; of four on one circle as {@link PlanarPoints#isInCircle} has it. */
  private int diagonal(int[] loop, int u, int v, int way) {
    int side = way * Sign.inCircle(point(loop, 0).grid(u), point(loop, 0).grid(v), point(loop, 1).grid(u),
        point(loop, 1).grid(v), point(loop, 2).grid(u), point(loop, 2).grid(v), point(loop, 3).grid(u),
        point(loop, 3).grid(v));
    if (side != 0) {
      return side > 0 ? 1 : 0;
    }
    int least = 0;
    for (int i = 1; i < 4; i++) {
      least = LoopOrder.compare(point(loop, i), point(loop, least), u, v) < 0 ? i : least;
    }
    return least % 2;
  }

  private ExactPoint point(int[] loop, int i) {
    return outline.point(loop[i % loop.length]);
  }

  private static int after(IntList edges, int vertex) {
    for (int i = 0; i < edges.size(); i += 2) {
      if (edges.get(i) == vertex) {
        return edges.get(i + 1);
      }
    }
    throw new IllegalStateException("an outline ends");
  }

  private void addFaces(int group, IntList edges) {
    int[] after = new int[edges.size() / 2];
    for (int i = 0; i < after.length; i++) {
      place[edges.get(2 * i)] = i;
    }
    for (int i = 0; i < after.length; i++) {
      if (place[edges.get(2 * i)] != i) {
        addTouching(group, edges);
        return;
      }
      // an outline is closed: where an edge ends another starts
      after[i] = place[edges.get(2 * i + 1)];
    }
    Plane plane = outline.plane(group);
    Triangulation tri = sweep.cut(after, i -> outline.point(edges.get(2 * i)), plane.firstAxis(), plane.secondAxis(),
        Group.plane(group));
    for (int t = 0; t < tri.triangleCount(); t++) {
      add(group, tri, t, vertex -> edges.get(2 * sweep.corner(vertex)));
    }
  }

  private void add(int group, Triangulation tri, int t, IntUnaryOperator vertex) {
    int h = Triangulation.edge(t);
    int b = vertex.applyAsInt(tri.origin(h + 1));
    int c = vertex.applyAsInt(tri.origin(h + 2));
    add(vertex.applyAsInt(tri.origin(h)), Group.isUp(group) ? b : c, Group.isUp(group) ? c : b);
  }

  /** Faces with a corner at which loops meet. */
  private void addTouching(int group, IntList given) {
    Plane plane = outline.plane(group);
    int u = plane.firstAxis();
    int v = plane.secondAxis();
    marks.reset(u, v, Group.plane(group), NONE);
    Triangulation tri = marks.triangulation();
    IntList edges = hasRounded(given) ? LoopOrder.of(outline, given, u, v) : given;
    int[] number = new int[edges.size() / 2 + 3];
    Arrays.fill(number, -1);
    int[] starts = tri.insertSpread(edges.size() / 2, i -> insert(edges.get(2 * i), number));
    for (int i = 0; i < starts.length; i++) {
      marks.lay(starts[i], place[edges.get(2 * i + 1)], 2 * i, ConstrainedTriangulation.NO_LINE);
    }
    boolean[] inside = inside(tri);
    for (int t = 0; t < tri.triangleCount(); t++) {
      if (inside[t]) {
        add(group, tri, t, vertex -> number[vertex]);
      }
    }
  }

  /** Vertices of the outline lie in different places: no point need be compared. */
  private int insert(int vertex, int[] number) {
    if (place[vertex] >= number.length || number[place[vertex]] != vertex) {
      place[vertex] = marks.triangulation().insertNew(outline.point(vertex));
      number[place[vertex]] = vertex;
    }
    return place[vertex];
  }

  /** The circle test takes rounded corners: among those the facets depend on the order in which they come. */
  private boolean hasRounded(IntList edges) {
    for (int i = 0; i < edges.size(); i += 2) {
      if (!outline.point(edges.get(i)).isOnGrid()) {
        return true;
      }
    }
    return false;
  }

  private void add(int a, int b, int c) {
    corners.add(a);
    corners.add(b);
    corners.add(c);
  }

  /** Triangles that an odd number of marked edges parts from the outside. */
  static boolean[] inside(Triangulation tri) {
    int n = tri.triangleCount();
    boolean[] inside = new boolean[n];
    boolean[] seen = new boolean[n];
    int[] queue = new int[n];
    int tail = 0;
    queue[tail++] = Triangulation.triangle(tri.out(0));
    seen[queue[0]] = true;
    for (int head = 0; head < tail; head++) {
      int t = queue[head];
      for (int h = Triangulation.edge(t); h < Triangulation.edge(t) + 3; h++) {
        int next = tri.twin(h) < 0 ? t : Triangulation.triangle(tri.twin(h));
        if (!seen[next]) {
          seen[next] = true;
          inside[next] = inside[t] ^ tri.mark(h) != Triangulation.FREE;
          queue[tail++] = next;
        }
      }
    }
    return inside;
  }
}
