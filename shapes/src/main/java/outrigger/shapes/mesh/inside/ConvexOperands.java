package outrigger.shapes.mesh.inside;

import java.util.function.IntConsumer;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.num.Shares;

/**
 * Which operands are convex and of few faces, so that the planes of their faces tell at once what is inside; and which are so
 * but for what rounding turned corners to the grid has bent, so that the planes still tell of most places. Several threads may
 * ask: what one asked last decides where it begins, not what it finds.
 *
 * <p>What lies strictly behind all planes of a closed surface lies inside it, convex or not: any ray from there to a face
 * passes only outward. What lies beyond a plane moved out to the farthest corner lies outside.
 */
public final class ConvexOperands {
  /**
   * Up to how many faces asking all planes is quicker than a ray. Not sharp: where hundreds of operands crowd, a ray costs
   * as much as some hundred planes.
   */
  private static final int FEW = 128;
  /**
   * Numbers a wall has: three of its normal, its offset, how far off zero leaves no doubt, and the offset of the corner that
   * is farthest out.
   */
  private static final int WALL = 6;
  /** How far a corner rounded to the grid may come to stand out over a plane through others, grid units. */
  private static final double BENT = 2;
  /**
   * The same where the plane is that of a narrow facet, which rounding tilts: as a part of how far the corner lies from the
   * edge. An operand bent more hides less, but what it hides it hides.
   */
  private static final double TILTED = 1 / 64.0;

  private final Faces faces;
  private final boolean[] convex;
  private final boolean[] nearly;
  private final int[] boxes;
  private final BoxTree tree;
  /** Of the faces of each convex operand the planes, normals outward, and how far off zero leaves no doubt. */
  private final double[][] walls;
  /** Of each operand the face, counted from its first, that last was found to have a point outside. */
  private final int[] last;

  /** Looks at all operands; those whose faces do not know their neighbours count as not convex. */
  public ConvexOperands(Faces faces) {
    this.faces = faces;
    int n = faces.operandCount();
    convex = new boolean[n];
    nearly = new boolean[n];
    boxes = new int[6 * n];
    last = new int[n];
    walls = new double[n][];
    boolean[] counted = new boolean[faces.vertexCount()];
    Shares.of(faces.workers(), n, k -> faces.firstFace(k + 1) - faces.firstFace(k)).each(() -> (from, to) -> {
      for (int k = from; k < to; k++) {
        look(k, counted);
        System.arraycopy(faces.operandBox(k), 0, boxes, 6 * k, 6);
        walls[k] = nearly[k] ? walls(k) : new double[0];
      }
      return to;
    });
    tree = BoxTree.of(boxes);
  }

  /**
   * For coordinates within 2^24 of which each is within 2^-24 of itself: with S the sum of the normal's magnitudes, these
   * errors come to 2^-24 S, that of d to 2^-51 2^24 S, and five roundings of 2^-53 of at most 2 S 2^24 to 2^-26 S at most.
   */
  private double[] walls(int operand) {
    int from = faces.firstFace(operand);
    int to = faces.firstFace(operand + 1);
    double[] walls = new double[WALL * (to - from)];
    for (int f = from; f < to; f++) {
      Plane plane = faces.plane(faces.planeOf(f));
      int way = faces.face(f).up ? 1 : -1;
      int w = WALL * (f - from);
      double size = 0;
      for (int k = 0; k < 3; k++) {
        walls[w + k] = (double) way * plane.normal(k);
        size += Math.abs(walls[w + k]);
      }
      walls[w + 3] = way * plane.roughD();
      walls[w + 4] = size * 0x1.8p-24;
      walls[w + 5] = convex[operand] ? walls[w + 3] : farthest(operand, walls, w);
    }
    return walls;
  }

  private double farthest(int operand, double[] walls, int w) {
    double farthest = walls[w + 3];
    for (int h = faces.firstEdge(operand); h < faces.firstEdge(operand + 1); h++) {
      int v = faces.from(h);
      farthest = Math.max(farthest, walls[w] * faces.x(v) + walls[w + 1] * faces.y(v) + walls[w + 2] * faces.z(v));
    }
    return farthest;
  }

  /**
   * Finds whether an operand is convex, or nearly: if it is sound, of one shell without handles, and no edge of it bends
   * inwards, or none by more than rounding makes it.
   *
   * @param counted room for a mark a vertex; no two operands share one
   */
  private void look(int operand, boolean[] counted) {
    boolean bent = false;
    int vertices = 0;
    int edges = 0;
    int from = faces.firstFace(operand);
    int to = faces.firstFace(operand + 1);
    if (to - from > FEW) {
      return;
    }
    for (int f = from; f < to; f++) {
      Face face = faces.face(f);
      if (faces.halfEdges().loop(face.first) != faces.halfEdges().loop(face.first + face.edges() - 1)) {
        return;
      }
      for (int e = 0; e < face.edges(); e++) {
        if (face.across[e] < 0) {
          return;
        }
        if (bendsInwards(face, e)) {
          bent = true;
          if (standsOut(faces.face(face.across[e]), face, e)) {
            return;
          }
        }
        vertices += counted[face.from[e]] ? 0 : 1;
        counted[face.from[e]] = true;
      }
      edges += face.edges();
    }
    nearly[operand] = vertices - edges / 2 + to - from == 2;
    convex[operand] = nearly[operand] && !bent;
  }

  /** Whether a face stands out over the plane of another, across an edge of that, by more than rounding makes it. */
  private boolean standsOut(Face face, Face over, int edge) {
    Plane plane = faces.plane(over.plane);
    double length = Math.sqrt((double) plane.normal(0) * plane.normal(0) + (double) plane.normal(1) * plane.normal(1)
        + (double) plane.normal(2) * plane.normal(2));
    for (int v : face.from) {
      double height = plane.roughOffset(faces.x(v), faces.y(v), faces.z(v)) / length;
      double up = over.up ? height : -height;
      if (up > BENT && up > TILTED * distance(v, over.from[edge], over.to[edge])) {
        return true;
      }
    }
    return false;
  }

  /** About how far a corner lies from the line through two others. */
  private double distance(int v, int a, int b) {
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
  private boolean bendsInwards(Face face, int e) {
    Face next = faces.face(face.across[e]);
    if (face.plane == next.plane) {
      return face.up != next.up;
    }
    int a = face.from[e];
    int b = face.to[e];
    int axis = faces.x(a) != faces.x(b) ? 0 : faces.y(a) != faces.y(b) ? 1 : 2;
    boolean rises = axis == 0 ? faces.x(a) < faces.x(b) : axis == 1 ? faces.y(a) < faces.y(b) : faces.z(a) < faces.z(b);
    int way = Plane.direction(faces.plane(face.plane), faces.plane(next.plane), axis);
    return way > 0 == rises != (face.up == next.up);
  }

  boolean isConvex(int operand) {
    return convex[operand];
  }

  /** Whether it is convex but for what rounding has bent. */
  boolean isNearlyConvex(int operand) {
    return nearly[operand];
  }

  /** Whether an edge of a face of a convex operand is seen to have all of another face of its plane outside of it. */
  public boolean areApart(Face face, Face other) {
    for (int e = 0; convex[face.operand] && e < face.edges(); e++) {
      Face next = faces.face(face.across[e]);
      if (next.plane != face.plane && isBeyond(other, next)) {
        return true;
      }
    }
    return false;
  }

  private boolean isBeyond(Face face, Face wall) {
    for (int e = 0; e < face.edges(); e++) {
      int side = faces.side(face.from[e], faces.plane(wall.plane));
      if (side == 0 || side > 0 != wall.up) {
        return false;
      }
    }
    return true;
  }

  /** The boxes of all operands. */
  BoxTree tree() {
    return tree;
  }

  /** Gives each operand, itself included, whose box meets that of one. */
  void forEachNear(int operand, IntConsumer consumer) {
    int b = 6 * operand;
    tree.forEachOverlap(boxes[b], boxes[b + 1], boxes[b + 2], boxes[b + 3], boxes[b + 4], boxes[b + 5], consumer);
  }

  /** Whether a box, its bounds found at a place among those of many, meets the box of an operand. */
  boolean boxMeets(int operand, int[] all, int at) {
    for (int k = 0; k < 3; k++) {
      if (all[at + k] > boxes[6 * operand + 3 + k] || all[at + 3 + k] < boxes[6 * operand + k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether a box, its bounds found at a place among those of many, lies inside the box of an operand. */
  boolean boxHolds(int operand, int[] all, int at) {
    for (int k = 0; k < 3; k++) {
      if (all[at + k] <= boxes[6 * operand + k] || all[at + 3 + k] >= boxes[6 * operand + 3 + k]) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point may lie in the box of an operand, by a grid unit. */
  boolean isNear(int operand, ExactPoint p) {
    for (int k = 0; k < 3; k++) {
      long at = p.grid(k);
      if (at < boxes[6 * operand + k] - 1 || at > boxes[6 * operand + 3 + k] + 1) {
        return false;
      }
    }
    return true;
  }

  /**
   * Side of a point against a convex operand: -1 strictly inside, 0 on its surface, 1 outside; of a nearly convex one only
   * -1 is to be relied on.
   *
   * @param but number of a plane that is not asked, or -1
   */
  int side(int operand, ExactPoint p, int but) {
    int from = faces.firstFace(operand);
    int count = faces.firstFace(operand + 1) - from;
    int side = -1;
    int i = last[operand];
    for (int n = 0; n < count; n++) {
      if (faces.planeOf(from + i) != but) {
        int s = side(walls[operand], WALL * i, from + i, p);
        if (s > 0) {
          last[operand] = i;
          return 1;
        }
        side = s == 0 ? 0 : side;
      }
      i = i + 1 == count ? 0 : i + 1;
    }
    return side;
  }

  /** Side of a point against a wall, which is a face: 1 outside. */
  private int side(double[] wall, int w, int face, ExactPoint p) {
    double s = wall[w] * p.rough(0) + wall[w + 1] * p.rough(1) + wall[w + 2] * p.rough(2) - wall[w + 3];
    if (Math.abs(s) > wall[w + 4]) {
      return s > 0 ? 1 : -1;
    }
    int exact = p.side(faces.plane(faces.planeOf(face)));
    return faces.face(face).up ? exact : -exact;
  }

  /**
   * Whether a point known in doubles is seen to lie strictly behind all planes of a nearly convex operand.
   *
   * @param doubt how many times 2^-24 its coordinates may be off
   */
  boolean holdsClearly(int operand, double x, double y, double z, int doubt) {
    double[] all = walls[operand];
    for (int w = 0; w < all.length; w += WALL) {
      if (all[w] * x + all[w + 1] * y + all[w + 2] * z - all[w + 3] >= -doubt * all[w + 4]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Adds the part of a straight piece, known in doubles, that is seen to lie strictly behind all planes of a nearly convex
   * operand.
   *
   * @param ends x, y, z of both its ends
   * @param doubt how many times 2^-24 these may be off
   */
  void addHeld(int operand, double[] ends, int doubt, HiddenParts parts) {
    double[] all = walls[operand];
    double begin = 0;
    double end = 1;
    for (int w = 0; w < all.length && begin < end; w += WALL) {
      double over = all[w + 3] - doubt * all[w + 4];
      double first = all[w] * ends[0] + all[w + 1] * ends[1] + all[w + 2] * ends[2] - over;
      double last = all[w] * ends[3] + all[w + 1] * ends[4] + all[w + 2] * ends[5] - over;
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

  /** Whether all corners of a face are seen to lie on the far side of one plane of a nearly convex operand. */
  boolean areClearlyBeyond(int operand, Face face) {
    double[] all = walls[operand];
    for (int w = 0; w < all.length; w += WALL) {
      int e = 0;
      while (e < face.edges() && isBeyond(all, w, faces.x(face.from[e]), faces.y(face.from[e]), faces.z(face.from[e]), 1)) {
        e++;
      }
      if (e == face.edges()) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether two points known in doubles are seen to lie on the far side of one plane of a nearly convex operand.
   *
   * @param ends x, y, z of both
   * @param doubt how many times 2^-24 these may be off
   */
  boolean areClearlyBeyond(int operand, double[] ends, int doubt) {
    double[] all = walls[operand];
    for (int w = 0; w < all.length; w += WALL) {
      if (isBeyond(all, w, ends[0], ends[1], ends[2], doubt) && isBeyond(all, w, ends[3], ends[4], ends[5], doubt)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBeyond(double[] all, int w, double x, double y, double z, int doubt) {
    return all[w] * x + all[w + 1] * y + all[w + 2] * z - all[w + 5] > doubt * all[w + 4];
  }

  /** Where the planes of a nearly convex operand show a point to lie: -1 inside, 1 outside; 0 where they do not tell. */
  int clearSide(int operand, ExactPoint p) {
    double[] all = walls[operand];
    double x = p.rough(0);
    double y = p.rough(1);
    double z = p.rough(2);
    boolean inside = true;
    for (int w = 0; w < all.length; w += WALL) {
      double s = all[w] * x + all[w + 1] * y + all[w + 2] * z;
      if (s - all[w + 5] > all[w + 4]) {
        return 1;
      }
      inside &= s - all[w + 3] < -all[w + 4];
    }
    return inside ? -1 : 0;
  }

  /** Which way a convex operand's face in a plane looks: 1 up the plane's normal, -1 down it, 0 where it has none there. */
  int lookOf(int operand, int plane) {
    for (int f = faces.firstFace(operand); f < faces.firstFace(operand + 1); f++) {
      if (faces.face(f).plane == plane) {
        return faces.face(f).up ? 1 : -1;
      }
    }
    return 0;
  }

  /** Whether a corner lies strictly behind all planes of a nearly convex operand. */
  boolean holds(int operand, int vertex) {
    for (int f = faces.firstFace(operand); f < faces.firstFace(operand + 1); f++) {
      Face face = faces.face(f);
      int s = faces.side(vertex, faces.plane(face.plane));
      if (s == 0 || s > 0 == face.up) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point lies strictly behind all planes of a nearly convex operand; ask whether it is near first. */
  boolean holds(int operand, ExactPoint p) {
    return side(operand, p, -1) < 0;
  }
}
