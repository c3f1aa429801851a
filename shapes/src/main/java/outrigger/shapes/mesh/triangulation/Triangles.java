package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;

/**
 * Triangles of exact points of one plane, each with its neighbours, and how they are split and turned over.
 *
 * <p>Half-edge h = 4 t + k runs from corner k of triangle t, of three, to the next corner, counter-clockwise; every fourth
 * number stays unused, so that no division is needed to go round a triangle. Edges may be marked and then stay. Those that a
 * change leaves beside new triangles are put on a stack, to be looked at again.
 */
class Triangles {
  /** No mark on an edge. */
  public static final int FREE = 0;

  private final PlanarPoints points = new PlanarPoints();
  /** Of each half-edge the vertex it starts at, the half-edge that runs the other way, and its mark. */
  private int[] origin;
  private int[] twin;
  private int[] mark;
  private int triangles;
  /** Of each vertex a half-edge that starts there. */
  private int[] out;
  /** Edges to be looked at again. */
  private int[] stack = new int[64];
  private int stacked;

  Triangles() {
    int n = 16;
    out = new int[n];
    origin = new int[8 * n];
    twin = new int[8 * n];
    mark = new int[8 * n];
  }

  /**
   * Starts anew with nothing; the room taken before is used again.
   *
   * @param firstAxis the axis that is the first coordinate
   * @param secondAxis the axis that is the second coordinate
   * @param ownPlane number of the plane all points lie in: any other that two points have in common is a line
   */
  void clear(int firstAxis, int secondAxis, int ownPlane) {
    points.reset(firstAxis, secondAxis, ownPlane);
    triangles = 0;
    stacked = 0;
  }

  /** Adds a point that is none of the vertices, as a vertex of no triangle. */
  void append(ExactPoint p) {
    makeRoomFor(points.append(p));
  }

  /** Adds a triangle with no neighbours and gives its half-edge from the first vertex to the second. */
  int add(int a, int b, int c) {
    int h = edge(newTriangle());
    set(h, a, -1, FREE);
    set(h + 1, b, -1, FREE);
    set(h + 2, c, -1, FREE);
    out[a] = h;
    out[b] = h + 1;
    out[c] = h + 2;
    return h;
  }

  /** Makes neighbours of two added triangles; their edge is to be looked at again. */
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

  /** The half-edge after one in its triangle. */
  static int next(int h) {
    return (h & 3) == 2 ? h - 2 : h + 1;
  }

  /** The half-edge before one in its triangle. */
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

  /** Splits a triangle into three round a new vertex. */
  void splitTriangle(int t, int p) {
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
  void splitEdge(int ab, int p) {
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

  /** Flips the edge between two triangles; the four edges round them keep their marks. */
  void turnOver(int ab) {
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

  /** Whether no edge is left to be looked at. */
  boolean isSettled() {
    return stacked == 0;
  }

  /** The half-edge that was pushed last. */
  int pop() {
    return stack[--stacked];
  }

  /** Puts an edge on the stack of those to be looked at again. */
  void push(int h) {
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

  /** Makes room for a new vertex. */
  void makeRoomFor(int id) {
    if (id >= out.length) {
      out = Arrays.copyOf(out, 2 * id);
    }
  }
}
