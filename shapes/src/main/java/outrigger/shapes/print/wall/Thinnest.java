package outrigger.shapes.print.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.ball.HeldBalls;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.place.Descent;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.sample.SampleList;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.spot.Spot;
import outrigger.shapes.print.tree.FacetTree;

/**
 * Looks for the thinnest wall of a part that has none too thin: balls as wide as walls may be, at samples far apart, and
 * a descent from the narrowest. A number worth telling; no promise hangs on it.
 *
 * <p>First balls come first at all samples, for they cost little: those that roll out of corners after them grow no wider
 * than the narrowest held till then.
 */
final class Thinnest {
  /** Samples, and facets that have some, about. */
  private static final int SAMPLES = 200;
  /** Facets to look at before no more balls are laid, and then before no more are rolled out of corners. */
  private static final long LAID = 300_000;
  private static final long ROLLED = 100_000;
  /** Widths that differ by less than this factor are told apart by place. */
  private static final double EQUAL = 1 + 1e-6;
  /** A ball that rolls counts where it is narrower by more than this factor: no finer are its contacts told apart. */
  private static final double NARROWER = 1 - 3e-3;

  private final FacetTree tree;
  private final Reach reach;
  private final BallProbe probe;
  private final SampleList list = new SampleList();
  private final List<BallProbe.Ball> firsts = new ArrayList<>();
  private Optional<Spot> best = Optional.empty();

  private Thinnest(FacetTree tree, Reach reach, double area) {
    this.tree = tree;
    this.reach = reach;
    probe = reach.probe(tree);
    FacetSamples samples = new FacetSamples(tree, Math.max(reach.spacing(), Math.sqrt(area / SAMPLES)));
    int step = Math.max(1, tree.size() / SAMPLES);
    for (int slot = 0; slot < tree.size(); slot += step) {
      if (!tree.isNeedle(slot)) {
        samples.addTo(list, slot);
      }
    }
  }

  /** The narrowest spot found; empty if no ball is held. */
  static Optional<Spot> of(FacetTree tree, Reach reach, double area) {
    Thinnest thinnest = new Thinnest(tree, reach, area);
    thinnest.lay();
    thinnest.roll();
    return thinnest.best.map(new Descent(tree, reach)::from);
  }

  private void lay() {
    for (int i = 0; i < list.size() && probe.work() < LAID; i++) {
      Vec normal = tree.normal(list.slot(i));
      BallProbe.Ball ball = probe.first(list.slot(i), list.point(i), reach.direction(normal));
      firsts.add(ball);
      take(i, normal, ball, EQUAL);
    }
  }

  private void roll() {
    best.ifPresent(spot -> probe.narrow(spot.width() * NARROWER));
    long most = probe.work() + ROLLED;
    HeldBalls known = new HeldBalls();
    for (int i = 0; i < firsts.size() && probe.work() < most; i++) {
      if (probe.isDone(firsts.get(i))) {
        continue;
      }
      Vec normal = tree.normal(list.slot(i));
      Vec u = reach.direction(normal);
      if (known.touching(list.point(i), u) < 0) {
        BallProbe.Ball ball = probe.rolled(list.slot(i), firsts.get(i), u);
        take(i, normal, ball, NARROWER);
        // one that grew as wide as asked says as much of all it touches
        if (ball.held() || probe.isDone(ball)) {
          known.put(ball);
        }
      }
    }
  }

  /** Keeps the spot if it is the narrowest; from then on wider ones than so many times as wide are not looked for. */
  private void take(int i, Vec normal, BallProbe.Ball ball, double times) {
    if (!ball.held()) {
      return;
    }
    Spot spot = new Spot(list.slot(i), list.point(i), normal, ball, list.area(i));
    if (best.isEmpty() || spot.isBefore(best.get())) {
      best = Optional.of(spot);
      probe.narrow(spot.width() * times);
    }
  }
}
