package outrigger.shapes.mesh.triangulation;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.outline.PointNumbers;

/**
 * The numbered points of one plane, seen along an axis, and how they lie to each other.
 *
 * <p>Equal points have one number ({@link PointNumbers}). Of each point some planes are remembered that it lies in by the
 * way it was made: where three points have one in common that is not their own plane, they lie in line, and nothing need
 * be computed.
 */
public final class PlanarPoints {
  /** How many planes are remembered of a point; more would only save arithmetic. */
  private static final int PLANES = 6;

  private int u;
  private int v;
  private int own;
  private final PointNumbers points = new PointNumbers();
  /** Both coordinates of each point, rounded to the grid, and whether it lies there. */
  private long[] pu = new long[32];
  private long[] pv = new long[32];
  private boolean[] grid = new boolean[32];
  /** Of each point the numbers of planes it is known to lie in, its own left out, and -1 for none. */
  private int[] known = new int[32 * PLANES];
  /** How many points have their planes noted in {@code known}: of grid points alone, as in most caps, none. */
  private int noted;

  /** How many points there are. */
  public int size() {
    return points.size();
  }

  ExactPoint point(int number) {
    return points.point(number);
  }

  /**
   * Forgets all points and turns to another plane.
   *
   * @param firstAxis the axis that is the first coordinate
   * @param secondAxis the axis that is the second coordinate
   * @param ownPlane number of the plane all points lie in
   */
  void reset(int firstAxis, int secondAxis, int ownPlane) {
    u = firstAxis;
    v = secondAxis;
    own = ownPlane;
    noted = 0;
    points.clear();
  }

  /** The axis that is the first coordinate. */
  public int u() {
    return u;
  }

  /** The axis that is the second coordinate. */
  public int v() {
    return v;
  }

  /** Number of a point; that of a new point is the size before. */
  int number(ExactPoint p) {
    int size = points.size();
    int number = points.number(p);
    if (number == size) {
      place(number, p);
    }
    notePlanes(number, p);
    return number;
  }

  /** Number of a point that is known to be new; {@link #number} will not find it. */
  int append(ExactPoint p) {
    int number = points.append(p);
    place(number, p);
    notePlanes(number, p);
    return number;
  }

  private void place(int number, ExactPoint p) {
    if (number == pu.length) {
      grow();
    }
    pu[number] = p.grid(u);
    pv[number] = p.grid(v);
    grid[number] = p.isOnGrid();
  }

  private void notePlanes(int number, ExactPoint p) {
    if (p.plane(0) >= 0 || p.plane(1) >= 0 || p.plane(2) >= 0) {
      makeRoomForPlanes();
      addPlanes(number, p);
    }
  }

  /** Makes room for the planes of all points so far. */
  private void makeRoomForPlanes() {
    if (known.length < PLANES * pu.length) {
      known = Arrays.copyOf(known, PLANES * pu.length);
    }
    Arrays.fill(known, PLANES * noted, PLANES * points.size(), -1);
    noted = points.size();
  }

  /** Adds planes of a point to those known, as long as there is room. */
  private void addPlanes(int number, ExactPoint p) {
    for (int k = 0; k < 3; k++) {
      int plane = p.plane(k) == own ? -1 : p.plane(k);
      int at = PLANES * number;
      while (plane >= 0 && at < PLANES * (number + 1) && known[at] != plane) {
        if (known[at] < 0) {
          known[at] = plane;
        } else {
          at++;
        }
      }
    }
  }

  /** Whether a point is known to lie on the line in which a plane crosses this one. */
  boolean isKnownOn(int number, int plane) {
    if (number >= noted) {
      return false;
    }
    for (int k = PLANES * number; k < PLANES * (number + 1); k++) {
      if (known[k] == plane) {
        return plane >= 0;
      }
    }
    return false;
  }

  /** Whether three points are known to lie in one other plane, and so in line. */
  private boolean shareLine(int a, int b, int c) {
    if (a >= noted) {
      return false;
    }
    for (int k = PLANES * a; k < PLANES * (a + 1) && known[k] >= 0; k++) {
      if (isKnownOn(b, known[k]) && isKnownOn(c, known[k])) {
        return true;
      }
    }
    return false;
  }

  boolean isOnGrid(int number) {
    return grid[number];
  }

  /** Exact turn of three points: +1 counter-clockwise, -1 clockwise, 0 in line. */
  int turn(int a, int b, int c) {
    if (grid[a] && grid[b] && grid[c]) {
      return Sign.turn(pu[a], pv[a], pu[b], pv[b], pu[c], pv[c]);
    }
    int clear = ExactPoint.clearTurn(points.point(a), points.point(b), points.point(c), u, v);
    return clear != 0 || shareLine(a, b, c) ? clear
        : ExactPoint.turn(points.point(a), points.point(b), points.point(c), u, v);
  }

  /**
   * Whether d, rounded to the grid, lies inside the circle through a, b, c, rounded too and counter-clockwise. Of four
   * points on one circle the least, by its first coordinate and then its second, keeps its diagonal, as if it stood a
   * breath farther in: so the triangulation does not depend on the order in which points came.
   */
  boolean isInCircle(int a, int b, int c, int d) {
    int in = Sign.inCircle(pu[a], pv[a], pu[b], pv[b], pu[c], pv[c], pu[d], pv[d]);
    return in > 0 || in == 0 && roundTurn(c, a, d) > 0 && roundTurn(d, b, c) > 0 && roundTurn(a, b, c) > 0
        && roundTurn(b, a, d) > 0 && isLess(lesser(c, d), lesser(a, b));
  }

  /** Turn of three points rounded to the grid. */
  private int roundTurn(int a, int b, int c) {
    return Sign.turn(pu[a], pv[a], pu[b], pv[b], pu[c], pv[c]);
  }

  private int lesser(int a, int b) {
    return isLess(a, b) ? a : b;
  }

  private boolean isLess(int a, int b) {
    return pu[a] < pu[b] || pu[a] == pu[b] && pv[a] < pv[b];
  }

  private void grow() {
    int room = 2 * pu.length;
    pu = Arrays.copyOf(pu, room);
    pv = Arrays.copyOf(pv, room);
    grid = Arrays.copyOf(grid, room);
  }
}
