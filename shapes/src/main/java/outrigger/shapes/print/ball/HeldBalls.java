package outrigger.shapes.print.ball;

import outrigger.shapes.print.facet.Vec;

/**
 * The last balls that were found held. No facet lies within them, so whatever sample such a ball touches squarely is as
 * wide as it: of all round a fine hole or pin one is measured. Not for several threads.
 */
public final class HeldBalls {
  /** How many are remembered: those near in a list sorted along a curve are mostly near in place. */
  private static final int KEPT = 48;
  /**
   * How far from the middle a sample lies at most that the ball touches, squared and in radii: chords of round forms lie
   * farther in, by no more than a hundredth.
   */
  private static final double FARTHEST = 1.01 * 1.01;
  /** cos 15 degrees, between the way to the middle and the normal. */
  private static final double SQUARELY = 0.966;

  private final double[] numbers = new double[4 * KEPT];
  private final BallProbe.Ball[] balls = new BallProbe.Ball[KEPT];
  private int count;

  /** Remembers a ball that is held. */
  public void put(BallProbe.Ball ball) {
    int at = count++ % KEPT;
    numbers[4 * at] = ball.middle().x();
    numbers[4 * at + 1] = ball.middle().y();
    numbers[4 * at + 2] = ball.middle().z();
    numbers[4 * at + 3] = ball.width() / 2;
    balls[at] = ball;
  }

  /**
   * The number of a ball that touches a sample, or -1.
   *
   * @param p the sample, mm
   * @param u unit vector along which balls rest there
   */
  public int touching(Vec p, Vec u) {
    double px = p.x();
    double py = p.y();
    double pz = p.z();
    double ux = u.x();
    double uy = u.y();
    double uz = u.z();
    int end = 4 * (count < KEPT ? count : KEPT);
    for (int o = 0; o < end; o += 4) {
      double dx = numbers[o] - px;
      double dy = numbers[o + 1] - py;
      double dz = numbers[o + 2] - pz;
      double r = numbers[o + 3];
      if (dx * dx + dy * dy + dz * dz < r * r * FARTHEST && dx * ux + dy * uy + dz * uz > SQUARELY * r) {
        return o / 4;
      }
    }
    return -1;
  }

  /** The ball of a number as seen from a sample along a unit vector. */
  public BallProbe.Ball seen(int number, Vec u) {
    BallProbe.Ball b = balls[number];
    return new BallProbe.Ball(b.middle(), b.width(), BallProbe.Grip.ROLLED, u, b.slope(), b.stopper(), b.stop());
  }
}
