package outrigger.shapes.print;

/**
 * A ball that moves straight while it grows, until it meets a facet.
 *
 * <p>Distance from a facet along a line is convex, so is the distance less the radius, and steps by its slope never
 * pass the first contact.
 */
final class RollingBall extends NearSearch {
  private static final int STEPS = 40;
  /** Facets approached more slowly are those touched already, their spokes taken together with a neighbour's. */
  private static final double FLAT = 2e-3;
  private static final double TOUCH = 1e-9;

  private Vec from;
  private Vec along;
  private double radius;
  private double growth;
  private double way;

  RollingBall(FacetTree tree) {
    super(tree);
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
    this.from = from;
    this.radius = radius;
    this.along = along;
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
    Vec middle = from.plus(along, last >= reach ? way : reach - radius);
    x = middle.x();
    y = middle.y();
    z = middle.z();
    reach2 = reach * reach;
  }

  @Override
  protected void meet(int slot) {
    double s = 0;
    for (int i = 0; i < STEPS && s < way; i++) {
      double cx = from.x() + s * along.x();
      double cy = from.y() + s * along.y();
      double cz = from.z() + s * along.z();
      double distance = Math.sqrt(closest(slot, cx, cy, cz));
      double clear = distance - (radius + growth * s);
      double slope = ((cx - qx) * along.x() + (cy - qy) * along.y() + (cz - qz) * along.z()) / distance - growth;
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
