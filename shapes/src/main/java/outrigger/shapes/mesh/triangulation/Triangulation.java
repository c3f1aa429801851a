package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.num.Grid;

/**
 * A growing Delaunay triangulation of exact points of one plane, some of whose edges are marked and stay.
 *
 * <p>The plane is seen along an axis: two coordinates of each point count. All turns are exact; the circle test, which
 * only shapes the facets, uses the points rounded to the grid. That is safe: each flip lowers the volume under the
 * lifted rounded points, so flipping ends whatever the rounding did.
 *
 * <p>Half-edge h = 4 t + k runs from corner k of triangle t, of three, to the next corner, counter-clockwise; every fourth
 * number stays unused, so that no division is needed to go round a triangle. Vertices 0, 1 and 2
 * are the corners of one huge triangle round everything. New points are found by walking from the last triangle, so
 * neighbours should be inserted one after the other.
 */
public final class Triangulation {
  /** No mark on an edge. */
  public static final int FREE = 0;

  /** Corners of the huge triangle, far outside the grid. */
  private static final long[] FAR_U = {-5L * Grid.LIMIT, 5L * Grid.LIMIT, 0};
  private static final long[] FAR_V = {-2L * Grid.LIMIT, -2L * Grid.LIMIT, 5L * Grid.LIMIT};

  private final PlanarPoints points = new PlanarPoints();
  private int[] origin;
  private int[] twin;
  private int[] mark;
  private int triangles;
  private int[] out;

  private boolean shapes = true;
  private int last;
  private int turner;
  private int[] stack = new int[64];
  private int stacked;

  Triangulation() {
    int n = 16;
    out = new int[n];
    origin = new int[8 * n];
    twin = new int[8 * n];
    mark = new int[8 * n];
  }

  /**
   * Starts anew with nothing but the huge triangle; the room taken before is used again.
   *
   * @param firstAxis the axis that is the first coordinate
   * @param secondAxis the axis that is the second coordinate
   * @param ownPlane number of the plane all points lie in: any other that two points have in common is a line
   */
  void reset(int firstAxis, int secondAxis, int ownPlane) {
    start(firstAxis, secondAxis, ownPlane);
    for (int h = 0; h < 3; h++) {
      long[] c = new long[3];
      c[firstAxis] = FAR_U[h];
      c[secondAxis] = FAR_V[h];
      points.number(ExactPoint.of(c[0], c[1], c[2]));
      origin[h] = h;
      out[h] = h;
      twin[h] = -1;
      mark[h] = FREE;
    }
    triangles = 1;
  }

  /** As {@link #reset}, but with no triangle at all, for such as are added one by one. */
  void start(int firstAxis, int secondAxis, int ownPlane) {
    points.reset(firstAxis, secondAxis, ownPlane);
    last = 0;
    turner = 0;
    stacked = 0;
    triangles = 0;
  }

  /** Adds a point that is none of the vertices, as a vertex of no triangle. */
  void append(ExactPoint p) {
    makeRoom(points.append(p));
  }

  /** Adds a triangle with no neighbours and gives its half-edge from the first vertex to the second. */
  int add(int a, int b, int c) {
    int h = edge(newTriangle());
    set(h, a, -1, FREE);
    set(h + 1, b, -1, FREE);
    set(h + 2, c, -1, FREE);
    return h;
  }

  /** Makes neighbours of two added triangles; {@link #legalize} looks at their edge. */
  void joinNew(int h, int g) {
    join(h, g);
    push(h);
  }

  /** The points that are its vertices, by their numbers. */
  public PlanarPoints points() {
    return points;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return triangles;
  }

  /** The point of a vertex. */
  public ExactPoint point(int vertex) {
    return points.point(vertex);
  }

  /** Vertex a half-edge starts at. */
  public int origin(int h) {
    return origin[h];
  }

  /** The half-edge that runs the other way; negative at the outer rim. */
  public int twin(int h) {
    return twin[h];
  }

  /** The mark of a half-edge; {@link #FREE} where it has none. */
  public int mark(int h) {
    return mark[h];
  }

  /** A half-edge that starts at a vertex. */
  public int out(int vertex) {
    return out[vertex];
  }

  /** First half-edge of a triangle; two more follow. */
  public static int edge(int triangle) {
    return triangle << 2;
  }

  /** Triangle that a half-edge belongs to. */
  public static int triangle(int h) {
    return h >> 2;
  }

  static int next(int h) {
    return (h & 3) == 2 ? h - 2 : h + 1;
  }

  static int previous(int h) {
    return (h & 3) == 0 ? h + 2 : h - 1;
  }

  /** Vertex a half-edge ends at. */
  public int destination(int h) {
    return origin[next(h)];
  }

  /** Marks an edge: the half-edge with a positive value, its twin with the same taken negative. */
  void setMark(int h, int value) {
    mark[h] = value;
    mark[twin[h]] = -value;
  }

  /** Exact turn of three vertices. */
  int turn(int a, int b, int c) {
    return points.turn(a, b, c);
  }

  /**
   * Whether edges are flipped until they are Delaunay; else triangles stay as they come, which is quicker where they are few
   * and nobody looks at their shape.
   */
  public void shape(boolean on) {
    shapes = on;
  }

  /** Inserts a point, or finds the vertex that it is. */
  public int insert(ExactPoint p) {
    int before = points.size();
    int id = points.number(p);
    if (id == before) {
      connect(id);
    }
    return id;
  }

  /** Inserts a point that is known to be none of the vertices; later it is not recognised again. */
  int insertNew(ExactPoint p) {
    int id = points.append(p);
    connect(id);
    return id;
  }

  private void connect(int id) {
    makeRoom(id);
    int t = locate(id);
    int h = edge(t);
    while (h < edge(t) + 3 && turn(origin[h], destination(h), id) != 0) {
      h++;
    }
    if (h < edge(t) + 3) {
      splitEdge(h, id);
    } else {
      splitTriangle(t, id);
    }
    surround();
  }

  /** Flips unmarked edges across from a new vertex until those round it are Delaunay: all others were, and stay so. */
  private void surround() {
    while (stacked > 0) {
      int h = stack[--stacked];
      if (isWrong(h)) {
        int far = previous(twin[h]);
        turnOver(h);
        push(h);
        push(far);
      }
    }
  }

  /**
   * Inserts points that follow each other along outlines, every other one last, every other one of the rest before that,
   * and so on, each sought from the one before it. One after the other, the points of a round hole would
   * each flip the edges of all before.
   *
   * @param insert inserts the point of a number and returns the vertex that it is
   * @return the vertices that the points are
   */
  public int[] insertSpread(int count, IntUnaryOperator insert) {
    int[] vertex = new int[count];
    vertex[0] = insert.applyAsInt(0);
    for (int step = Integer.highestOneBit(count); step > 0; step /= 2) {
      for (int i = step; i < count; i += 2 * step) {
        last = triangle(out[vertex[i - step]]);
        vertex[i] = insert.applyAsInt(i);
      }
    }
    return vertex;
  }

  /** Puts a point that lies exactly on an edge there; call {@link #legalize} afterwards. */
  int insertOn(int h, ExactPoint p) {
    int id = points.number(p);
    makeRoom(id);
    splitEdge(h, id);
    return id;
  }

  /** The half-edge between two joined vertices, at least one of them inside. */
  int find(int from, int to) {
    if (from < 3) {
      return twin[find(to, from)];
    }
    int h = out[from];
    while (destination(h) != to) {
      h = twin[previous(h)];
    }
    return h;
  }

  /** Triangle that holds a vertex's point, its rim included: a walk that turns its first look to escape circles. */
  private int locate(int id) {
    int h = edge(last);
    int a = origin[h];
    int b = origin[h + 1];
    int c = origin[h + 2];
    int way = turn(a, b, id) < 0 ? h : turn(b, c, id) < 0 ? h + 1 : turn(c, a, id) < 0 ? h + 2 : -1;
    while (way >= 0) {
      h = twin[way];
      way = wayOn(next(h), previous(h), origin[h], id);
    }
    last = triangle(h);
    return last;
  }

  /** The edge of a triangle entered by its third that parts it from a vertex's point; -1 if none does. */
  private int wayOn(int next, int previous, int entry, int id) {
    int apex = origin[previous];
    turner = turner * 1664525 + 1013904223;
    if (turner < 0) {
      return turn(origin[next], apex, id) < 0 ? next : turn(apex, entry, id) < 0 ? previous : -1;
    }
    return turn(apex, entry, id) < 0 ? previous : turn(origin[next], apex, id) < 0 ? next : -1;
  }

  private void splitTriangle(int t, int p) {
    int e0 = edge(t);
    int e1 = edge(newTriangle());
    int e2 = edge(newTriangle());
    int a = origin[e0];
    int b = origin[e0 + 1];
    int c = origin[e0 + 2];
    set(e1, b, twin[e0 + 1], mark[e0 + 1]);
    set(e2, c, twin[e0 + 2], mark[e0 + 2]);
    origin[e0 + 2] = p;
    origin[e1 + 1] = c;
    origin[e1 + 2] = p;
    origin[e2 + 1] = a;
    origin[e2 + 2] = p;
    join(e0 + 1, e1 + 2);
    join(e1 + 1, e2 + 2);
    join(e2 + 1, e0 + 2);
    out[p] = e0 + 2;
    out[a] = e0;
    out[b] = e1;
    out[c] = e2;
    push(e0);
    push(e1);
    push(e2);
  }

  /** Splits edge a-b with apexes c and d: four triangles round the new vertex. */
  private void splitEdge(int ab, int p) {
    int bc = next(ab);
    int ca = previous(ab);
    int ba = twin[ab];
    int ad = next(ba);
    int db = previous(ba);
    int b = origin[bc];
    int c = origin[ca];
    int d = origin[db];
    int m = mark[ab];
    int t = edge(newTriangle());
    int s = edge(newTriangle());
    set(t + 1, b, twin[bc], mark[bc]);
    origin[t] = p;
    origin[t + 2] = c;
    set(s + 2, d, twin[db], mark[db]);
    origin[s] = b;
    origin[s + 1] = p;
    origin[bc] = p;
    origin[ba] = p;
    join(bc, t + 2);
    join(db, s + 1);
    join(t, s);
    mark[t] = m;
    mark[s] = -m;
    out[p] = bc;
    out[b] = t + 1;
    out[c] = ca;
    out[d] = db;
    push(ca);
    push(ad);
    push(t + 1);
    push(s + 2);
  }

  /** Flips the edge between two triangles; the four edges round them keep their marks and are looked at again. */
  void flip(int ab) {
    int ba = twin[ab];
    turnOver(ab);
    push(ab);
    push(previous(ab));
    push(ba);
    push(previous(ba));
  }

  private void turnOver(int ab) {
    int bc = next(ab);
    int ca = previous(ab);
    int ba = twin[ab];
    int ad = next(ba);
    int db = previous(ba);
    int c = origin[ca];
    int d = origin[db];
    set(ab, origin[ab], twin[ad], mark[ad]);
    set(ba, origin[ba], twin[bc], mark[bc]);
    origin[bc] = d;
    origin[ad] = c;
    join(bc, ad);
    out[origin[ab]] = ab;
    out[origin[ba]] = ba;
    out[d] = bc;
    out[c] = ad;
  }

  /** Whether the two triangles at an edge form a strictly convex quadrangle, so that it can be flipped. */
  boolean isConvex(int ab) {
    int a = origin[ab];
    int b = destination(ab);
    int c = origin[previous(ab)];
    int d = origin[previous(twin[ab])];
    return turn(c, a, d) > 0 && turn(d, b, c) > 0;
  }

  /** Flips unmarked edges until all that were touched are Delaunay. */
  void legalize() {
    while (stacked > 0) {
      int h = stack[--stacked];
      if (isWrong(h)) {
        flip(h);
      }
    }
  }

  private boolean isWrong(int h) {
    return shapes && mark[h] == FREE && twin[h] >= 0 && isNotDelaunay(h);
  }

  private boolean isNotDelaunay(int ab) {
    int a = origin[ab];
    int b = destination(ab);
    int c = origin[previous(ab)];
    int d = origin[previous(twin[ab])];
    return points.isInCircle(a, b, c, d) && (points.isOnGrid(a) && points.isOnGrid(b) && points.isOnGrid(c)
        && points.isOnGrid(d) || isConvex(ab));
  }

  private void push(int h) {
    if (stacked == stack.length) {
      stack = Arrays.copyOf(stack, 2 * stacked);
    }
    stack[stacked++] = h;
  }

  private void set(int h, int from, int other, int m) {
    origin[h] = from;
    twin[h] = other;
    mark[h] = m;
    if (other >= 0) {
      twin[other] = h;
    }
  }

  private void join(int h, int g) {
    twin[h] = g;
    twin[g] = h;
    mark[h] = FREE;
    mark[g] = FREE;
  }

  private int newTriangle() {
    if (edge(triangles) + 3 > origin.length) {
      int n = 2 * origin.length;
      origin = Arrays.copyOf(origin, n);
      twin = Arrays.copyOf(twin, n);
      mark = Arrays.copyOf(mark, n);
    }
    return triangles++;
  }

  private void makeRoom(int id) {
    if (id >= out.length) {
      out = Arrays.copyOf(out, 2 * id);
    }
  }
}
