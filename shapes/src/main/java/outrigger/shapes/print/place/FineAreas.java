package outrigger.shapes.print.place;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.spot.Spot;
import outrigger.shapes.print.tree.FacetTree;

/**
 * Measures again, with samples as fine as a place asks for, over how much surface a small place is narrow: samples that are
 * about as wide as the place itself tell its area a quarter too large or too small.
 *
 * <p>Facets about the place are halved across their longest edges until the parts are small enough; a part stands for its
 * own area. A ball held there belongs to the place that has the spot nearest to its middle.
 */
public final class FineAreas {
  /** Larger places have samples enough, mm^2. */
  private static final double SMALL = 10;
  /** Where there are more small places none is measured again: it would cost more than all else on a part full of holes. */
  private static final int MOST_PLACES = 20;
  /** Parts of the place's width, and the bounds of that as parts of the spacing. */
  private static final double PART = 0.1;
  private static final double FINEST = 0.15;
  private static final double COARSEST = 0.5;
  /** More samples than this are not taken for one place, */
  private static final int MOST_SAMPLES = 5000;
  /** and for all of them. */
  private static final int MOST_IN_ALL = 20_000;
  /** A right triangle with both short edges alike has a fourth of its longest edge's square. */
  private static final double LONGEST = 2;
  /** A ball whose middle lies so many spacings off all spots belongs to no place. */
  private static final double LINK = 2;

  private final FacetTree tree;
  private final Reach reach;
  private final BallProbe probe;
  private final Around around;
  private int left = MOST_IN_ALL;

  /** Measures among the facets of a tree, as far as a reach looks. */
  public FineAreas(FacetTree tree, Reach reach) {
    this.tree = tree;
    this.reach = reach;
    probe = reach.probe(tree);
    around = new Around(tree);
  }

  /**
   * The same places, small ones with their areas measured again.
   *
   * @param all these and others, whose surface is not theirs
   * @param bound the greatest width whose area will be asked for, mm
   */
  public List<NarrowPlace> of(List<NarrowPlace> places, List<NarrowPlace> all, double bound) {
    List<NarrowPlace> measured = new ArrayList<>(places);
    boolean isFew = places.stream().filter(place -> isSmall(place, bound)).count() <= MOST_PLACES;
    for (int i = 0; isFew && i < places.size(); i++) {
      NarrowPlace place = places.get(i);
      if (isSmall(place, bound)) {
        double area = place.area(bound);
        double part = Math.min(COARSEST * reach.spacing(), Math.max(FINEST * reach.spacing(), PART * Math.sqrt(area)));
        measured.set(i, place.measured(new Small(place, all, part).spots(bound)));
      }
    }
    return measured;
  }

  private static boolean isSmall(NarrowPlace place, double bound) {
    return place.area(bound) < SMALL && place.spots().stream().anyMatch(spot -> !spot.isEdge());
  }

  /** One place, measured with parts of the surface of a size. */
  private final class Small {
    private final List<Spot> own;
    private final List<Spot> others = new ArrayList<>();
    private final double longest;
    private final Vec middle;
    private final double radius;
    private int count;

    private Small(NarrowPlace place, List<NarrowPlace> places, double part) {
      own = place.spots().stream().filter(spot -> !spot.isEdge()).toList();
      longest = LONGEST * part;
      Vec sum = new Vec(0, 0, 0);
      for (Spot spot : own) {
        sum = sum.plus(spot.place(), 1.0 / own.size());
      }
      middle = sum;
      radius = own.stream().mapToDouble(spot -> spot.place().distance(middle)).max().orElseThrow() + reach.spacing();
      double near = radius + reach.bound() + LINK * reach.spacing();
      for (NarrowPlace other : places) {
        if (other != place) {
          other.spots().stream().filter(spot -> spot.place().distance(middle) < near).forEach(others::add);
        }
      }
    }

    /** What is narrow there; nothing if that would take too many samples. */
    List<Spot> spots(double bound) {
      List<Spot> spots = new ArrayList<>();
      int[] slots = around.of(middle, radius);
      if (isTooMany(slots)) {
        return spots;
      }
      left -= count;
      for (int slot : slots) {
        Vec normal = tree.normal(slot);
        if (!tree.isNeedle(slot)) {
          split(slot, corners -> {
            Spot spot = spot(slot, normal, corners);
            if (spot.ball().held() && spot.reachesBelow(bound) && isOwn(spot.ball().middle())) {
              spots.add(spot);
            }
          });
        }
      }
      return spots;
    }

    /** Whether the facets about the place have more samples than are taken, counted before any is. */
    private boolean isTooMany(int... slots) {
      for (int slot : slots) {
        if (!tree.isNeedle(slot)) {
          split(slot, corners -> count++);
        }
        if (count > Math.min(left, MOST_SAMPLES)) {
          return true;
        }
      }
      return false;
    }

    private void split(int slot, Consumer<Vec[]> consumer) {
      split(tree.corner(slot, 0), tree.corner(slot, 1), tree.corner(slot, 2), consumer);
    }

    private Spot spot(int slot, Vec normal, Vec... corners) {
      Vec p = Vec.middle(corners[0], corners[1], corners[2]);
      double area = corners[1].minus(corners[0]).cross(corners[2].minus(corners[0])).length() / 2;
      return new Spot(slot, p, normal, probe.measureAlone(slot, p, reach.direction(normal)), area);
    }

    /** Gives the parts of a triangle that lie in the ball searched. */
    private void split(Vec a, Vec b, Vec c, Consumer<Vec[]> consumer) {
      double ab = a.distance(b);
      double bc = b.distance(c);
      double ca = c.distance(a);
      double most = Math.max(ab, Math.max(bc, ca));
      if (Vec.middle(a, b, c).distance(middle) > radius + (most > longest ? most : 0)) {
        return;
      }
      if (most <= longest) {
        consumer.accept(new Vec[] {a, b, c});
      } else if (ab == most) {
        half(a, b, c, consumer);
      } else if (bc == most) {
        half(b, c, a, consumer);
      } else {
        half(c, a, b, consumer);
      }
    }

    private void half(Vec a, Vec b, Vec c, Consumer<Vec[]> consumer) {
      Vec between = a.plus(b, 1).times(0.5);
      split(a, between, c, consumer);
      split(between, b, c, consumer);
    }

    private boolean isOwn(Vec m) {
      double least = nearest(own, m);
      return least <= LINK * reach.spacing() && least <= nearest(others, m);
    }

    private double nearest(List<Spot> spots, Vec m) {
      double least = Double.POSITIVE_INFINITY;
      for (Spot spot : spots) {
        least = Math.min(least, spot.ball().middle().distance(m));
      }
      return least;
    }
  }
}
