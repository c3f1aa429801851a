package outrigger.shapes.print;

import java.util.Optional;

/**
 * The last balls that were found held. No facet lies within them, so whatever sample such a ball touches squarely is as
 * wide as it: of all round a fine hole or pin one is measured. Not for several threads.
 */
final class HeldBalls {
  /** How many are remembered: those near in a list sorted along a curve are mostly near in place. */
  private static final int KEPT = 128;
  /** How near to the ball a sample lies that it touches, a part of the radius: chords of round forms lie farther in. */
  private static final double TOUCH = 0.01;
  /** cos 15 degrees, between the way to the middle and the normal. */
  private static final double SQUARELY = 0.966;

  private final double[] numbers = new double[4 * KEPT];
  private final BallProbe.Ball[] balls = new BallProbe.Ball[KEPT];
  private int count;

  /** Remembers a ball that is held. */
  void put(BallProbe.Ball ball) {
    int at = count++ % KEPT;
    numbers[4 * at] = ball.middle().x();
    numbers[4 * at + 1] = ball.middle().y();
    numbers[4 * at + 2] = ball.middle().z();
    numbers[4 * at + 3] = ball.width() / 2;
    balls[at] = ball;
  }

  /**
   * The ball that touches a sample, as seen from there.
   *
   * @param p the sample, mm
   * @param u unit vector along which balls rest there
   */
  Optional<BallProbe.Ball> touching(Vec p, Vec u) {
    for (int i = 0; i < Math.min(KEPT, count); i++) {
      double dx = numbers[4 * i] - p.x();
      double dy = numbers[4 * i + 1] - p.y();
      double dz = numbers[4 * i + 2] - p.z();
      double r = numbers[4 * i + 3];
      double d2 = dx * dx + dy * dy + dz * dz;
      if (d2 < r * r * (1 + TOUCH) * (1 + TOUCH) && dx * u.x() + dy * u.y() + dz * u.z() > SQUARELY * r) {
        BallProbe.Ball b = balls[i];
        return Optional.of(
            new BallProbe.Ball(b.middle(), b.width(), BallProbe.Grip.ROLLED, u, b.slope(), b.stopper(), b.stop()));
      }
    }
    return Optional.empty();
  }
}
