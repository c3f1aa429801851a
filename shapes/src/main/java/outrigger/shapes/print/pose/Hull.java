package outrigger.shapes.print.pose;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.Mesh;

/**
 * The convex hull of vertices of a mesh, by the quickhull method with exact signs: points in a face's plane are
 * never outside it, so no tolerance is needed.
 *
 * <p>Barber, Dobkin and Huhdanpaa, The quickhull algorithm for convex hulls, ACM TOMS 22 (1996).
 */
final class Hull {
  private static final int AXES = 3;

  /** The points' coordinates, x, y, z one after the other; they are known by their place in this row. */
  private final int[] xyz;
  private final List<Face> faces = new ArrayList<>();
  /** While a cone is made, its face whose edge on the rim begins at a point. */
  private final Face[] from;

  /** A triangle counter-clockwise seen from outside, and the points still outside it. */
  private static final class Face {
    final int[] corners;
    /** What lies across the edges from corners 0, 1 and 2. */
    final Face[] across = new Face[AXES];
    int[] outside = new int[4];
    int count;
    int farthest = -1;
    double distance;
    boolean gone;

    Face(int a, int b, int c) {
      corners = new int[] {a, b, c};
    }

    void take(int point, double far) {
      outside = count == outside.length ? Arrays.copyOf(outside, 2 * count) : outside;
      outside[count++] = point;
      if (farthest < 0 || far > distance) {
        farthest = point;
        distance = far;
      }
    }

    /** Which of its edges ends at a corner of it. */
    int edgeTo(int point) {
      return corners[1] == point ? 0 : corners[2] == point ? 1 : 2;
    }
  }

  private Hull(Mesh mesh, int... points) {
    xyz = new int[AXES * points.length];
    from = new Face[points.length];
    for (int i = 0; i < points.length; i++) {
      xyz[AXES * i] = mesh.x(points[i]);
      xyz[AXES * i + 1] = mesh.y(points[i]);
      xyz[AXES * i + 2] = mesh.z(points[i]);
    }
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
    List<int[]> triangles = new ArrayList<>();
    for (Face face : hull.faces) {
      if (!face.gone) {
        int[] c = face.corners;
        triangles.add(new int[] {points[c[0]], points[c[1]], points[c[2]]});
      }
    }
    return triangles;
  }

  /** A tetrahedron of far points, all others given to its faces. */
  private List<Face> start() {
    int a = farthest(p -> -xyz[AXES * p]);
    int b = farthest(p -> distance(p, a));
    int c = farthest(p -> height(p, a, b));
    int d = farthest(p -> Math.abs(volume(a, b, c, p)));
    int[] t = Sign.side(xyz, a, b, c, d) > 0 ? new int[] {a, c, b, d} : new int[] {a, b, c, d};
    List<Face> first = List.of(add(t[0], t[1], t[2]), add(t[0], t[2], t[3]), add(t[0], t[3], t[1]),
        add(t[1], t[3], t[2]));
    link(first, 0, 2, 3, 1);
    link(first, 1, 0, 3, 2);
    link(first, 2, 1, 3, 0);
    link(first, 3, 2, 1, 0);
    for (int p = 0; p < from.length; p++) {
      give(p, first);
    }
    return first;
  }

  private static void link(List<Face> faces, int face, int... across) {
    for (int k = 0; k < AXES; k++) {
      faces.get(face).across[k] = faces.get(across[k]);
    }
  }

  private interface Far {
    double of(int point);
  }

  private int farthest(Far far) {
    int best = 0;
    double most = far.of(0);
    for (int p = 1; p < from.length; p++) {
      double reached = far.of(p);
      if (reached > most) {
        most = reached;
        best = p;
      }
    }
    return best;
  }

  private double distance(int p, int to) {
    double x = (double) xyz[AXES * p] - xyz[AXES * to];
    double y = (double) xyz[AXES * p + 1] - xyz[AXES * to + 1];
    double z = (double) xyz[AXES * p + 2] - xyz[AXES * to + 2];
    return x * x + y * y + z * z;
  }

  /** Grows with the distance from the line through a and b. */
  private double height(int p, int a, int b) {
    double[] n = cross(a, b, p);
    return n[0] * n[0] + n[1] * n[1] + n[2] * n[2];
  }

  private double[] cross(int a, int b, int c) {
    double ux = (double) xyz[AXES * b] - xyz[AXES * a];
    double uy = (double) xyz[AXES * b + 1] - xyz[AXES * a + 1];
    double uz = (double) xyz[AXES * b + 2] - xyz[AXES * a + 2];
    double vx = (double) xyz[AXES * c] - xyz[AXES * a];
    double vy = (double) xyz[AXES * c + 1] - xyz[AXES * a + 1];
    double vz = (double) xyz[AXES * c + 2] - xyz[AXES * a + 2];
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  private double volume(int a, int b, int c, int d) {
    double[] n = cross(a, b, c);
    return n[0] * (xyz[AXES * d] - xyz[AXES * a]) + n[1] * (xyz[AXES * d + 1] - xyz[AXES * a + 1])
        + n[2] * (xyz[AXES * d + 2] - xyz[AXES * a + 2]);
  }

  private Face add(int a, int b, int c) {
    Face face = new Face(a, b, c);
    faces.add(face);
    return face;
  }

  private boolean sees(Face face, int point) {
    return Sign.side(xyz, face.corners[0], face.corners[1], face.corners[2], point) > 0;
  }

  /** Gives a point to the first face it lies outside of. */
  private void give(int point, List<Face> to) {
    for (Face face : to) {
      if (sees(face, point)) {
        face.take(point, Math.abs(volume(face.corners[0], face.corners[1], face.corners[2], point)));
        return;
      }
    }
  }

  /** Takes in a face's farthest point: what it sees goes, and a cone to the rim of that comes. */
  private List<Face> grow(Face first) {
    int eye = first.farthest;
    List<Face> seen = new ArrayList<>(List.of(first));
    first.gone = true;
    List<Face> cone = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      Face face = seen.get(i);
      for (int k = 0; k < AXES; k++) {
        Face other = face.across[k];
        if (other.gone) {
          continue;
        }
        if (sees(other, eye)) {
          other.gone = true;
          seen.add(other);
        } else {
          cone.add(onRim(face.corners[k], face.corners[(k + 1) % AXES], eye, other));
        }
      }
    }
    for (Face face : cone) {
      Face next = from[face.corners[1]];
      face.across[1] = next;
      next.across[2] = face;
    }
    for (Face face : seen) {
      for (int i = 0; i < face.count; i++) {
        give(face.outside[i], cone);
      }
      face.outside = new int[0];
    }
    return cone;
  }

  /** The face between an edge of the rim, beyond which another face stays, and the eye. */
  private Face onRim(int a, int b, int eye, Face other) {
    Face face = add(a, b, eye);
    face.across[0] = other;
    other.across[other.edgeTo(a)] = face;
    from[a] = face;
    return face;
  }
}
