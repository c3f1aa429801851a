package outrigger.shapes.print.pose;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.Mesh;

/**
 * The convex hull of vertices of a mesh, by the quickhull method with exact signs: points in a face's plane are
 * never outside it, so no tolerance is needed.
 *
 * <p>Barber, Dobkin and Huhdanpaa, The quickhull algorithm for convex hulls, ACM TOMS 22 (1996).
 */
final class Hull {
  private final Mesh mesh;
  private final int[] points;
  private final Map<Long, Face> faceOfEdge = new HashMap<>();
  private final List<Face> faces = new ArrayList<>();

  /** A triangle counter-clockwise seen from outside, and the points still outside it. */
  private static final class Face {
    final int a;
    final int b;
    final int c;
    int[] outside = new int[4];
    int count;
    int farthest = -1;
    double distance;
    boolean gone;

    Face(int a, int b, int c) {
      this.a = a;
      this.b = b;
      this.c = c;
    }

    void take(int point, double far) {
      outside = count == outside.length ? Arrays.copyOf(outside, 2 * count) : outside;
      outside[count++] = point;
      if (farthest < 0 || far > distance) {
        farthest = point;
        distance = far;
      }
    }
  }

  private Hull(Mesh mesh, int... points) {
    this.mesh = mesh;
    this.points = points;
  }

  /**
   * Corners of the hull's triangles, three vertex numbers each, counter-clockwise from outside.
   *
   * @param points the vertices to take, not all in one plane
   */
  static List<int[]> of(Mesh mesh, int... points) {
    Hull hull = new Hull(mesh, points);
    Deque<Face> open = new ArrayDeque<>(hull.start());
    while (!open.isEmpty()) {
      Face face = open.poll();
      if (!face.gone && face.count > 0) {
        open.addAll(hull.grow(face));
      }
    }
    return hull.faces.stream().filter(face -> !face.gone).map(face -> new int[] {face.a, face.b, face.c}).toList();
  }

  /** A tetrahedron of far points, all others given to its faces. */
  private List<Face> start() {
    int a = farthest(v -> -mesh.x(v));
    int b = farthest(v -> distance(v, a));
    int c = farthest(v -> height(v, a, b));
    int d = farthest(v -> Math.abs(volume(a, b, c, v)));
    int[] t = side(a, b, c, d) > 0 ? new int[] {a, c, b, d} : new int[] {a, b, c, d};
    List<Face> first = List.of(add(t[0], t[1], t[2]), add(t[0], t[2], t[3]), add(t[0], t[3], t[1]),
        add(t[1], t[3], t[2]));
    for (int v : points) {
      give(v, first);
    }
    return first;
  }

  private interface Far {
    double of(int vertex);
  }

  private int farthest(Far far) {
    int best = points[0];
    for (int v : points) {
      best = far.of(v) > far.of(best) ? v : best;
    }
    return best;
  }

  private double distance(int v, int from) {
    double x = (double) mesh.x(v) - mesh.x(from);
    double y = (double) mesh.y(v) - mesh.y(from);
    double z = (double) mesh.z(v) - mesh.z(from);
    return x * x + y * y + z * z;
  }

  /** Grows with the distance from the line through a and b. */
  private double height(int v, int a, int b) {
    double[] n = cross(a, b, v);
    return n[0] * n[0] + n[1] * n[1] + n[2] * n[2];
  }

  private double[] cross(int a, int b, int c) {
    double ux = (double) mesh.x(b) - mesh.x(a);
    double uy = (double) mesh.y(b) - mesh.y(a);
    double uz = (double) mesh.z(b) - mesh.z(a);
    double vx = (double) mesh.x(c) - mesh.x(a);
    double vy = (double) mesh.y(c) - mesh.y(a);
    double vz = (double) mesh.z(c) - mesh.z(a);
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  private double volume(int a, int b, int c, int d) {
    double[] n = cross(a, b, c);
    return n[0] * (mesh.x(d) - mesh.x(a)) + n[1] * (mesh.y(d) - mesh.y(a)) + n[2] * (mesh.z(d) - mesh.z(a));
  }

  private int side(int a, int b, int c, int d) {
    return Sign.side(mesh.x(a), mesh.y(a), mesh.z(a), mesh.x(b), mesh.y(b), mesh.z(b), mesh.x(c), mesh.y(c), mesh.z(c),
        mesh.x(d), mesh.y(d), mesh.z(d));
  }

  private Face add(int a, int b, int c) {
    Face face = new Face(a, b, c);
    faces.add(face);
    faceOfEdge.put(key(a, b), face);
    faceOfEdge.put(key(b, c), face);
    faceOfEdge.put(key(c, a), face);
    return face;
  }

  private static long key(int from, int to) {
    return (long) from << Integer.SIZE | to;
  }

  private boolean sees(Face face, int point) {
    return side(face.a, face.b, face.c, point) > 0;
  }

  /** Gives a point to the first face it lies outside of. */
  private void give(int point, List<Face> to) {
    for (Face face : to) {
      if (sees(face, point)) {
        face.take(point, Math.abs(volume(face.a, face.b, face.c, point)));
        return;
      }
    }
  }

  /** Takes in a face's farthest point: what it sees goes, and a cone to the rim of that comes. */
  private List<Face> grow(Face from) {
    int eye = from.farthest;
    List<Face> seen = new ArrayList<>(List.of(from));
    from.gone = true;
    List<int[]> rim = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      Face face = seen.get(i);
      int[] corners = {face.a, face.b, face.c};
      for (int k = 0; k < 3; k++) {
        Face other = faceOfEdge.get(key(corners[(k + 1) % 3], corners[k]));
        if (other.gone) {
          continue;
        }
        if (sees(other, eye)) {
          other.gone = true;
          seen.add(other);
        } else {
          rim.add(new int[] {corners[k], corners[(k + 1) % 3]});
        }
      }
    }
    List<Face> cone = new ArrayList<>();
    for (int[] edge : rim) {
      cone.add(add(edge[0], edge[1], eye));
    }
    for (Face face : seen) {
      for (int i = 0; i < face.count; i++) {
        give(face.outside[i], cone);
      }
      face.outside = new int[0];
    }
    return cone;
  }
}
