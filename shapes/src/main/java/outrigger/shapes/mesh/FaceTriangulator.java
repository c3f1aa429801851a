package outrigger.shapes.mesh;

import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.Outline.IntList;

/**
 * Cuts the faces of one plane and sense into facets: constrained Delaunay, no vertex added.
 *
 * <p>A face of n corners with h holes gives n + 2 h - 2 facets, the fewest there can be without new vertices.
 */
final class FaceTriangulator {
  private static final ConstrainedTriangulation.Crossing NONE = (s, t) -> {
    throw new IllegalStateException("the outline of a face crosses itself");
  };

  private final Outline outline;
  private final ConstrainedTriangulation marks = new ConstrainedTriangulation();
  /** Facet corners so far. */
  private final IntList corners = new IntList();

  FaceTriangulator(Outline outline) {
    this.outline = outline;
  }

  /** All facets of all groups, three vertices each, counter-clockwise seen from outside. */
  IntList triangulate() {
    for (int group : outline.groups()) {
      Interrupt.check();
      IntList edges = outline.edges(group);
      if (edges.size() == 6) {
        addTriangle(edges);
      } else {
        addFaces(group, edges);
      }
    }
    return corners;
  }

  private void addTriangle(IntList edges) {
    int a = edges.get(0);
    int b = edges.get(1);
    add(a, b, edges.get(2) == b ? edges.get(3) : edges.get(5));
  }

  private void addFaces(int group, IntList edges) {
    var plane = outline.plane(group);
    int u = Sheet.firstAxis(plane);
    int v = Sheet.secondAxis(plane);
    marks.reset(u, v, Outline.planeOf(group), NONE);
    Triangulation tri = marks.triangulation();
    int[] number = new int[edges.size() + 3];
    for (int i = 0; i < edges.size(); i += 2) {
      ExactPoint pa = outline.point(edges.get(i));
      int a = tri.insert(pa);
      number[a] = edges.get(i);
      int b = tri.insert(outline.point(edges.get(i + 1)));
      number[b] = edges.get(i + 1);
      marks.lay(a, b, i, ConstrainedTriangulation.NO_LINE);
    }
    boolean[] inside = inside(tri);
    for (int t = 0; t < tri.triangleCount(); t++) {
      if (inside[t]) {
        int a = number[tri.origin(3 * t)];
        int b = number[tri.origin(3 * t + 1)];
        int c = number[tri.origin(3 * t + 2)];
        add(a, Outline.isUp(group) ? b : c, Outline.isUp(group) ? c : b);
      }
    }
  }

  private void add(int a, int b, int c) {
    corners.add(a);
    corners.add(b);
    corners.add(c);
  }

  /** Triangles that an odd number of marked edges parts from the outside. */
  private static boolean[] inside(Triangulation tri) {
    int n = tri.triangleCount();
    boolean[] inside = new boolean[n];
    boolean[] seen = new boolean[n];
    int[] queue = new int[n];
    int tail = 0;
    queue[tail++] = tri.out(0) / 3;
    seen[queue[0]] = true;
    for (int head = 0; head < tail; head++) {
      int t = queue[head];
      for (int h = 3 * t; h < 3 * t + 3; h++) {
        int g = tri.twin(h);
        if (g >= 0 && !seen[g / 3]) {
          seen[g / 3] = true;
          inside[g / 3] = inside[t] ^ tri.mark(h) != Triangulation.FREE;
          queue[tail++] = g / 3;
        }
      }
    }
    return inside;
  }
}
