package outrigger.shapes.mesh.inside;

import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;

/**
 * The planes of a convex or nearly convex operand's faces in doubles, its walls, and what they tell of points without doubt.
 *
 * <p>They are kept in one row of numbers, in the order of the faces: inner loops run over them.
 */
final class Walls {
  /**
   * Numbers a wall has: three of its normal, which points outward, its offset, how far off zero leaves no doubt, and the
   * offset of the corner that is farthest out.
   */
  private static final int WIDTH = 6;

  private final int operand;
  private final double[] walls;

  private Walls(int operand, double[] walls) {
    this.operand = operand;
    this.walls = walls;
  }

  /**
   * The walls of an operand.
   *
   * <p>For coordinates within 2^24 of which each is within 2^-24 of itself: with S the sum of the normal's magnitudes, these
   * errors come to 2^-24 S, that of d to 2^-51 2^24 S, and five roundings of 2^-53 of at most 2 S 2^24 to 2^-26 S at most.
   *
   * @param isConvex whether it is wholly convex, so that no corner lies farther out than its wall
   */
  static Walls of(Faces faces, int operand, boolean isConvex) {
    int from = faces.firstFace(operand);
    int to = faces.firstFace(operand + 1);
    double[] walls = new double[WIDTH * (to - from)];
    for (int f = from; f < to; f++) {
      Plane plane = faces.plane(faces.planeOf(f));
      int way = faces.face(f).up ? 1 : -1;
      int w = WIDTH * (f - from);
      double size = 0;
      for (int k = 0; k < 3; k++) {
        walls[w + k] = (double) way * plane.normal(k);
        size += Math.abs(walls[w + k]);
      }
      walls[w + 3] = way * plane.roughD();
      walls[w + 4] = size * 0x1.8p-24;
      walls[w + 5] = isConvex ? walls[w + 3] : farthest(faces, operand, walls, w);
    }
    return new Walls(operand, walls);
  }

  private static double farthest(Faces faces, int operand, double[] walls, int w) {
    double farthest = walls[w + 3];
    for (int h = faces.firstEdge(operand); h < faces.firstEdge(operand + 1); h++) {
      int v = faces.from(h);
      farthest = Math.max(farthest, walls[w] * faces.x(v) + walls[w + 1] * faces.y(v) + walls[w + 2] * faces.z(v));
    }
    return farthest;
  }

  /** Side of a point against the wall of the operand's i-th face: 1 outside, -1 behind it; 0 where that is in doubt. */
  int side(int i, ExactPoint p) {
    int w = WIDTH * i;
    double s = walls[w] * p.rough(0) + walls[w + 1] * p.rough(1) + walls[w + 2] * p.rough(2) - walls[w + 3];
    return Math.abs(s) > walls[w + 4] ? s > 0 ? 1 : -1 : 0;
  }

  /**
   * Whether a point known in doubles is seen to lie strictly behind all walls.
   *
   * @param doubt how many times 2^-24 its coordinates may be off
   */
  boolean holdClearly(double x, double y, double z, int doubt) {
    for (int w = 0; w < walls.length; w += WIDTH) {
      if (walls[w] * x + walls[w + 1] * y + walls[w + 2] * z - walls[w + 3] >= -doubt * walls[w + 4]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Adds the part of a straight piece, known in doubles, that is seen to lie strictly behind all walls.
   *
   * @param ends x, y, z of both its ends
   * @param doubt how many times 2^-24 these may be off
   */
  void addHeld(double[] ends, int doubt, HiddenParts parts) {
    double begin = 0;
    double end = 1;
    for (int w = 0; w < walls.length && begin < end; w += WIDTH) {
      double over = walls[w + 3] - doubt * walls[w + 4];
      double first = walls[w] * ends[0] + walls[w + 1] * ends[1] + walls[w + 2] * ends[2] - over;
      double last = walls[w] * ends[3] + walls[w + 1] * ends[4] + walls[w + 2] * ends[5] - over;
      if (first >= 0 && last >= 0) {
        return;
      } else if (first >= 0) {
        begin = Math.max(begin, first / (first - last));
      } else if (last >= 0) {
        end = Math.min(end, first / (first - last));
      }
    }
    if (begin < end) {
      parts.add(operand, begin, end);
    }
  }

  /** Whether all corners of a face are seen to lie on the far side of one wall. */
  boolean areBeyond(Faces faces, Face face) {
    for (int w = 0; w < walls.length; w += WIDTH) {
      int e = 0;
      while (e < face.edges()
          && isBeyond(w, faces.x(face.from[e]), faces.y(face.from[e]), faces.z(face.from[e]), 1)) {
        e++;
      }
      if (e == face.edges()) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether two points known in doubles are seen to lie on the far side of one wall.
   *
   * @param ends x, y, z of both
   * @param doubt how many times 2^-24 these may be off
   */
  boolean areBeyond(double[] ends, int doubt) {
    for (int w = 0; w < walls.length; w += WIDTH) {
      if (isBeyond(w, ends[0], ends[1], ends[2], doubt) && isBeyond(w, ends[3], ends[4], ends[5], doubt)) {
        return true;
      }
    }
    return false;
  }

  private boolean isBeyond(int w, double x, double y, double z, int doubt) {
    return walls[w] * x + walls[w + 1] * y + walls[w + 2] * z - walls[w + 5] > doubt * walls[w + 4];
  }

  /** Where all walls together show a point to lie: -1 inside, 1 outside; 0 where they do not tell. */
  int clearSide(ExactPoint p) {
    double x = p.rough(0);
    double y = p.rough(1);
    double z = p.rough(2);
    boolean inside = true;
    for (int w = 0; w < walls.length; w += WIDTH) {
      double s = walls[w] * x + walls[w + 1] * y + walls[w + 2] * z;
      if (s - walls[w + 5] > walls[w + 4]) {
        return 1;
      }
      inside &= s - walls[w + 3] < -walls[w + 4];
    }
    return inside ? -1 : 0;
  }
}
