package outrigger.generator.clash;

import java.util.Optional;
import java.util.stream.IntStream;

/** Least distance between the surfaces of two elements, by their facets. */
final class Distance {
  private final Facets a;
  private final Facets b;
  private final double[] first = new double[9];
  private final double[] second = new double[9];
  private final FacetGap gap = new FacetGap();
  private double least;
  private boolean found;
  private Spot at = new Spot(0, 0, 0);

  private Distance(Facets a, Facets b, double within) {
    this.a = a;
    this.b = b;
    this.least = within;
  }

  /**
   * How near two surfaces come.
   *
   * @param distance mm
   * @param at the middle between the two nearest points
   */
  record Nearest(double distance, Spot at) {}

  /** The least distance of two surfaces, if it is not above {@code within}, mm. */
  static Optional<Nearest> between(Facets a, Facets b, double within) {
    Distance distance = a.count() <= b.count() ? new Distance(a, b, within) : new Distance(b, a, within);
    distance.search();
    return distance.found ? Optional.of(new Nearest(distance.least, distance.at)) : Optional.empty();
  }

  private void search() {
    // Nearest boxes first: the sooner a small distance is known, the less is left to ask.
    IntStream.range(0, a.count()).filter(f -> a.box(f).distance(b.bounds()) <= least).boxed()
        .sorted(java.util.Comparator.comparingDouble(f -> a.box(f).distance(b.bounds()))).forEach(this::facet);
  }

  private void facet(int f) {
    Bounds box = a.box(f);
    if (found && (least == 0 || box.distance(b.bounds()) >= least)) {
      return;
    }
    a.copy(f, first);
    b.forEachIn(box.grown(least), g -> {
      if (!found || b.box(g).distance(box) < least) {
        b.copy(g, second);
        ask();
      }
    });
  }

  private void ask() {
    double d = gap.between(first, second);
    if (d < least || !found && d <= least) {
      least = d;
      found = true;
      at = gap.middle();
    }
  }
}
