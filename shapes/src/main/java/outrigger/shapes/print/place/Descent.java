package outrigger.shapes.print.place;

import java.util.Optional;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.ball.Touching;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.spot.Spot;
import outrigger.shapes.print.tree.FacetTree;

/**
 * Goes from a narrow spot between two facets to where these come closest, as far as a ball held there bears it out, and
 * on from the facets that hold that ball.
 *
 * <p>The width found is the distance of the two facets: at the thin end of a wedge it is that of the end, though a ball
 * that fits inside lies farther in and is a little wider.
 */
public final class Descent {
  /** Moves at most: own choice. */
  private static final int ROUNDS = 8;
  /** Less is not worth a move, mm: an even wall is uneven by rounding, and by the chords of its round forms. */
  private static final double GAIN = 4.5e-3;
  /** Points are kept this far inside their facet, mm, for on a border there is no saying which facet is touched. */
  private static final double INSET = 1e-3;
  /** The same as a part of the way to the facet's middle, for small ones. */
  private static final double INSET_PART = 0.01;
  /** The ball is no wider than the distance by more than this part. */
  private static final double CLOSE = 0.25;

  private final FacetTree tree;
  private final FacetPair pair;
  private final BallProbe probe;
  private final FarEnd farEnd;
  private final FineDescent fine;
  private final Reach reach;

  /** Descents among the facets of a tree, as far as a reach looks. */
  public Descent(FacetTree tree, Reach reach) {
    this.reach = reach;
    this.tree = tree;
    pair = new FacetPair(tree, new Touching(tree));
    probe = reach.probe(tree);
    farEnd = new FarEnd(tree, reach);
    fine = new FineDescent(tree, reach);
  }

  /** Whether what looks like a strip stands on nothing. */
  boolean isOpen(NarrowPlace strip) {
    return farEnd.isOpen(strip);
  }

  /** The narrowest spot it comes to; the one it started from if there is none. */
  public Spot from(Spot start) {
    Spot best = fine.from(start);
    for (int i = 0; i < ROUNDS && best.ball().grip() == BallProbe.Grip.FACING; i++) {
      Optional<Spot> next = closest(best);
      if (next.isEmpty() || next.get().width() > best.width() - GAIN) {
        return best;
      }
      best = next.get();
    }
    return best;
  }

  /** The same from a ball that rolled to between two faces, where no first ball is held: it only goes on to their border. */
  Spot fromRolled(Spot start) {
    return fine.fromRolled(start);
  }

  /** The narrowest ball held in a corner of the spot's facet, if it is narrower than asked: finds what runs out to a tip. */
  Optional<Spot> toCorner(Spot start, double width) {
    Optional<Spot> best = Optional.empty();
    probe.ask(width, width);
    for (int k = 0; k < 3; k++) {
      Vec corner = tree.corner(start.slot(), k);
      BallProbe.Ball ball = ball(start, inside(tree, start.slot(), corner));
      if (ball.held() && ball.width() < best.map(Spot::width).orElse(width)) {
        best = Optional.of(start.moved(corner, ball, ball.middle(), ball.width()));
      }
    }
    probe.ask(reach.most(), reach.enough());
    return best;
  }

  /** A point of a facet's border moved a little into it. */
  static Vec inside(FacetTree tree, int slot, Vec border) {
    Vec inward = FacetSamples.middle(tree, slot).minus(border);
    return border.plus(inward, Math.min(INSET_PART, INSET / Math.max(INSET, inward.length())));
  }

  private BallProbe.Ball ball(Spot spot, Vec place) {
    return probe.measureAlone(spot.slot(), place, reach.direction(spot.normal()));
  }

  private Optional<Spot> closest(Spot spot) {
    int slot = spot.slot();
    pair.seek(slot, spot.ball().stopper());
    Vec near = pair.onFirst();
    Vec middle = near.plus(pair.onSecond(), 1).times(0.5);
    double distance = near.distance(pair.onSecond());
    BallProbe.Ball ball = ball(spot, inside(tree, slot, near));
    return isBornOut(ball, middle, distance)
        ? Optional.of(spot.moved(near, ball, middle, Math.min(distance, ball.width()))) : Optional.empty();
  }

  /** Whether a ball held near a place bears a distance out. */
  static boolean isBornOut(BallProbe.Ball ball, Vec middle, double distance) {
    return ball.held() && ball.width() < distance * (1 + CLOSE) + 2 * INSET
        && ball.middle().distance(middle) <= ball.width() + INSET;
  }
}
