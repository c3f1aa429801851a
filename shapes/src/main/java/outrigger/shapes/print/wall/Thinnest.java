package outrigger.shapes.print.wall;

import java.util.Optional;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.place.Descent;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.sample.SampleList;
import outrigger.shapes.print.spot.BallField;
import outrigger.shapes.print.spot.Spot;
import outrigger.shapes.print.tree.FacetTree;

/**
 * Looks for the thinnest wall of a part that has none too thin: balls as wide as walls may be, at samples far apart, and
 * a descent from the narrowest. A number worth telling; no promise hangs on it.
 */
final class Thinnest {
  private static final int SAMPLES = 200;
  /** Facets to look at before no more balls are rolled out of corners, and before no more are laid. */
  private static final long ROLLED = 100_000;
  private static final long LAID = 400_000;
  /** Widths that differ by less than this factor are told apart by place. */
  private static final double EQUAL = 1 + 1e-6;

  private Thinnest() {}

  /** The narrowest spot found; empty if no ball is held. */
  static Optional<Spot> of(FacetTree tree, BallField.Reach reach, double area) {
    FacetSamples samples = new FacetSamples(tree, Math.max(reach.spacing(), Math.sqrt(area / SAMPLES)));
    BallProbe probe = reach.probe(tree);
    SampleList list = new SampleList();
    Optional<Spot> best = Optional.empty();
    int step = Math.max(1, tree.size() / SAMPLES);
    for (int slot = 0; slot < tree.size() && probe.work() < LAID; slot += step) {
      list.clear();
      if (!samples.isNeedle(slot)) {
        samples.addTo(list, slot);
      }
      Vec normal = tree.normal(slot);
      for (int i = 0; i < list.size(); i++) {
        Vec u = reach.direction(normal);
        BallProbe.Ball ball = probe.work() < ROLLED ? probe.measure(slot, list.point(i), u)
            : probe.first(slot, list.point(i), u);
        Spot spot = new Spot(slot, list.point(i), normal, ball, list.area(i));
        if (ball.held() && best.map(spot::isBefore).orElse(true)) {
          best = Optional.of(spot);
          probe.narrow(spot.width() * EQUAL);
        }
      }
    }
    return best.map(new Descent(tree, reach)::from);
  }
}
