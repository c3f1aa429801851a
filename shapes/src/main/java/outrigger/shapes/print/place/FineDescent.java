package outrigger.shapes.print.place;

import java.util.Arrays;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.ball.Touching;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.spot.Spot;
import outrigger.shapes.print.tree.FacetTree;

/**
 * Goes from a narrow spot to where it is narrowest on a mesh finer than samples, where few facets had one of their own:
 * first from facet to facet by balls, then on to the border of the two faces that hold the last one, where no ball fits.
 */
final class FineDescent {
  /** Facets narrower than this part of the samples' spacing are fine; so many steps are taken over them: own choice. */
  private static final double FINE = 0.75;
  private static final int STEPS = 24;
  /** So many facets are asked a step, spread over those near. */
  private static final int MOST = 64;
  /** Less is not worth a step, mm. */
  private static final double LITTLE = 1e-4;
  /** cos 60 degrees: facets that face farther away are another side. */
  private static final double ALONG = 0.5;
  /** cos 3 degrees: within one face; a round rim is not to count as a thin border. */
  private static final double SAME = 0.9986;
  /** cos 25 degrees: such a way leads straight through. */
  private static final double ACROSS = 0.906;
  /** A ball as wide as a wall keeps this part of its width from the border. */
  private static final double REACH = 0.75;
  /** A ball rests on a facet that is no farther from where it should than this part of its width. */
  private static final double NEAR = 0.02;
  /** Facets looked at before no more steps are taken, and pairs of a corner and a facet: own choice, for time. */
  private static final long WORK = 3_000_000;
  private static final long PAIRS = 10_000_000;

  private final FacetTree tree;
  private final Reach reach;
  private final BallProbe probe;
  private final Around around;
  private final Touching touching;
  private long pairs;

  FineDescent(FacetTree tree, Reach reach) {
    this.tree = tree;
    this.reach = reach;
    probe = reach.probe(tree);
    around = new Around(tree);
    touching = new Touching(tree);
  }

  /** The narrowest spot it comes to; the one it started from if the mesh is coarse there. */
  Spot from(Spot start) {
    if (!isFine(start.slot())) {
      return start;
    }
    Spot best = start;
    for (int i = 0; i < STEPS && isFine(best.slot()) && probe.work() < WORK; i++) {
      Spot next = narrowestAround(best);
      if (next.width() > best.width() - LITTLE) {
        break;
      }
      best = next;
    }
    return best.ball().stopper() < 0 || best.ball().grip() != BallProbe.Grip.FACING ? best : toBorder(best);
  }

  /** From a ball that rolled there on to the border of the two faces it rests on, if these are fine. */
  Spot fromRolled(Spot start) {
    BallProbe.Ball ball = start.ball();
    if (ball.grip() != BallProbe.Grip.ROLLED) {
      return start;
    }
    Vec place = ball.middle().plus(ball.across(), ball.width() / 2);
    Vec stop = ball.middle().plus(ball.across(), -ball.width() / 2);
    int slot = around.nearest(place, NEAR * ball.width());
    int stopper = around.nearest(stop, NEAR * ball.width());
    if (slot < 0 || stopper < 0 || !isFine(slot)) {
      return start;
    }
    return toBorder(new Spot(slot, place, tree.normal(slot), new BallProbe.Ball(ball.middle(), ball.width(), ball.grip(),
        ball.across(), ball.slope(), stopper, stop), start.area()));
  }

  private boolean isFine(int slot) {
    return tree.breadth(slot) < FINE * reach.spacing();
  }

  private Spot narrowestAround(Spot spot) {
    Spot best = spot;
    int[] near = around.of(spot.place(), reach.spacing());
    probe.narrow(spot.width());
    int every = Math.max(1, (near.length + MOST - 1) / MOST);
    for (int i = 0; i < near.length; i += every) {
      int slot = near[i];
      Vec normal = tree.normal(slot);
      if (normal.dot(spot.normal()) < ALONG || tree.isNeedle(slot)) {
        continue;
      }
      Vec place = FacetSamples.middle(tree, slot);
      BallProbe.Ball ball = ball(slot, place);
      if (ball.grip() == BallProbe.Grip.FACING && ball.width() < best.width()) {
        best = new Spot(slot, place, normal, ball, spot.area());
        probe.narrow(ball.width());
      }
    }
    probe.ask(reach.most(), reach.enough());
    return best;
  }

  private BallProbe.Ball ball(int slot, Vec place) {
    return probe.measureAlone(slot, place, reach.direction(tree.normal(slot)));
  }

  /** Where the two faces come closest within reach of the last ball, if a ball near there bears it out. */
  private Spot toBorder(Spot spot) {
    int stopper = spot.ball().stopper();
    double distance = REACH * spot.width() + reach.spacing() / 2;
    int[] own = alike(spot.slot(), around.of(spot.place(), distance));
    int[] others = alike(stopper, around.of(spot.ball().stop(), distance));
    double least = spot.width() - LITTLE;
    int slot = -1;
    int other = -1;
    Vec from = spot.place();
    Vec to = from;
    pairs += 3L * own.length * others.length;
    for (int i = 0; i < own.length && pairs < PAIRS; i++) {
      for (int k = 0; k < 3; k++) {
        Vec corner = tree.corner(own[i], k);
        for (int facing : others) {
          Vec foot = touching.foot(facing, corner);
          double length = corner.distance(foot);
          if (length < least && isAcross(foot.minus(corner), length, own[i])) {
            least = length;
            slot = own[i];
            other = facing;
            from = corner;
            to = foot;
          }
        }
      }
    }
    return slot < 0 ? spot : bornOut(spot, slot, other, from, to);
  }

  private boolean isAcross(Vec way, double length, int slot) {
    return reach.direction(tree.normal(slot)).dot(way) > ACROSS * length;
  }

  private Spot bornOut(Spot spot, int slot, int other, Vec from, Vec to) {
    Vec middle = from.plus(to, 1).times(0.5);
    BallProbe.Ball ball = ball(slot, Descent.inside(tree, slot, from));
    return !Descent.isBornOut(ball, middle, from.distance(to)) ? spot : new Spot(slot, from, tree.normal(slot),
        new BallProbe.Ball(middle, from.distance(to), spot.ball().grip(), spot.ball().across(), spot.ball().slope(), other,
            to), spot.area());
  }

  /** Those of some facets that face as one does. */
  private int[] alike(int slot, int... slots) {
    Vec normal = tree.normal(slot);
    return Arrays.stream(slots).filter(s -> tree.normal(s).dot(normal) > SAME && !tree.isNeedle(s)).toArray();
  }
}
