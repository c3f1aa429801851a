package outrigger.shapes.mesh.inside;

import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;

/** How nearly convex an operand is: wholly, or but for what rounding turned corners to the grid has bent, or not at all. */
enum Convexity {
  NONE, NEARLY, WHOLLY;

  /**
   * How far a corner rounded to the grid may stand out over a plane through others that were rounded, grid units: each is
   * off by 0.87 at most, half the diagonal of a step, which makes 1.73; the rest is own choice. An operand bent more hides
   * less, but what it hides it hides.
   */
  private static final double BENT = 2;
  /**
   * The same where the plane is that of a narrow facet, which rounding tilts: as a part of how far the corner lies from the
   * edge; own choice.
   */
  private static final double TILTED = 1 / 64.0;

  /**
   * Finds how convex an operand is: if it is sound, of one shell without handles, and no edge of it bends inwards, or none
   * by more than rounding makes it. One whose faces do not know their neighbours, or have holes, counts as not convex.
   *
   * @param counted of each vertex whether it was counted, false at first; no two operands share a vertex
   */
  static Convexity of(Faces faces, int operand, boolean[] counted) {
    boolean bent = false;
    int vertices = 0;
    int edges = 0;
    int from = faces.firstFace(operand);
    int to = faces.firstFace(operand + 1);
    for (int f = from; f < to; f++) {
      Face face = faces.face(f);
      if (faces.halfEdges().loop(face.first) != faces.halfEdges().loop(face.first + face.edges() - 1)) {
        return NONE;
      }
      for (int e = 0; e < face.edges(); e++) {
        if (face.across[e] < 0) {
          return NONE;
        }
        if (bendsInwards(faces, face, e)) {
          bent = true;
          if (standsOut(faces, faces.face(face.across[e]), face, e)) {
            return NONE;
          }
        }
        vertices += counted[face.from[e]] ? 0 : 1;
        counted[face.from[e]] = true;
      }
      edges += face.edges();
    }
    // Euler's number of one shell without handles
    boolean isBall = vertices - edges / 2 + to - from == 2;
    return !isBall ? NONE : bent ? NEARLY : WHOLLY;
  }

  /** Whether a face stands out over the plane of another, across an edge of that, by more than rounding makes it. */
  private static boolean standsOut(Faces faces, Face face, Face over, int edge) {
    Plane plane = faces.plane(over.plane);
    double length = Math.sqrt((double) plane.normal(0) * plane.normal(0) + (double) plane.normal(1) * plane.normal(1)
        + (double) plane.normal(2) * plane.normal(2));
    for (int v : face.from) {
      double height = plane.roughOffset(faces.x(v), faces.y(v), faces.z(v)) / length;
      double up = over.up ? height : -height;
      if (up > BENT && up > TILTED * distance(faces, v, over.from[edge], over.to[edge])) {
        return true;
      }
    }
    return false;
  }

  /** About how far a corner lies from the line through two others. */
  private static double distance(Faces faces, int v, int a, int b) {
    double[] along = new double[3];
    double[] off = new double[3];
    double dot = 0;
    double square = 0;
    for (int k = 0; k < 3; k++) {
      along[k] = faces.coordinate(b, k) - faces.coordinate(a, k);
      off[k] = faces.coordinate(v, k) - faces.coordinate(a, k);
      dot += along[k] * off[k];
      square += along[k] * along[k];
    }
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      double d = off[k] - dot / square * along[k];
      sum += d * d;
    }
    return Math.sqrt(sum);
  }

  /** The edge of two faces bends outwards if it runs along the cross product of their outward normals. */
  private static boolean bendsInwards(Faces faces, Face face, int e) {
    Face next = faces.face(face.across[e]);
    if (face.plane == next.plane) {
      return face.up != next.up;
    }
    int a = face.from[e];
    int b = face.to[e];
    int axis = faces.x(a) != faces.x(b) ? 0 : faces.y(a) != faces.y(b) ? 1 : 2;
    boolean rises = faces.coordinate(a, axis) < faces.coordinate(b, axis);
    int way = Plane.direction(faces.plane(face.plane), faces.plane(next.plane), axis);
    return way > 0 == rises != (face.up == next.up);
  }
}
