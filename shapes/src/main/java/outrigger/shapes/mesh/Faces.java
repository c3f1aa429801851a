package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;

/**
 * All faces of all operands, with their vertices and planes numbered.
 *
 * <p>Faces of one plane are known by its number, whatever operand they belong to and whichever way they look.
 */
final class Faces {
  private int[] x = new int[64];
  private int[] y = new int[64];
  private int[] z = new int[64];
  private int vertices;
  private final List<Face> faces = new ArrayList<>();
  /** Of each face, besides, the group of its plane and sense. */
  private int[] groupOf = new int[64];
  private final HalfEdges halfEdges = new HalfEdges();
  private final PlaneNumbers planes = new PlaneNumbers();
  private int operands;
  /** Number of the first face of each operand, and after the last. */
  private int[] firstFace = new int[8];
  private final int[] bounds = {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MIN_VALUE,
      Integer.MIN_VALUE, Integer.MIN_VALUE};

  int operandCount() {
    return operands;
  }

  int faceCount() {
    return faces.size();
  }

  /** Number of an operand's first face; those of the next one begin where they end. */
  int firstFace(int operand) {
    return firstFace[operand];
  }

  Face face(int f) {
    Face face = faces.get(f);
    return face != null ? face : facet(f);
  }

  /** A facet of a soup, of which most are never asked for: made when one is. */
  private Face facet(int f) {
    int h = 3 * f;
    int[] from = {halfEdges.from(h), halfEdges.from(h + 1), halfEdges.from(h + 2)};
    int[] to = {from[1], from[2], from[0]};
    faces.set(f, face(f, 0, h, from, to, new int[] {-1, -1, -1}));
    return faces.get(f);
  }

  /** Of each face the operand it belongs to. */
  int[] operands() {
    int[] of = new int[faces.size()];
    for (int i = 0; i < operands; i++) {
      Arrays.fill(of, firstFace[i], firstFace[i + 1], i);
    }
    return of;
  }

  /** Number of the plane a face of a solid operand lies in. */
  int planeOf(int f) {
    return Outline.planeOf(groupOf[f]);
  }

  /** The {@link Outline#group group} that a face of a solid operand is outlined in where it bounds the result as it is. */
  int groupOf(int f) {
    return groupOf[f];
  }

  HalfEdges halfEdges() {
    return halfEdges;
  }

  /** Vertex a half-edge starts at. */
  int from(int h) {
    return halfEdges.from(h);
  }

  /** Vertex a half-edge ends at. */
  int to(int h) {
    return halfEdges.to(h);
  }

  int planeCount() {
    return planes.size();
  }

  Plane plane(int p) {
    return planes.plane(p);
  }

  int x(int vertex) {
    return x[vertex];
  }

  int y(int vertex) {
    return y[vertex];
  }

  int z(int vertex) {
    return z[vertex];
  }

  /** A vertex as an exact point, a new one each time. */
  ExactPoint point(int vertex) {
    return ExactPoint.of(x[vertex], y[vertex], z[vertex]);
  }

  int vertexCount() {
    return vertices;
  }

  int side(int vertex, Plane plane) {
    return plane.side(x[vertex], y[vertex], z[vertex]);
  }

  /** Bounds of a face: least x, y, z, largest x, y, z. No facet of a soup is made for it. */
  int[] box(int f) {
    int[] box = {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MIN_VALUE, Integer.MIN_VALUE,
        Integer.MIN_VALUE};
    Face face = faces.get(f);
    for (int i = 0; i < (face == null ? 3 : face.edges()); i++) {
      int v = face == null ? halfEdges.from(3 * f + i) : face.from[i];
      box[0] = Math.min(box[0], x[v]);
      box[1] = Math.min(box[1], y[v]);
      box[2] = Math.min(box[2], z[v]);
      box[3] = Math.max(box[3], x[v]);
      box[4] = Math.max(box[4], y[v]);
      box[5] = Math.max(box[5], z[v]);
    }
    return box;
  }

  /** Bounds of an operand: least x, y, z, largest x, y, z; turned inside out where it has no faces. */
  int[] operandBox(int operand) {
    int[] all = {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MIN_VALUE, Integer.MIN_VALUE,
        Integer.MIN_VALUE};
    for (int f = firstFace[operand]; f < firstFace[operand + 1]; f++) {
      int[] box = box(f);
      for (int k = 0; k < 3; k++) {
        all[k] = Math.min(all[k], box[k]);
        all[3 + k] = Math.max(all[3 + k], box[3 + k]);
      }
    }
    return all;
  }

  /** Bounds of everything: least x, y, z, largest x, y, z. */
  int[] bounds() {
    return bounds;
  }

  /** Adds a closed polyhedron as one operand and returns its number. */
  int add(Polyhedron polyhedron) {
    int base = addVertices(polyhedron.xyz());
    int first = faces.size();
    for (int[][] loops : FlatFaces.of(polyhedron)) {
      addFace(loops, base);
    }
    linkAcross(first, base);
    return endOperand();
  }

  /**
   * Adds facets that may cross, overlap and meet anyhow as the only operand; together they must bound something. Their
   * planes are numbered as they are asked for.
   */
  void addSoup(int[] xyz, int[] corners) {
    addVertices(xyz);
    halfEdges.addTriangles(corners);
    faces.addAll(Collections.nCopies(corners.length / 3, null));
    groupOf = new int[corners.length / 3];
    endOperand();
  }

  private int endOperand() {
    if (operands + 1 == firstFace.length) {
      firstFace = Arrays.copyOf(firstFace, 2 * firstFace.length);
    }
    firstFace[operands + 1] = faces.size();
    return operands++;
  }

  private int addVertices(int[] xyz) {
    int base = vertices;
    int n = xyz.length / 3;
    if (vertices + n > x.length) {
      int size = Math.max(vertices + n, 2 * x.length);
      x = Arrays.copyOf(x, size);
      y = Arrays.copyOf(y, size);
      z = Arrays.copyOf(z, size);
    }
    for (int i = 0; i < n; i++) {
      x[vertices] = xyz[3 * i];
      y[vertices] = xyz[3 * i + 1];
      z[vertices++] = xyz[3 * i + 2];
      for (int k = 0; k < 3; k++) {
        bounds[k] = Math.min(bounds[k], xyz[3 * i + k]);
        bounds[3 + k] = Math.max(bounds[3 + k], xyz[3 * i + k]);
      }
    }
    return base;
  }

  private void addFace(int[][] loops, int base) {
    int n = 0;
    for (int[] loop : loops) {
      n += loop.length;
    }
    int[] from = new int[n];
    int[] to = new int[n];
    int first = halfEdges.size();
    int e = 0;
    for (int[] loop : loops) {
      halfEdges.addLoop(faces.size(), loop, base);
      for (int i = 0; i < loop.length; i++) {
        from[e] = base + loop[i];
        to[e++] = base + loop[(i + 1) % loop.length];
      }
    }
    int[] across = new int[n];
    Arrays.fill(across, -1);
    if (faces.size() == groupOf.length) {
      groupOf = Arrays.copyOf(groupOf, 2 * groupOf.length);
    }
    faces.add(face(faces.size(), operands, first, from, to, across));
  }

  private Face face(int f, int operand, int first, int[] from, int[] to, int[] across) {
    int plane = number(planeOf(from));
    boolean up = looksUp(planes.plane(plane), from, to);
    groupOf[f] = Outline.group(plane, up);
    return new Face(operand, plane, up, first, from, to, across);
  }

  /** Number of a plane, a new one where it has none. */
  int number(Plane plane) {
    return planes.number(plane);
  }

  private Plane planeOf(int[] corners) {
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

  /** By the area of its shadow along the normal's longest axis; sums that wrap round come right in the end. */
  private boolean looksUp(Plane plane, int[] from, int[] to) {
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

  private void linkAcross(int firstFace, int firstVertex) {
    int first = faces.get(firstFace).first;
    int[] twin = halfEdges.twins(first, firstVertex, vertices - firstVertex);
    for (int f = firstFace; f < faces.size(); f++) {
      Face face = faces.get(f);
      for (int e = 0; e < face.edges(); e++) {
        int h = face.first + e;
        if (twin[h - first] < 0) {
          throw new IllegalStateException(twin[h - first] == Twins.NONE ? "an operand has an open edge"
              : "an operand has an edge twice in one direction");
        }
        halfEdges.setTwin(h, first + twin[h - first]);
        face.across[e] = halfEdges.face(first + twin[h - first]);
      }
    }
  }
}
