package outrigger.shapes.print;

import java.util.Comparator;

/**
 * A sample of the surface where it is narrow.
 *
 * @param slot the facet's slot
 * @param place the point of the surface, mm
 * @param normal the facet's unit outward normal
 * @param ball what is held there
 * @param area what the sample stands for, mm^2
 */
record Spot(int slot, Vec place, Vec normal, BallProbe.Ball ball, double area) {
  /** Narrowest first, equal widths by place: an order that hangs on no number of a facet. */
  static final Comparator<Spot> ORDER = Comparator.comparingDouble(Spot::width)
      .thenComparingDouble(s -> s.place.x()).thenComparingDouble(s -> s.place.y())
      .thenComparingDouble(s -> s.place.z());

  double width() {
    return ball.width();
  }

  /** The spot moved within its facet to where a ball is held, and what is narrowest there. */
  Spot moved(Vec to, BallProbe.Ball ball, Vec middle, double width) {
    return new Spot(slot, to, normal,
        new BallProbe.Ball(middle, width, ball.grip(), ball.across(), ball.stopper(), ball.stop()), area);
  }

  /** Whether this comes before another in {@link #ORDER}. */
  boolean isBefore(Spot other) {
    return ORDER.compare(this, other) < 0;
  }
}
