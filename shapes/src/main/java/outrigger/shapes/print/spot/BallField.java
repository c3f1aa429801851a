package outrigger.shapes.print.spot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.ball.HeldBalls;
import outrigger.shapes.print.facet.Cones;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.sample.SampleList;
import outrigger.shapes.print.sample.Thinning;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.Facing;
import outrigger.shapes.print.tree.NearRegions;

/**
 * The width of the solid, or of the air before it, over the whole surface: the least of each facet, and every sample
 * that is narrower than a bound.
 *
 * <p>Samples are taken only where facets stand against each other ({@link Facing}). Nearly everywhere there something narrow
 * is near, so to prove that none is, for many samples at once, was seldom worth it. Work is cut into pieces by facets and
 * samples alone, so the result does not depend on the number of threads.
 */
public final class BallField {
  /** Samples that a thread takes at a time, about. */
  private static final int PIECE = 4096;
  /** Facets smaller than a square of this part of the spacing share samples: a finer mesh has no more of them. */
  private static final double FINER = 4;

  private final FacetTree tree;
  private final FacetSamples samples;
  private final Reach reach;
  private final NearRegions regions;
  private final double cell;
  private final boolean[] meets;
  private final int[] standIn;
  private final double[] least;
  private final List<Spot> narrow = new ArrayList<>();
  private final List<Spot> rims = new ArrayList<>();
  private final List<Spot> held = new ArrayList<>();

  private BallField(FacetTree tree, Reach reach, NearRegions regions) {
    this.tree = tree;
    this.reach = reach;
    this.regions = regions;
    samples = new FacetSamples(tree, reach.spacing());
    cell = Math.pow(reach.spacing() / FINER, 2);
    meets = new boolean[tree.size()];
    standIn = new int[tree.size()];
    least = new double[tree.size()];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
  }

  /** Measures the whole surface. */
  public static BallField of(Specimen specimen, Reach reach) {
    FacetTree tree = specimen.facetTree();
    Workers workers = specimen.workers();
    Cones cones = new Cones(specimen.mesh(), specimen.facets(), specimen.seams(), reach.inward());
    BallField field = new BallField(tree, reach,
        Facing.of(tree, cones, reach.inward(), reach.shown(), reach.shown() + reach.spacing(), workers));
    if (field.regions.isEmpty()) {
      return field;
    }
    SampleList all = field.samples(workers);
    workers.each((all.size() + PIECE - 1) / PIECE,
        i -> field.new Piece(all).of(i * PIECE, Math.min(all.size(), (i + 1) * PIECE))).forEach(field::take);
    field.share();
    return field;
  }

  /** All samples, those near each other together, whatever way they face: so a ball found held serves all round. */
  private SampleList samples(Workers workers) {
    int[] starts = starts();
    SampleList all = new SampleList();
    workers.each(starts.length - 1, i -> new Spread().of(starts[i], starts[i + 1])).forEach(all::addAll);
    all.sort();
    return all;
  }

  /** First slots of the pieces, each of some {@value #PIECE} samples, and the end. */
  private int[] starts() {
    int[] starts = new int[tree.size() + 1];
    int count = 0;
    double load = PIECE;
    for (int slot = 0; slot < tree.size(); slot++) {
      if (load >= PIECE) {
        starts[count++] = slot;
        load = 0;
      }
      meets[slot] = regions.meets(slot) && !tree.isNeedle(slot);
      double area = meets[slot] ? tree.area(slot) : 0;
      load += Math.min(1, area / cell) + area / (reach.spacing() * reach.spacing());
    }
    starts[count++] = tree.size();
    return Arrays.copyOf(starts, count);
  }

  /** Whether a facet is so small that one beside it may stand for it; a long one reaches too far, however thin it is. */
  private boolean isFine(int slot) {
    return tree.area(slot) < cell && samples.isAllNear(slot);
  }

  /** The samples that one thread spreads at a time. */
  private final class Spread {
    private final SampleList list = new SampleList();

    SampleList of(int from, int to) {
      for (int slot = from; slot < to;) {
        if (!meets[slot]) {
          standIn[slot] = slot++;
        } else {
          slot = isFine(slot) ? addTogether(slot, to) : addAlone(slot);
        }
      }
      list.sort();
      new Thinning(tree, reach.spacing()).thin(list, standIn);
      return list;
    }

    private int addAlone(int slot) {
      if (regions.holdsAll(slot)) {
        samples.addTo(list, slot);
      } else {
        samples.addTo(list, slot, regions::holds);
      }
      standIn[slot] = slot;
      return slot + 1;
    }

    /** Lets the largest of a run of small facets stand for them all, and returns where the run ends. */
    private int addTogether(int from, int to) {
      double sum = 0;
      int largest = from;
      int end = from;
      for (; end < to && sum < cell && isFine(end) && meets[end]; end++) {
        sum += tree.area(end);
        largest = tree.area(end) > tree.area(largest) ? end : largest;
      }
      Arrays.fill(standIn, from, end, largest);
      list.add(largest, FacetSamples.middle(tree, largest), sum);
      return end;
    }
  }

  /** What one thread measures at a time. */
  private final class Piece {
    private final SampleList list;
    private final BallProbe probe = reach.probe(tree);
    private final HeldBalls known = new HeldBalls();
    private final List<Spot> spots = new ArrayList<>();
    private int slot = -1;
    private Vec normal = new Vec(0, 0, 0);
    private Vec u = normal;

    private Piece(SampleList list) {
      this.list = list;
    }

    List<Spot> of(int from, int to) {
      for (int i = from; i < to; i++) {
        measure(i);
      }
      return spots;
    }

    private void measure(int i) {
      if (list.slot(i) != slot) {
        slot = list.slot(i);
        normal = tree.normal(slot);
        u = reach.direction(normal);
      }
      Vec p = list.point(i);
      int touching = known.touching(p, u);
      BallProbe.Ball ball = touching >= 0 ? known.seen(touching, u) : ball(p);
      if (ball.held()) {
        spots.add(new Spot(slot, p, normal, ball, list.area(i)));
      }
    }

    private BallProbe.Ball ball(Vec p) {
      BallProbe.Ball ball = probe.measure(slot, p, u);
      if (ball.grip() == BallProbe.Grip.ROLLED) {
        known.put(ball);
      }
      return ball;
    }
  }

  private void take(List<Spot> spots) {
    for (Spot spot : spots) {
      int facet = tree.facet(spot.slot());
      least[facet] = Math.min(least[facet], spot.width());
      if (reach.mapped()) {
        held.add(spot);
      }
      if (spot.width() < reach.bound()) {
        narrow.add(spot);
      } else if (spot.reachesBelow(reach.bound())) {
        rims.add(spot);
      }
    }
  }

  /** Shows spots measured elsewhere than at samples, each on the facet it is told of. */
  public void show(List<Spot> spots) {
    for (Spot spot : spots) {
      int facet = tree.facet(spot.slot());
      if (reach.mapped()) {
        held.add(spot);
      }
      if (!samples.isLarge(spot.slot())) {
        least[facet] = Math.min(least[facet], spot.width());
      }
    }
  }

  /** Gives the facets that another stands for its width. */
  private void share() {
    for (int slot = 0; slot < standIn.length; slot++) {
      least[tree.facet(slot)] = least[tree.facet(standIn[standIn[slot]])];
    }
  }

  /** Least width on each facet, by the mesh's facet numbers, mm; infinite where no ball is held. */
  public double[] least() {
    return least.clone();
  }

  /** What was measured on facets too large to be alike all over, by facet; nothing unless mapped. */
  public Map<Integer, List<FacetField.Place>> places() {
    Map<Integer, List<FacetField.Place>> places = new LinkedHashMap<>();
    for (Spot spot : held) {
      if (samples.isLarge(spot.slot())) {
        places.computeIfAbsent(tree.facet(spot.slot()), f -> new ArrayList<>()).add(new FacetField.Place(
            spot.place().x(), spot.place().y(), spot.place().z(), FacetSamples.CELL * reach.spacing(), spot.width()));
      }
    }
    return places;
  }

  /** All spots narrower than the bound, in an order that hangs on the mesh alone. */
  public List<Spot> narrow() {
    return narrow;
  }

  /** Where facets stand against each other. */
  public NearRegions regions() {
    return regions;
  }

  /** Spots that are not narrower, but whose surroundings are in part. */
  public List<Spot> rims() {
    return rims;
  }
}
