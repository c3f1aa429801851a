package outrigger.shapes.print;

/**
 * Proves for many samples at once that no narrow ball is held before them, from the directions of the facets near them.
 *
 * <p>Take a direction a whose product with the inner direction of every facet that balls from the samples can come to is
 * at least a lean. Whatever a ball touches there then pulls it along a by at least that much, corners included, for their
 * spokes lie between those of their facets. So no ball is held before it is as wide as asked, its centre goes no farther
 * than width / 2 / lean, and it never sinks more than (1 - lean) width / 2 below the samples, as seen along a: which is
 * where facets are looked for. The direction is found by adding that of each facet that speaks against it, a few times
 * over. A flat place is tried with a greater lean first, for it has to look less far.
 */
final class OpenSpace extends NearSearch {
  /** Well above {@link BallProbe#HELD}, and below what three square faces pull in their corner, 0.577. */
  private static final double LEAN = 0.5;
  private static final double FLAT = 0.9;
  private static final int TRIES = 5;

  private final double side;
  private final double radius;
  private double ax;
  private double ay;
  private double az;
  private double lean;
  private double spread;
  private double floor;
  private int against;

  /**
   * For one side of a surface.
   *
   * @param inward whether balls lie in the solid
   * @param width up to which none is held, mm
   */
  OpenSpace(FacetTree tree, boolean inward, double width) {
    super(tree);
    side = inward ? -1 : 1;
    radius = width / 2;
  }

  /** Whether no ball narrower than the width is held before samples {@code from} to {@code to} - 1. */
  boolean holdsNone(SampleList samples, int from, int to) {
    double[] box = samples.box(from, to);
    x = (box[0] + box[3]) / 2;
    y = (box[1] + box[4]) / 2;
    z = (box[2] + box[5]) / 2;
    spread = samples.spread(from, to, box);
    double sx = 0;
    double sy = 0;
    double sz = 0;
    for (int i = from; i < to; i++) {
      sx += side * tree.normalX(samples.slot(i));
      sy += side * tree.normalY(samples.slot(i));
      sz += side * tree.normalZ(samples.slot(i));
    }
    lean = FLAT;
    for (int i = 0; i < TRIES; i++) {
      double length = Math.sqrt(sx * sx + sy * sy + sz * sz);
      if (length < LEAN * LEAN) {
        return false;
      }
      point(sx / length, sy / length, sz / length, samples, from, to);
      walk();
      if (against < 0) {
        return true;
      }
      lean = LEAN;
      if (side * tree.alongNormal(against, ax, ay, az) < -LEAN) {
        return false;
      }
      sx = ax + side * tree.normalX(against);
      sy = ay + side * tree.normalY(against);
      sz = az + side * tree.normalZ(against);
    }
    return false;
  }

  private void point(double toX, double toY, double toZ, SampleList samples, int from, int to) {
    ax = toX;
    ay = toY;
    az = toZ;
    against = -1;
    double reach = spread + radius * (1 + 1 / lean);
    reach2 = reach * reach;
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < to; i++) {
      least = Extremes.less(least, samples.x(i) * ax + samples.y(i) * ay + samples.z(i) * az);
    }
    floor = least - radius * (1 - lean);
  }

  @Override
  protected boolean isIdle(int node) {
    return tree.leastAlongNormals(node, side * ax, side * ay, side * az) >= lean
        || tree.mostAlong(node, ax, ay, az) < floor;
  }

  @Override
  protected boolean isDone() {
    return against >= 0;
  }

  @Override
  protected void meet(int slot) {
    if (against < 0 && side * tree.alongNormal(slot, ax, ay, az) < lean && reachesAbove(slot)
        && closest(slot, x, y, z) <= reach2) {
      against = slot;
    }
  }

  private boolean reachesAbove(int slot) {
    for (int k = 0; k < 3; k++) {
      if (tree.along(slot, k, ax, ay, az) >= floor) {
        return true;
      }
    }
    return false;
  }
}
