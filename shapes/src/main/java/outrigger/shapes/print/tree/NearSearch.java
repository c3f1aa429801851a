package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Vec;

/**
 * A walk over the facets within a ball that the walk itself may shrink, nearest boxes first. Not for several threads.
 */
public abstract class NearSearch {
  /** The tree is perfect and holds fewer than 2^30 leaves; each level leaves at most one node behind. */
  private static final int DEEPEST = 64;

  protected final FacetTree tree;
  private final PlaceTree places;
  private final float[] corners;
  private final int leaves;
  private final int[] stack = new int[DEEPEST];

  /** What the ball rests on. */
  protected final Floor floor = new Floor();
  protected final Floor secondFloor = new Floor();

  /** How many facets were met so far: a measure of work. */
  private long met;

  /** Centre of the ball searched, mm. */
  protected double x;
  protected double y;
  protected double z;
  /** Square of its radius, mm^2. */
  protected double reach2;
  /** Set where the walk may end. */
  protected boolean isDone;
  /** The closest point found by {@link #closest}. */
  protected double qx;
  protected double qy;
  protected double qz;

  /** Its weights along the facet's first and last edge, from corner 0. */
  protected double s;
  protected double t;

  /** A walk over the facets of a tree. */
  public NearSearch(FacetTree tree) {
    this.tree = tree;
    places = tree.places();
    leaves = places.leaves();
    corners = tree.corners();
  }

  /** Takes a facet whose box's neighbourhood reaches into the ball. */
  protected abstract void meet(int slot);

  /** How many facets all walks met so far. */
  public final long met() {
    return met;
  }

  /** Walks as {@link #walk()} does, over the facets within a distance of a place, mm. */
  protected final void walk(Vec place, double distance) {
    x = place.x();
    y = place.y();
    z = place.z();
    reach2 = distance * distance;
    walk();
  }

  /** Walks over all facets in the ball until the walk is done; facets a little outside may come too. */
  protected final void walk() {
    isDone = false;
    int top = 0;
    int node = 1;
    while (true) {
      if (node >= leaves) {
        // what lies below is seldom a large node: those are asked for nearness alone
        if (!floor.covers(places, node) && !secondFloor.covers(places, node)) {
          meetAll(node);
        }
      } else {
        int a = 2 * node;
        double toA = places.distance2(a, x, y, z);
        double toB = places.distance2(a + 1, x, y, z);
        boolean inA = toA <= reach2;
        boolean inB = toB <= reach2;
        if (inA || inB) {
          boolean first = inA && (toA <= toB || !inB);
          node = first ? a : a + 1;
          if (inA && inB) {
            stack[top++] = node ^ 1;
          }
          continue;
        }
      }
      do {
        if (top == 0 || isDone) {
          return;
        }
        node = stack[--top];
        // asked again, for the ball may have shrunk and moved meanwhile
      } while (places.distance2(node, x, y, z) > reach2);
    }
  }

  private void meetAll(int leaf) {
    int from = places.first(leaf);
    int to = places.end(leaf);
    for (int slot = from; slot < to; slot++) {
      meet(slot);
    }
    met += to - from;
  }

  /**
   * Sets q to the point of a facet closest to a place.
   *
   * <p>By regions of the facet's plane, as in C. Ericson, Real-Time Collision Detection (2005), section 5.1.5.
   *
   * @return squared distance, mm^2
   */
  protected final double closest(int slot, double px, double py, double pz) {
    int o = 9 * slot;
    double ax = corners[o];
    double ay = corners[o + 1];
    double az = corners[o + 2];
    double ux = corners[o + 3] - ax;
    double uy = corners[o + 4] - ay;
    double uz = corners[o + 5] - az;
    double vx = corners[o + 6] - ax;
    double vy = corners[o + 7] - ay;
    double vz = corners[o + 8] - az;
    double wx = px - ax;
    double wy = py - ay;
    double wz = pz - az;
    weigh(ux * wx + uy * wy + uz * wz, vx * wx + vy * wy + vz * wz, ux * ux + uy * uy + uz * uz,
        ux * vx + uy * vy + uz * vz, vx * vx + vy * vy + vz * vz);
    qx = ax + s * ux + t * vx;
    qy = ay + s * uy + t * vy;
    qz = az + s * uz + t * vz;
    return (qx - px) * (qx - px) + (qy - py) * (qy - py) + (qz - pz) * (qz - pz);
  }

  /** Weights of edges u and v of the closest point, from the products of u, v and w, where w runs to the place. */
  private void weigh(double uw, double vw, double uu, double uv, double vv) {
    if (uw <= 0 && vw <= 0) {
      set(0, 0);
      return;
    }
    double uwB = uw - uu;
    double vwB = vw - uv;
    if (uwB >= 0 && vwB <= uwB) {
      set(1, 0);
      return;
    }
    double onC = uw * vwB - uwB * vw;
    if (onC <= 0 && uw >= 0 && uwB <= 0) {
      set(uw / uu, 0);
      return;
    }
    double uwC = uw - uv;
    double vwC = vw - vv;
    if (vwC >= 0 && uwC <= vwC) {
      set(0, 1);
      return;
    }
    double onB = uwC * vw - uw * vwC;
    if (onB <= 0 && vw >= 0 && vwC <= 0) {
      set(0, vw / vv);
      return;
    }
    double onA = uwB * vwC - uwC * vwB;
    if (onA <= 0 && vwB - uwB >= 0 && uwC - vwC >= 0) {
      double w = (vwB - uwB) / (vwB - uwB + (uwC - vwC));
      set(1 - w, w);
      return;
    }
    double whole = onA + onB + onC;
    set(onB / whole, onC / whole);
  }

  private void set(double ofU, double ofV) {
    s = ofU;
    t = ofV;
  }
}
