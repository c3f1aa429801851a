package outrigger.shapes.print.ball;

import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/**
 * A ball that moves straight while it grows, until it meets a facet.
 *
 * <p>Distance from a facet along a line is convex, so is the distance less the radius, and steps by its slope never
 * pass the first contact.
 */
final class RollingBall extends NearSearch {
  /** Steps towards a facet at most. */
  private static final int STEPS = 40;
  /** Facets approached more slowly are those touched already, their spokes taken together with a neighbour's. */
  private static final double FLAT = 2e-3;
  /** A facet no farther from the ball is touched, mm. */
  private static final double TOUCH = 1e-9;

  private double fromX;
  private double fromY;
  private double fromZ;
  private double alongX;
  private double alongY;
  private double alongZ;
  private double radius;
  private double growth;
  private double way;

  RollingBall(FacetTree tree) {
    super(tree);
  }

  /** From now on it rolls along two planes, away from their edge or level with it: nothing below either can stop it. */
  void rollOn(Vec up, double height, Vec secondUp, double secondHeight) {
    floor.lay(up, height);
    secondFloor.lay(secondUp, secondHeight);
  }

  /** From now on it rolls freely. */
  void rollFreely() {
    floor.clear();
    secondFloor.clear();
  }

  /**
   * How far it goes.
   *
   * @param from centre at the start, mm; no facet within the ball
   * @param radius at the start, mm
   * @param along unit direction of the centre
   * @param growth of the radius, mm a mm of way, 0 to 1
   * @param most the way to go if nothing is met, mm
   */
  double roll(Vec from, double radius, Vec along, double growth, double most) {
    fromX = from.x();
    fromY = from.y();
    fromZ = from.z();
    alongX = along.x();
    alongY = along.y();
    alongZ = along.z();
    this.radius = radius;
    this.growth = growth;
    way = most;
    narrow();
    walk();
    return way;
  }

  /** The smallest ball round the first and the last one. */
  private void narrow() {
    double last = radius + growth * way;
    double reach = Math.max(last, (radius + last + way) / 2);
    double middle = last >= reach ? way : reach - radius;
    x = fromX + middle * alongX;
    y = fromY + middle * alongY;
    z = fromZ + middle * alongZ;
    reach2 = reach * reach;
  }

  @Override
  protected void meet(int slot) {
    if (floor.covers(tree, slot) || secondFloor.covers(tree, slot)) {
      return;
    }
    double s = 0;
    for (int i = 0; i < STEPS && s < way; i++) {
      double cx = fromX + s * alongX;
      double cy = fromY + s * alongY;
      double cz = fromZ + s * alongZ;
      double distance = Math.sqrt(closest(slot, cx, cy, cz));
      double clear = distance - (radius + growth * s);
      double slope = ((cx - qx) * alongX + (cy - qy) * alongY + (cz - qz) * alongZ) / distance - growth;
      if (!(slope < -FLAT)) {
        return;
      }
      if (clear <= TOUCH) {
        break;
      }
      s -= clear / slope;
    }
    if (s < way) {
      way = s;
      narrow();
    }
  }
}
