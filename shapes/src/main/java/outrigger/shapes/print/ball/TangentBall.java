package outrigger.shapes.print.ball;

import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/**
 * The largest ball that touches the surface at a point from one side and holds no other facet.
 *
 * <p>A ball through p with its centre along the unit vector u meets a facet's point q first at the radius
 * |q - p|^2 / 2(q - p)u. Balls through p along u lie one in the other, so a facet that is clear of one is clear of
 * all smaller ones: one walk with a shrinking ball meets every facet that matters (shrinking ball: J. Ma, S. W. Bae,
 * S. Choi, 3D medial axis point approximation using nearest neighbors and the normal field, 2012).
 */
final class TangentBall extends NearSearch {
  /** A facet deeper in the ball than this part of the square of its radius stops it. */
  private static final double ROUNDING = 1e-10;
  private int own;
  private double px;
  private double py;
  private double pz;
  private double ux;
  private double uy;
  private double uz;

  /** Radius, mm. */
  private double radius;
  /** Slot of the facet that stopped it, -1 for none, and where. */
  private int stopper;
  private double stopX;
  private double stopY;
  private double stopZ;

  TangentBall(FacetTree tree) {
    super(tree);
  }

  /**
   * Finds the ball; it is read by the accessors until the next is sought.
   *
   * @param own the facet touched, which does not stop the ball
   * @param p the point touched, mm
   * @param u unit vector from there to the centre
   * @param most the radius to begin with, mm: the largest that is told apart
   * @param guess a facet that is likely to stop it, or -1
   */
  void seek(int own, Vec p, Vec u, double most, int guess) {
    this.own = own;
    px = p.x();
    py = p.y();
    pz = p.z();
    ux = u.x();
    uy = u.y();
    uz = u.z();
    floor.lay(u, p.dot(u));
    stopper = -1;
    set(most);
    if (guess >= 0) {
      meet(guess);
    }
    walk();
  }

  private void set(double r) {
    radius = r;
    x = px + r * ux;
    y = py + r * uy;
    z = pz + r * uz;
    reach2 = r * r;
  }

  @Override
  protected void meet(int slot) {
    if (slot == own || floor.covers(tree, slot)) {
      return;
    }
    while (closest(slot, x, y, z) < reach2 * (1 - ROUNDING)) {
      double dx = qx - px;
      double dy = qy - py;
      double dz = qz - pz;
      double r = (dx * dx + dy * dy + dz * dz) / (2 * (dx * ux + dy * uy + dz * uz));
      if (!(r >= 0 && r < radius)) {
        return;
      }
      stopper = slot;
      stopX = qx;
      stopY = qy;
      stopZ = qz;
      set(r);
    }
  }

  double radius() {
    return radius;
  }

  Vec centre() {
    return new Vec(x, y, z);
  }

  int stopper() {
    return stopper;
  }

  Vec stop() {
    return new Vec(stopX, stopY, stopZ);
  }
}
