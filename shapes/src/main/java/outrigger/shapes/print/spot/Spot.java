package outrigger.shapes.print.spot;

import java.util.Comparator;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Vec;

/**
 * A sample of the surface where it is narrow.
 *
 * @param slot the facet's slot
 * @param place the point of the surface, mm
 * @param normal the facet's unit outward normal
 * @param ball what is held there
 * @param area what the sample stands for, mm^2
 */
public record Spot(int slot, Vec place, Vec normal, BallProbe.Ball ball, double area) {
  /** Narrowest first, equal widths by place: an order that hangs on no number of a facet. */
  public static final Comparator<Spot> ORDER = Comparator.comparingDouble(Spot::width)
      .thenComparingDouble(s -> s.place.x()).thenComparingDouble(s -> s.place.y())
      .thenComparingDouble(s -> s.place.z());

  /** A sample of an edge stands for a strip as wide as this, mm: for next to no surface. */
  static final double EDGE = 1e-6;
  /** Of two faces less than three degrees apart. */
  private static final double EVEN = 0.05;
  /** A ball touches what is no farther from its middle than this part of its width; what a descent moved, not quite. */
  private static final double APART = 0.55;

  /** How wide it is there, mm. */
  public double width() {
    return ball.width();
  }

  /** Whether it lies on an inner edge and stands for no surface. */
  public boolean isEdge() {
    return ball.grip() == BallProbe.Grip.EDGE;
  }

  /** Whether two faces hold it that are next to parallel, as those of a wall are and those of a sharp edge are not. */
  public boolean isEven() {
    return ball.grip() == BallProbe.Grip.FACING && ball.slope() < EVEN;
  }

  /** How much wider it is at the far side of the square it stands for than in its middle, mm. */
  private double rise() {
    return ball.slope() * Math.sqrt(area) / 2;
  }

  /** Whether some of what it stands for is narrower than a bound. */
  public boolean reachesBelow(double bound) {
    return ball.width() < bound || ball.width() < bound + rise();
  }

  /** Whether its ball was found straight before what the first one rested on, so that it does not touch the place itself. */
  private boolean isBeside() {
    return ball.grip() == BallProbe.Grip.FACING && ball.middle().distance(place) > ball.width() * APART;
  }

  /**
   * How much of what it stands for is narrower than a bound, mm^2: a square across which the width grows evenly; none where
   * the ball lies beside it, as under the rim of a pocket.
   */
  public double areaBelow(double bound) {
    if (isBeside()) {
      return 0;
    }
    double rise = rise();
    double under = bound - ball.width();
    if (Math.abs(under) >= rise) {
      return under > 0 ? area : 0;
    }
    return area * (1 + under / rise) / 2;
  }

  /** The spot moved within its facet to where a ball is held, and what is narrowest there. */
  public Spot moved(Vec to, BallProbe.Ball ball, Vec middle, double width) {
    return new Spot(slot, to, normal,
        new BallProbe.Ball(middle, width, ball.grip(), ball.across(), ball.slope(), ball.stopper(), ball.stop()), area);
  }

  /** The same, standing for no surface about it, as at an inner edge. */
  public Spot alone() {
    return new Spot(slot, place, normal, ball.onEdge(), EDGE);
  }

  /** Whether this comes before another in {@link #ORDER}. */
  public boolean isBefore(Spot other) {
    return ORDER.compare(this, other) < 0;
  }
}
