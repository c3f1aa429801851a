package outrigger.shapes.mesh.frame;

import java.util.List;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.Upright;

/**
 * A number for how operands lie in each of some frames: equal where they look the same, whatever the order of operands,
 * faces and corners, and different otherwise but for chance of one in 2^64.
 *
 * <p>Sums over faces of what their corners hash to, about the middle of the bounds.
 */
final class Signature {
  // 2^64 over the golden ratio and other multipliers in common use for hashing: any odd numbers of mixed bits would do
  private static final long A = 0x9E3779B97F4A7C15L;
  private static final long B = 0xC2B2AE3D27D4EB4FL;
  private static final long C = 0x165667B19E3779F9L;
  private static final long D = 0xD6E8FEB86659FD93L;

  private final List<Frame> frames;
  private final long[] twiceMiddle;
  /** By frame, sums so far: over the corners of a face, the faces of an operand, all operands. */
  private final long[] face;
  private final long[] operand;
  private final long[] all;

  private Signature(List<Frame> frames, long[] twiceMiddle) {
    this.frames = frames;
    this.twiceMiddle = twiceMiddle;
    face = new long[frames.size()];
    operand = new long[frames.size()];
    all = new long[frames.size()];
  }

  /**
   * The frame with the least number, the first of these.
   *
   * @param twiceMiddle of the bounds
   * @param cutAway of each operand whether an odd number of cuts takes it away
   */
  static Frame least(List<Frame> frames, long[] twiceMiddle, List<Polyhedron> operands, List<Boolean> cutAway) {
    Signature signature = new Signature(frames, twiceMiddle);
    for (int i = 0; i < operands.size(); i++) {
      for (int[][] loops : operands.get(i).faces()) {
        for (int[] loop : loops) {
          for (int v : loop) {
            signature.addCorner(operands.get(i).xyz(), v);
          }
        }
        signature.endFace();
      }
      signature.endOperand(cutAway.get(i));
    }
    return signature.least();
  }

  /** The same of upright operands: their numbers are those of their polyhedra. */
  static Frame leastOfUprights(List<Frame> frames, long[] twiceMiddle, List<Upright> operands,
      List<Boolean> cutAway) {
    Signature signature = new Signature(frames, twiceMiddle);
    for (int i = 0; i < operands.size(); i++) {
      Upright upright = operands.get(i);
      for (int region = 0; region < upright.rings.length; region++) {
        int from = upright.rings[region][0];
        int to = upright.end(region, upright.rings[region].length - 1);
        for (int end = 0; end < 2; end++) {
          for (int e = from; e < to; e++) {
            signature.addCorner(upright.xyz, 2 * e + end);
          }
          signature.endFace();
        }
        for (int ring = 0; ring < upright.rings[region].length; ring++) {
          signature.addWalls(upright.xyz, upright.rings[region][ring], upright.end(region, ring));
        }
      }
      signature.endOperand(cutAway.get(i));
    }
    return signature.least();
  }

  private void addWalls(int[] xyz, int from, int to) {
    for (int e = from, last = to - 1; e < to; last = e, e++) {
      addCorner(xyz, 2 * e);
      addCorner(xyz, 2 * e + 1);
      addCorner(xyz, 2 * last);
      addCorner(xyz, 2 * last + 1);
      endFace();
    }
  }

  private void addCorner(int[] xyz, int v) {
    for (int i = 0; i < face.length; i++) {
      Frame frame = frames.get(i);
      face[i] += mixed(at(frame, 0, xyz, v) * A ^ Long.rotateLeft(at(frame, 1, xyz, v) * B, 21)
          ^ Long.rotateLeft(at(frame, 2, xyz, v) * C, 42));
    }
  }

  private long at(Frame frame, int k, int[] xyz, int v) {
    int axis = frame.axis(k);
    return frame.sign(axis) * (2L * xyz[3 * v + axis] - twiceMiddle[axis]);
  }

  private void endFace() {
    for (int i = 0; i < face.length; i++) {
      operand[i] += mixed(face[i]);
      face[i] = 0;
    }
  }

  private void endOperand(boolean cutAway) {
    for (int i = 0; i < operand.length; i++) {
      all[i] += mixed(cutAway ? operand[i] + D : operand[i]);
      operand[i] = 0;
    }
  }

  private Frame least() {
    int least = 0;
    for (int i = 1; i < all.length; i++) {
      least = all[i] < all[least] ? i : least;
    }
    return frames.get(least);
  }

  private static long mixed(long value) {
    long h = (value ^ value >>> 32) * D;
    h = (h ^ h >>> 29) * A;
    return h ^ h >>> 32;
  }
}
