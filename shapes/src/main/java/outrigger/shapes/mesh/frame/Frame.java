package outrigger.shapes.mesh.frame;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.Upright;
import outrigger.shapes.num.Place;

/**
 * Axes that an expression's operands set themselves, so that the same solid turned by right angles or mirrored is
 * evaluated in the very same coordinates, and wherever it is moved by grid steps as well: the middle of its bounds is the
 * origin.
 *
 * <p>Rounding halves upward and choosing between equal diagonals would otherwise differ from one position to the next, and
 * so would what lies far outside, as the triangle that a triangulation starts with.
 * The axes are put in the order of the operands' {@link Moments} along them, and each is turned the way its odd moments
 * are positive. Of what these leave open the frame with the least {@link Signature} is taken: where two have the same, the
 * operands look the same in both.
 */
public final class Frame {
  /** All orders of three axes. */
  private static final int[][] ORDERS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

  /** The axes as they are given. */
  public static final Frame GIVEN = new Frame(ORDERS[0]);

  private final int[] axis;
  private final int[] sign = {1, 1, 1};
  /** The middle of the operands' bounds along each given axis once it is turned its way; halves are taken down. */
  private final int[] middle = new int[3];

  private Frame(int[] axis) {
    this.axis = axis;
  }

  /**
   * The frame of some operands.
   *
   * @param cutAway of each operand whether an odd number of cuts takes it away
   */
  public static Frame of(List<Polyhedron> operands, List<Boolean> cutAway) {
    Moments moments = Moments.of(operands, cutAway);
    List<Frame> frames = candidates(moments);
    return frames.size() == 1 ? frames.get(0) : Signature.least(frames, moments.twiceMiddle(), operands, cutAway);
  }

  /** The frame of upright operands: that of their polyhedra. */
  public static Frame ofUprights(List<Upright> operands, List<Boolean> cutAway) {
    Moments moments = Moments.ofUprights(operands, cutAway);
    List<Frame> frames = candidates(moments);
    return frames.size() == 1 ? frames.get(0)
        : Signature.leastOfUprights(frames, moments.twiceMiddle(), operands, cutAway);
  }

  /** The frames that moments leave open. */
  private static List<Frame> candidates(Moments moments) {
    List<Frame> frames = new ArrayList<>();
    for (int[] order : ORDERS) {
      if (moments.compare(order[0], order[1]) <= 0 && moments.compare(order[1], order[2]) <= 0) {
        addSigned(order, moments, frames);
      }
    }
    frames.forEach(frame -> frame.centre(moments.twiceMiddle()));
    return frames;
  }

  private void centre(long[] twiceMiddle) {
    for (int k = 0; k < 3; k++) {
      middle[k] = (int) Math.floorDiv(sign[k] * twiceMiddle[k], 2L);
    }
  }

  /** Adds the frames of one order of axes, each axis either way that its odd moments allow. */
  private static void addSigned(int[] order, Moments moments, List<Frame> frames) {
    int[] way = {moments.way(order[0], order[1], order[2]), moments.way(order[1], order[0], order[2]),
        moments.way(order[2], order[0], order[1])};
    for (int signs = 0; signs < 8; signs++) {
      Frame frame = new Frame(order);
      boolean allowed = true;
      for (int i = 0; i < 3; i++) {
        int given = (signs >> i & 1) == 0 ? 1 : -1;
        frame.sign[order[i]] = given;
        allowed &= way[i] == 0 || way[i] == given;
      }
      if (allowed) {
        frames.add(frame);
      }
    }
  }

  /** The given axis that is this frame's axis 0, 1 or 2. */
  int axis(int k) {
    return axis[k];
  }

  /** Which way a given axis goes in this frame: 1 or -1. */
  int sign(int given) {
    return sign[given];
  }

  private boolean isGiven() {
    return axis[0] == 0 && axis[1] == 1 && sign[0] > 0 && sign[1] > 0 && sign[2] > 0 && middle[0] == 0 && middle[1] == 0
        && middle[2] == 0;
  }

  private boolean mirrors() {
    boolean even = axis[0] == 0 && axis[1] == 1 || axis[0] == 1 && axis[1] == 2 || axis[0] == 2 && axis[1] == 0;
    return even != sign[0] * sign[1] * sign[2] > 0;
  }

  /** An operand in this frame. */
  public Polyhedron in(Polyhedron p) {
    if (isGiven()) {
      return p;
    }
    return new Polyhedron(in(p.xyz()), mirrors() ? LeafBuilder.reversed(p.faces()) : p.faces());
  }

  /** Facets in this frame. */
  public Rounded in(Rounded facets) {
    return isGiven() ? facets
        : new Rounded(in(facets.xyz()), mirrors() ? reversed(facets.corners()) : facets.corners(), facets.moved(),
            (v, k) -> facets.before(v, axis[k]).multiply(BigInteger.valueOf(sign[axis[k]]))
                .subtract(Rounded.fixed(middle[axis[k]])));
  }

  /** An operand in this frame. */
  public Upright in(Upright upright) {
    return isGiven() ? upright : new Upright(in(upright.xyz), upright.rings);
  }

  private int[] in(int[] given) {
    int[] xyz = new int[given.length];
    for (int i = 0; i < xyz.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + k] = sign[axis[k]] * given[i + axis[k]] - middle[axis[k]];
      }
    }
    return xyz;
  }

  /** Facets turned over. */
  public static int[] reversed(int[] corners) {
    int[] reversed = corners.clone();
    for (int i = 0; i < corners.length; i += 3) {
      reversed[i + 1] = corners[i + 2];
      reversed[i + 2] = corners[i + 1];
    }
    return reversed;
  }

  /** A place in this frame, brought back to the given axes. */
  public Place out(Place place) {
    int[] in = {place.x(), place.y(), place.z()};
    int[] given = new int[3];
    for (int k = 0; k < 3; k++) {
      given[axis[k]] = sign[axis[k]] * (in[k] + middle[axis[k]]);
    }
    return Place.of(given, 0);
  }

  /** A mesh made in this frame, brought back to the given axes. */
  public Mesh out(Mesh mesh) {
    if (isGiven()) {
      return mesh;
    }
    int[] from = mesh.xyz();
    int[] xyz = new int[from.length];
    for (int i = 0; i < xyz.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + axis[k]] = sign[axis[k]] * (from[i + k] + middle[axis[k]]);
      }
    }
    return Mesh.of(xyz, mirrors() ? reversed(mesh.corners()) : mesh.corners());
  }
}
