package outrigger.shapes.print;

/**
 * Proves for many samples of one plane at once that the balls that touch there have room: nothing rises above the plane
 * within reach of them. What falls away behind it, as beyond an edge, stops no ball.
 */
final class FlatSpace extends NearSearch {
  /** What rises less above the plane is flush with it, mm. */
  private static final double FLUSH = 1e-6;
  private static final double SAME = 1e-9;

  private final double side;
  private final double radius;
  private Vec up = new Vec(0, 0, 0);
  private double level;
  private boolean risen;

  /**
   * For one side of a surface.
   *
   * @param inward whether balls lie in the solid
   * @param width up to which none is held, mm
   */
  FlatSpace(FacetTree tree, boolean inward, double width) {
    super(tree);
    side = inward ? -1 : 1;
    radius = width / 2;
  }

  /** Whether samples {@code from} to {@code to} - 1 lie in one plane and balls before them grow as wide as asked. */
  boolean isOpen(SampleList samples, int from, int to) {
    up = tree.normal(samples.slot(from)).times(side);
    level = samples.point(from).dot(up) + FLUSH;
    for (int i = from + 1; i < to; i++) {
      if (Math.abs(samples.x(i) * up.x() + samples.y(i) * up.y() + samples.z(i) * up.z() + FLUSH - level) > FLUSH
          || samples.slot(i) != samples.slot(i - 1) && tree.normal(samples.slot(i)).times(side).dot(up) < 1 - SAME) {
        return false;
      }
    }
    double[] box = samples.box(from, to);
    double spread = samples.spread(from, to, box);
    x = (box[0] + box[3]) / 2 + radius * up.x();
    y = (box[1] + box[4]) / 2 + radius * up.y();
    z = (box[2] + box[5]) / 2 + radius * up.z();
    reach2 = (spread + radius) * (spread + radius);
    risen = false;
    walk();
    return !risen;
  }

  @Override
  protected boolean isIdle(int node) {
    return tree.mostAlong(node, up.x(), up.y(), up.z()) <= level;
  }

  @Override
  protected boolean isDone() {
    return risen;
  }

  @Override
  protected void meet(int slot) {
    boolean rises = tree.along(slot, 0, up.x(), up.y(), up.z()) > level
        || tree.along(slot, 1, up.x(), up.y(), up.z()) > level || tree.along(slot, 2, up.x(), up.y(), up.z()) > level;
    risen |= rises && closest(slot, x, y, z) <= reach2;
  }
}
