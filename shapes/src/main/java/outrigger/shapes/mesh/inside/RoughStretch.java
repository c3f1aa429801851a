package outrigger.shapes.mesh.inside;

import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.EdgeBlocks;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;

/**
 * About where the stretch begins and ends that two faces may have in common, in doubles: enough to see of most hidden pairs
 * that they are hidden, or have nothing in common, before any of their points is worked out exactly.
 *
 * <p>A place where an edge passes through a plane comes within 2^-24 grid units: offsets within 2^-51 of themselves, of
 * opposite sign, over a length below 2^25. Of two places less than twice that apart along the axis the wrong one may be
 * taken for an end; along the line, which rises by more than half of its length on that axis, they lie within 2^-22. So
 * ends are within 2^-21.
 */
public final class RoughStretch {
  /** How many times 2^-24 an end may be off. */
  static final int DOUBT = 8;
  /** More than two ends can be off along an axis. */
  public static final double APART = 0x1p-20;

  private final Faces faces;
  private int axis;
  /** Lowest and highest point of what was cut last, and of what both have in common: x, y, z each. */
  private final double[] cut = new double[6];
  private final double[] ends = new double[6];

  /** For any two of some faces, one after the other. */
  public RoughStretch(Faces faces) {
    this.faces = faces;
  }

  /** Looks at two faces, each cut by the other's plane, along the axis on which the common line advances most. */
  public void look(Face f, Plane ofG, Face g, Plane ofF, int along) {
    axis = along;
    cut(f, ofG);
    System.arraycopy(cut, 0, ends, 0, 6);
    cut(g, ofF);
    if (cut[axis] > ends[axis]) {
      System.arraycopy(cut, 0, ends, 0, 3);
    }
    if (cut[3 + axis] < ends[3 + axis]) {
      System.arraycopy(cut, 3, ends, 3, 3);
    }
  }

  /** Whether the faces are seen to have nothing in common. */
  public boolean isNothing() {
    return ends[axis] > ends[3 + axis] + APART;
  }

  /** Whether they are seen to have something in common. */
  public boolean isSomething() {
    return ends[axis] < ends[3 + axis] - APART;
  }

  /** Whether both ends, and so all of it, are seen to lie strictly inside an operand, by its walls. */
  boolean isInside(Walls walls) {
    return walls.holdClearly(ends[0], ends[1], ends[2], DOUBT) && walls.holdClearly(ends[3], ends[4], ends[5], DOUBT);
  }

  /** Whether both ends, and so all of it, are seen to lie strictly beyond one wall of an operand. */
  boolean isOutside(Walls walls) {
    return walls.areBeyond(ends, DOUBT);
  }

  private void cut(Face face, Plane plane) {
    cut[axis] = Double.POSITIVE_INFINITY;
    cut[3 + axis] = Double.NEGATIVE_INFINITY;
    EdgeBlocks blocks = face.blocks(faces);
    double most = Double.POSITIVE_INFINITY;
    for (int e = EdgeBlocks.next(blocks, 0, plane, axis, most); e < face.edges();
        e = EdgeBlocks.next(blocks, e + 1, plane, axis, most)) {
      int a = face.from[e];
      int b = face.to[e];
      int sa = faces.side(a, plane);
      if (sa == 0) {
        add(faces.x(a), faces.y(a), faces.z(a));
      } else if (sa * faces.side(b, plane) < 0) {
        double share = faces.roughShare(a, b, plane);
        add(faces.x(a) + share * (faces.x(b) - faces.x(a)), faces.y(a) + share * (faces.y(b) - faces.y(a)),
            faces.z(a) + share * (faces.z(b) - faces.z(a)));
      }
    }
  }

  private void add(double x, double y, double z) {
    double at = axis == 0 ? x : axis == 1 ? y : z;
    if (at < cut[axis]) {
      put(0, x, y, z);
    }
    if (at > cut[3 + axis]) {
      put(3, x, y, z);
    }
  }

  private void put(int at, double x, double y, double z) {
    cut[at] = x;
    cut[at + 1] = y;
    cut[at + 2] = z;
  }
}
