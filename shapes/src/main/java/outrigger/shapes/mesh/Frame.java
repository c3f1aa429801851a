package outrigger.shapes.mesh;

import java.util.List;

/**
 * Axes that an expression's operands set themselves, so that the same solid turned by right angles or mirrored is
 * evaluated in the very same coordinates.
 *
 * <p>Rounding halves upward and choosing between equal diagonals would otherwise differ from one position to the next.
 * The axes are put in the order of the operands' {@link Moments} along them, and each is turned the way its odd moments
 * are positive; where these are 0, the way in which its product with an axis before it is. Where nothing tells two axes
 * or ways apart the solid most often looks the same both ways; if not, the choice is left to chance and no worse than none.
 */
final class Frame {
  private final int[] axis = {0, 1, 2};
  private final int[] sign = {1, 1, 1};

  /** The axes as they are given. */
  Frame() {}

  /**
   * The frame of some operands.
   *
   * @param cutAway of each operand whether an odd number of cuts takes it away
   */
  static Frame of(List<Polyhedron> operands, List<Boolean> cutAway) {
    return of(Moments.of(operands, cutAway));
  }

  /** The frame of operands with these moments. */
  static Frame of(Moments moments) {
    Frame frame = new Frame();
    frame.order(moments);
    frame.direct(moments);
    return frame;
  }

  private void order(Moments moments) {
    for (int i = 0; i < 3; i++) {
      for (int j = i + 1; j < 3; j++) {
        if (moments.compare(axis[j], axis[i]) < 0) {
          int swapped = axis[i];
          axis[i] = axis[j];
          axis[j] = swapped;
        }
      }
    }
  }

  private void direct(Moments moments) {
    boolean[] directed = new boolean[3];
    for (int i = 0; i < 3; i++) {
      int way = moments.way(axis[i], axis[i == 0 ? 1 : 0], axis[i == 2 ? 1 : 2]);
      directed[i] = way != 0;
      sign[axis[i]] = way < 0 ? -1 : 1;
    }
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3 && !directed[i]; j++) {
        int together = moments.together(axis[i], axis[j]);
        if (together != 0 && (directed[j] || j < i)) {
          sign[axis[i]] = together * sign[axis[j]];
          directed[i] = true;
        }
      }
    }
  }

  private boolean isGiven() {
    return axis[0] == 0 && axis[1] == 1 && sign[0] > 0 && sign[1] > 0 && sign[2] > 0;
  }

  private boolean mirrors() {
    boolean even = axis[0] == 0 && axis[1] == 1 || axis[0] == 1 && axis[1] == 2 || axis[0] == 2 && axis[1] == 0;
    return even != sign[0] * sign[1] * sign[2] > 0;
  }

  /** An operand in this frame. */
  Polyhedron in(Polyhedron p) {
    if (isGiven()) {
      return p;
    }
    return new Polyhedron(in(p.xyz()), mirrors() ? LeafBuilder.reversed(p.faces()) : p.faces());
  }

  /** Facets in this frame. */
  Kernel.Rounded in(Kernel.Rounded facets) {
    return isGiven() ? facets
        : new Kernel.Rounded(in(facets.xyz()), mirrors() ? reversed(facets.corners()) : facets.corners(), facets.moved());
  }

  /** An operand in this frame. */
  Upright in(Upright upright) {
    return isGiven() ? upright : new Upright(in(upright.xyz), upright.rings);
  }

  private int[] in(int[] given) {
    int[] xyz = new int[given.length];
    for (int i = 0; i < xyz.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + k] = sign[axis[k]] * given[i + axis[k]];
      }
    }
    return xyz;
  }

  /** Facets turned over. */
  static int[] reversed(int[] corners) {
    int[] reversed = corners.clone();
    for (int i = 0; i < corners.length; i += 3) {
      reversed[i + 1] = corners[i + 2];
      reversed[i + 2] = corners[i + 1];
    }
    return reversed;
  }

  /** A mesh made in this frame, brought back to the given axes. */
  Mesh out(Mesh mesh) {
    if (isGiven()) {
      return mesh;
    }
    int[] from = mesh.xyz();
    int[] xyz = new int[from.length];
    for (int i = 0; i < xyz.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + axis[k]] = sign[axis[k]] * from[i + k];
      }
    }
    return Mesh.of(xyz, mirrors() ? reversed(mesh.corners()) : mesh.corners());
  }
}
