package outrigger.shapes.mesh.face;

import java.util.Arrays;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.num.Workers;

/**
 * All faces of all operands, with their vertices and planes numbered.
 *
 * <p>Faces of one plane are known by its number, whatever operand they belong to and whichever way they look.
 */
public final class Faces {
  /** How many boxes are worth a thread. */
  private static final int BOXES = 1 << 13;

  private final Workers workers;
  private int[] x = new int[64];
  private int[] y = new int[64];
  private int[] z = new int[64];
  private int vertices;
  private Face[] faces = {};
  private int count;
  /** Of each face the group of its plane and sense. */
  private int[] groupOf = {};
  private final HalfEdges halfEdges = new HalfEdges();
  private final PlaneNumbers planes = new PlaneNumbers();
  private int operands;
  /** Number of the first face of each operand, and after the last. */
  private int[] firstFace = new int[8];
  private final int[] bounds = {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MIN_VALUE,
      Integer.MIN_VALUE, Integer.MIN_VALUE};

  /** On one thread. */
  public Faces() {
    this(Workers.of(1));
  }

  /** To be worked on by some threads. */
  public Faces(Workers workers) {
    this.workers = workers;
  }

  /** The threads that work on these faces. */
  public Workers workers() {
    return workers;
  }

  /** Number of operands. */
  public int operandCount() {
    return operands;
  }

  /** Number of faces of all operands. */
  public int faceCount() {
    return count;
  }

  /** Number of an operand's first face; those of the next one begin where they end. */
  public int firstFace(int operand) {
    return firstFace[operand];
  }

  /** A face by its number. */
  public Face face(int f) {
    Face face = faces[f];
    return face != null ? face : facet(f);
  }

  /** Makes a facet of a soup when it is first asked for: most never are. */
  private Face facet(int f) {
    int h = 3 * f;
    int[] from = {halfEdges.from(h), halfEdges.from(h + 1), halfEdges.from(h + 2)};
    int[] to = {from[1], from[2], from[0]};
    Plane plane = planeThrough(from);
    faces[f] = new Face(0, looksUp(plane, from, to), h, from, to, new int[] {-1, -1, -1});
    number(f, plane);
    return faces[f];
  }

  /** Of each face the operand it belongs to. */
  public int[] operands() {
    int[] of = new int[count];
    for (int i = 0; i < operands; i++) {
      Arrays.fill(of, firstFace[i], firstFace[i + 1], i);
    }
    return of;
  }

  /** Number of the plane a face of a solid operand lies in. */
  public int planeOf(int f) {
    return Group.plane(groupOf[f]);
  }

  /** The {@link Group} that a face of a solid operand is outlined in where it bounds the result as it is. */
  public int groupOf(int f) {
    return groupOf[f];
  }

  /** The edges of all faces, once for either face. */
  public HalfEdges halfEdges() {
    return halfEdges;
  }

  /** Vertex a half-edge starts at. */
  public int from(int h) {
    return halfEdges.from(h);
  }

  /** Vertex a half-edge ends at. */
  public int to(int h) {
    return halfEdges.to(h);
  }

  /** Number of different planes. */
  public int planeCount() {
    return planes.size();
  }

  /** A plane by its number. */
  public Plane plane(int p) {
    return planes.plane(p);
  }

  /** x of a vertex, grid units. */
  public int x(int vertex) {
    return x[vertex];
  }

  /** y of a vertex, grid units. */
  public int y(int vertex) {
    return y[vertex];
  }

  /** z of a vertex, grid units. */
  public int z(int vertex) {
    return z[vertex];
  }

  /** A vertex as an exact point, a new one each time. */
  public ExactPoint point(int vertex) {
    return ExactPoint.of(x[vertex], y[vertex], z[vertex]);
  }

  /** Number of vertices of all operands; equal ones of different operands are two. */
  public int vertexCount() {
    return vertices;
  }

  /** x, y or z of a vertex for axis 0, 1 or 2, grid units. */
  public int coordinate(int vertex, int axis) {
    return axis == 0 ? x[vertex] : axis == 1 ? y[vertex] : z[vertex];
  }

  /** Side of a vertex against a plane: 1 where the normal points to, -1 behind, 0 in the plane. */
  public int side(int vertex, Plane plane) {
    return plane.side(x[vertex], y[vertex], z[vertex]);
  }

  /** About what part of the way from one vertex to another, on opposite sides of a plane, the plane is met. */
  public double roughShare(int from, int to, Plane plane) {
    double offset = plane.roughOffset(x[from], y[from], z[from]);
    return offset / (offset - plane.roughOffset(x[to], y[to], z[to]));
  }

  /** Bounds of all faces: least x, y, z, largest x, y, z of each. No facet of a soup is made for it. */
  public int[] boxes() {
    int[] boxes = new int[6 * count];
    workers.split(count, BOXES, (from, to) -> {
      for (int f = from; f < to; f++) {
        Face face = faces[f];
        bound(face == null ? 3 * f : face.first, face == null ? 3 * f + 3 : face.first + face.edges(), boxes, f);
      }
    });
    return boxes;
  }

  /** Bounds of an operand: least x, y, z, largest x, y, z; turned inside out where it has no faces. */
  public int[] operandBox(int operand) {
    int[] box = new int[6];
    bound(firstEdge(operand), firstEdge(operand + 1), box, 0);
    return box;
  }

  /** Number of the first half-edge of an operand; those of the next one begin where they end. */
  public int firstEdge(int operand) {
    int f = firstFace[operand];
    return f == count ? halfEdges.size() : faces[f] == null ? 3 * f : faces[f].first;
  }

  private void bound(int firstEdge, int endEdge, int[] boxes, int box) {
    BoxTree.clear(boxes, box);
    int at = 6 * box;
    for (int h = firstEdge; h < endEdge; h++) {
      int v = halfEdges.from(h);
      boxes[at] = Math.min(boxes[at], x[v]);
      boxes[at + 1] = Math.min(boxes[at + 1], y[v]);
      boxes[at + 2] = Math.min(boxes[at + 2], z[v]);
      boxes[at + 3] = Math.max(boxes[at + 3], x[v]);
      boxes[at + 4] = Math.max(boxes[at + 4], y[v]);
      boxes[at + 5] = Math.max(boxes[at + 5], z[v]);
    }
  }

  /** Bounds of everything: least x, y, z, largest x, y, z. */
  public int[] bounds() {
    return bounds;
  }

  /** Adds closed polyhedra as operands, in their order. */
  public void addAll(List<Polyhedron> polyhedra) {
    List<FlatOperand> flat = workers.each(polyhedra.size(), i -> FlatOperand.of(polyhedra.get(i)));
    SolidFaces solids = new SolidFaces(this);
    int corners = vertices;
    int edges = halfEdges.size();
    int loops = halfEdges.loopCount();
    for (int i = 0; i < polyhedra.size(); i++) {
      solids.add(flat.get(i), corners, edges, loops);
      corners += polyhedra.get(i).xyz().length / 3;
      edges += flat.get(i).edgeCount();
      loops += flat.get(i).loopCount();
      count += flat.get(i).faceCount();
      endOperand();
    }
    int allEdges = edges;
    int allLoops = loops;
    growVertices(corners);
    workers.both(() -> polyhedra.forEach(p -> addVertices(p.xyz())), () -> halfEdges.grow(allEdges, allLoops));
    faces = Arrays.copyOf(faces, count);
    groupOf = Arrays.copyOf(groupOf, count);
    solids.fill();
  }

  /** Puts a face in its place. */
  void put(int f, Face face) {
    faces[f] = face;
  }

  /** Numbers the plane of a face. */
  void number(int f, Plane plane) {
    faces[f].plane = planes.number(plane);
    groupOf[f] = Group.of(faces[f].plane, faces[f].up);
  }

  /**
   * Adds facets that may cross, overlap and meet anyhow as the only operand; together they must bound something. Their
   * planes are numbered as they are asked for.
   *
   * @param some threads that put them in place
   */
  public void addSoup(int[] xyz, int[] corners, Workers some) {
    growVertices(vertices + xyz.length / 3);
    addVertices(xyz);
    halfEdges.addTriangles(corners, some);
    count = corners.length / 3;
    faces = new Face[count];
    groupOf = new int[count];
    endOperand();
  }

  private void endOperand() {
    if (operands + 1 == firstFace.length) {
      firstFace = Arrays.copyOf(firstFace, 2 * firstFace.length);
    }
    firstFace[operands + 1] = count;
    operands++;
  }

  private void growVertices(int size) {
    if (size > x.length) {
      x = Arrays.copyOf(x, size);
      y = Arrays.copyOf(y, size);
      z = Arrays.copyOf(z, size);
    }
  }

  /** Adds vertices for which there is room. */
  private void addVertices(int[] xyz) {
    for (int i = 0; i < xyz.length / 3; i++) {
      x[vertices] = xyz[3 * i];
      y[vertices] = xyz[3 * i + 1];
      z[vertices++] = xyz[3 * i + 2];
      for (int k = 0; k < 3; k++) {
        bounds[k] = Math.min(bounds[k], xyz[3 * i + k]);
        bounds[3 + k] = Math.max(bounds[3 + k], xyz[3 * i + k]);
      }
    }
  }

  /** Number of a plane, a new one where it had none. */
  public int number(Plane plane) {
    return planes.number(plane);
  }

  /** The plane that the corners of a face lie in: through the first two and the next that is not in line with them. */
  Plane planeThrough(int[] corners) {
    int a = corners[0];
    int b = corners[1];
    for (int i = 2; i < corners.length; i++) {
      int c = corners[i];
      Plane plane = Plane.through(x[a], y[a], z[a], x[b], y[b], z[b], x[c], y[c], z[c]);
      if (plane != null) {
        return plane;
      }
    }
    throw new IllegalStateException("a face without area reached the kernel");
  }

  /**
   * Whether a face looks the way its plane's normal points: by the area of its shadow along the normal's longest axis. That
   * fits into 64 bits, so that sums which wrap round on the way come right in the end.
   *
   * @param from where each of its edges starts
   * @param to where each ends
   */
  boolean looksUp(Plane plane, int[] from, int[] to) {
    int w = plane.dominantAxis();
    int[] cu = w == 0 ? y : w == 1 ? z : x;
    int[] cv = w == 0 ? z : w == 1 ? x : y;
    long u0 = cu[from[0]];
    long v0 = cv[from[0]];
    long twice = 0;
    for (int i = 0; i < from.length; i++) {
      twice += (cu[from[i]] - u0) * (cv[to[i]] - v0) - (cv[from[i]] - v0) * (cu[to[i]] - u0);
    }
    return twice > 0 == plane.normal(w) > 0;
  }
}
