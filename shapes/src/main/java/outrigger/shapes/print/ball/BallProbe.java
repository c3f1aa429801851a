package outrigger.shapes.print.ball;

import java.util.Optional;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.Facing;

/**
 * Measures how wide the solid, or the air before it, is at a point of the surface. Not for several threads.
 *
 * <p>First comes the largest ball that touches there. Where the two faces it rests on stand opposite, it is held as by
 * two walls, and its diameter is the width. Where they form a corner, the ball is small because of the corner alone:
 * it then rolls out of the corner and grows, in the direction in which the distance from the surface grows fastest,
 * until it is held or wide enough. So a sharp edge says nothing about the wall behind it, and a wall is measured right
 * up to its edges.
 *
 * <p>Held means that the distance grows by less than {@value outrigger.shapes.print.tree.Facing#HELD} a mm of way: two flat
 * faces hold a ball where the angle between them is below 25 degrees, a round spike where its half angle is below 12.5.
 */
public final class BallProbe {
  /**
   * Contacts are told apart no finer: a part of the radius, and mm. Far above the grid's rounding, far below a bead. The
   * part grows after {@value #FINE} legs, or a ball would stop at each facet of a fine round form.
   */
  private static final double NEAR = 2e-3;
  private static final double NEAR_MM = 5e-4;
  /** In the smallest corners the radius decides again. */
  private static final double NEAREST = 0.05;
  /** A smaller radius has no direction that rounding has left, mm. */
  private static final double LEAST = 1e-6;
  /** Times a ball sets out anew at most; and before its contacts are told apart less finely. */
  private static final int LEGS = 24;
  private static final int FINE = 7;

  private final FacetTree tree;
  private final TangentBall tangent;
  private final RollingBall rolling;
  private final Touching touching;
  private final Spokes spokes = new Spokes();
  private double most;
  private double enough;
  private int guess = -1;

  /**
   * A probe.
   *
   * @param most the greatest width told apart by the first ball, mm
   * @param enough a ball that rolls out of a corner stops when it is as wide, mm; no more than {@code most}
   */
  public BallProbe(FacetTree tree, double most, double enough) {
    this.tree = tree;
    tangent = new TangentBall(tree);
    rolling = new RollingBall(tree);
    touching = new Touching(tree);
    ask(most, enough);
  }

  /**
   * A ball that rests on the surface.
   *
   * @param middle its centre, mm
   * @param width its diameter, mm
   * @param grip how it is held
   * @param across unit vector, either way, along which it is held; of no meaning for a free ball
   * @param slope how much wider it grows a mm of way along the two planes that hold it; 0 for any other
   * @param stopper the facet's slot that the first ball rested on, -1 if nothing was within reach
   * @param stop where it rested on it; of no meaning without a stopper
   */
  public record Ball(Vec middle, double width, Grip grip, Vec across, double slope, int stopper, Vec stop) {
    /** Whether it is held, so that its width is that of something. */
    public boolean held() {
      return grip != Grip.FREE;
    }

    /** The same, told to touch an inner edge. */
    public Ball onEdge() {
      return new Ball(middle, width, Grip.EDGE, across, slope, stopper, stop);
    }
  }

  /** How a ball is held. */
  public enum Grip {
    /** Between the facet measured and the stopper. */
    FACING,
    /** After it rolled out of a corner. */
    ROLLED,
    /** Between an inner edge, or an inner corner, and the stopper. */
    EDGE,
    /** There is room for it to grow. */
    FREE
  }

  /** How many facets were looked at so far. */
  public long work() {
    return tangent.met() + rolling.met() + touching.met();
  }

  /** From now on asks for other widths, mm, which mean what those given at first do. */
  public void ask(double mostWidth, double enoughWidth) {
    most = mostWidth;
    enough = enoughWidth;
  }

  /** From now on asks for no widths beyond this, mm: where only the narrowest is wanted, wider balls need not grow. */
  public void narrow(double width) {
    ask(Math.min(most, width), Math.min(enough, width));
  }

  /** Forgets what was measured before, so that results depend on nothing but the points that follow. */
  public void reset() {
    guess = -1;
  }

  /** Measures at a point as {@link #measure} does, whatever was measured before. */
  public Ball measureAlone(int slot, Vec p, Vec u) {
    reset();
    return measure(slot, p, u);
  }

  /**
   * Measures at a point. Of several facets that stop the ball at one width, that which stopped the last one is told, so
   * points are given in an order of their own, or {@link #measureAlone alone}.
   *
   * @param slot the facet it lies on
   * @param p the point, mm, inside the facet's borders
   * @param u unit vector along the facet's normal towards what is measured
   */
  public Ball measure(int slot, Vec p, Vec u) {
    Ball first = first(slot, p, u);
    return isDone(first) ? first : rolled(slot, first, u);
  }

  /**
   * Measures at an inner edge of a facet, along any way between the normals of the edge's two faces, where only what is
   * narrower than a width is wanted, mm: a ball that rolls need not grow beyond it. Along such a way the facet itself has
   * no point before what stopped the ball: before the facet lies the other side of the surface.
   */
  public Ball measureBelow(double width, int slot, Vec p, Vec u) {
    Ball first = first(slot, p, u);
    if (isDone(first)) {
      return first;
    }
    double asked = enough;
    enough = Math.min(asked, width);
    Ball ball = grown(first, u);
    enough = asked;
    return ball;
  }

  /** Whether a first ball is held, met nothing, or is as wide as asked. */
  public boolean isDone(Ball first) {
    return first.held() || first.stopper < 0 || first.width >= enough || first.width < 2 * LEAST;
  }

  /** What becomes of a first ball that rests in a corner. */
  public Ball rolled(int slot, Ball first, Vec u) {
    Optional<Ball> facing = opposite(slot, first, u);
    return facing.isPresent() ? facing.get() : grown(first, u);
  }

  /** The largest ball that touches at a point. */
  public Ball first(int slot, Vec p, Vec u) {
    tangent.seek(slot, p, u, most / 2, guess);
    int stopper = tangent.stopper();
    double r = tangent.radius();
    guess = stopper;
    Vec centre = tangent.centre();
    if (stopper < 0 || r <= LEAST) {
      return new Ball(centre, 2 * r, Grip.FREE, u, 0, stopper, tangent.stop());
    }
    Vec spoke = centre.minus(tangent.stop()).times(1 / r);
    double growth = u.plus(spoke, 1).length() / 2;
    Vec across = u.minus(spoke);
    boolean held = growth < Facing.HELD && !tree.isNeedle(stopper);
    return new Ball(centre, 2 * r, held ? Grip.FACING : Grip.FREE, across.unit(),
        slope(growth), stopper, tangent.stop());
  }

  /** Unit vector from the place where a first ball rested to its centre. */
  private static Vec spoke(Ball first) {
    return first.middle.minus(first.stop).times(2 / first.width);
  }

  /** The growth of a ball's radius a mm of its way, as that of its width a mm along the planes it rests on. */
  private static double slope(double growth) {
    return 2 * growth / Math.sqrt(1 - growth * growth);
  }

  /** The ball between the stop and the point of the facet straight before it: finds what a tip leaves over a face. */
  private Optional<Ball> opposite(int slot, Ball first, Vec u) {
    Vec foot = touching.foot(slot, first.stop);
    if (!touching.isInside()) {
      return Optional.empty();
    }
    Ball ball = first(slot, foot, u);
    return ball.held() && ball.width <= first.width ? Optional.of(ball) : Optional.empty();
  }

  private Ball grown(Ball first, Vec u) {
    Vec centre = first.middle;
    double r = first.width / 2;
    if (first.width >= enough) {
      return first;
    }
    // the first ball rests on two places, whose pull is known; it rolls along the planes there
    Vec spoke = spoke(first);
    Vec pull = u.plus(spoke, 1).times(0.5);
    rolling.rollOn(u, centre.dot(u) - r, spoke, centre.dot(spoke) - r);
    boolean held = false;
    boolean full = false;
    for (int leg = 0; leg < LEGS && !held; leg++) {
      double growth = pull.length();
      Vec along = pull.times(1 / growth);
      double way = rolling.roll(centre, r, along, growth, (enough / 2 - r) / growth);
      rolling.rollFreely();
      centre = centre.plus(along, way);
      r += growth * way;
      if (2 * r >= enough * (1 - LEAST)) {
        return new Ball(centre, 2 * r, Grip.FREE, first.across, 0, first.stopper, first.stop);
      }
      touching.gather(centre, r * (1 + NEAR * Math.max(1, leg + 1 - FINE)) + Math.min(NEAR_MM, NEAREST * r), spokes);
      pull = spokes.pull();
      full = spokes.isFull();
      if (pull.length() < Facing.HELD) {
        spokes.dropBeside();
        pull = spokes.pull();
      }
      held = pull.length() < Facing.HELD;
    }
    // one that touches more than are told apart and yet found no room is held by a fine round form
    return held || full ? between(first, centre, 2 * r, u)
        : new Ball(centre, 2 * r, Grip.FREE, first.across, 0, first.stopper, first.stop);
  }

  /** The ball held by the spokes last gathered: between the two that hold it, if two do. */
  private Ball between(Ball first, Vec centre, double width, Vec u) {
    spokes.seekPair(u);
    boolean two = spokes.pairHolds(Facing.HELD);
    return new Ball(two ? centre.plus(spokes.pairMiddle(), 1) : centre, two ? spokes.pairWidth() : width, Grip.ROLLED,
        spokes.across(), two ? slope(spokes.pairGrowth()) : 0, first.stopper, first.stop);
  }
}
