package outrigger.shapes.print.place;

import java.util.List;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.spot.Spot;

/** How the normals, the ways of being held and the balls' middles of narrow spots spread: this tells what they form. */
final class SpotSpread {
  /** Rounder sections have a second normal direction of at least this weight against the first. */
  private static final double ROUND = 0.3;
  /** The same for edges, of which few are measured where they are short: those of a ring may lie mostly on two sides. */
  private static final double RING = 0.15;
  /** A place touched lies no farther from a ball's middle than this part of its width: half, but for rounding. */
  private static final double TOUCHED = 0.51;
  /** cos 60 degrees: a facet leaning more is not one of the two that hold the ball. */
  private static final double ACROSS = 0.5;
  /** cos 30 degrees, and how much of a strip its top is at least: of one 2 mm high and a tenth wide, a fortieth. */
  private static final double ALONG = 0.866;
  private static final double TOP = 0.02;
  /** What faces the other way than a top is a smaller part of it than this: few samples fall on a small top. */
  private static final double ONE_SIDED = 0.25;
  /** What has a surface on one side alone, against an inner edge, is no strip: the mean normal along the way it is held. */
  private static final double ONE_FACED = 0.5;
  /** Middles of a pin or hole keep within this part of the width from its axis. */
  private static final double STRAIGHT = 0.25;
  /** Sides all round face away from each other: their mean is no longer than this part of a unit. */
  private static final double CLOSED = 0.25;
  /** A pin or hole is no shorter than this part of its width; shallower ones are details of a surface. */
  private static final double SHORT = 0.25;
  /**
   * Whose top, across the way it is held, is a larger part of its surface is a land, less than three times as high as wide,
   * as between engraved strokes. Walls and what hangs free have nothing or as much on the other side.
   */
  private static final double LAND = 0.15;

  private final List<Spot> spots;
  private final double area;
  /** Mean of the normals. */
  private final Vec facing;
  /** Of the ways spots are held. */
  private final Axes grips;
  /** Second moments of the balls' middles about their own middle, a part of area. */
  private final double[][] spread = new double[3][3];
  private final Axes axes;

  /** That of some spots. */
  SpotSpread(List<Spot> spots) {
    this.spots = spots;
    area = area(spots);
    Vec middle = middle(spots);
    Vec mean = new Vec(0, 0, 0);
    double[][] ways = new double[3][3];
    for (Spot s : spots) {
      double weight = s.area() / area;
      mean = mean.plus(s.normal(), weight);
      add(ways, grip(s), weight);
      add(spread, s.ball().middle().minus(middle), weight);
    }
    facing = mean;
    grips = new Axes(ways);
    axes = new Axes(spread);
  }

  /** Extent of the middles along their longest way, mm. */
  double length() {
    return extent(axes.value(0));
  }

  /** Extent of the middles across that, mm. */
  double breadth() {
    return extent(axes.value(1));
  }

  /** What they form, the narrowest of them so wide, mm. */
  NarrowPlace.Form form(double width) {
    Vec axis = grips.axis(2);
    double length = extent(along(spread, axis));
    if (spots.stream().allMatch(Spot::isEdge)) {
      return grips.value(1) > RING * grips.value(0) ? NarrowPlace.Form.NECK : NarrowPlace.Form.NOTCH;
    }
    if (isAllRound() && Math.sqrt(Math.max(0, trace(spread) - along(spread, axis))) < STRAIGHT * width
        && length > SHORT * width) {
      return NarrowPlace.Form.ROUND;
    }
    NarrowPlace.Form wide = isSeveralWays() ? NarrowPlace.Form.LUMP : NarrowPlace.Form.SHEET;
    if (Math.abs(facing.dot(grips.axis(0))) > ONE_FACED) {
      return wide;
    }
    Vec top = across(facing, grips.axis(0));
    if (top.length() > LAND && ends(0, top.unit())) {
      return NarrowPlace.Form.STRIP;
    }
    double height = breadth();
    boolean low = Math.min(length, height) < NarrowPlace.LOW && length() > NarrowPlace.LOW;
    return low && ends(TOP * area, length < height ? axis : axes.axis(1)) ? NarrowPlace.Form.STRIP : wide;
  }

  private boolean isSeveralWays() {
    return grips.value(1) > ROUND * grips.value(0);
  }

  /** Whether they have sides all round, as those of a pin or hole: nothing else is one. */
  boolean isAllRound() {
    return isSeveralWays() && across(facing, grips.axis(2)).length() < CLOSED;
  }

  /** Which way the top of a strip faces: what faces along the mean of all normals, but for the way it is held. */
  Vec top() {
    Vec up = across(facing, grips.axis(0)).unit();
    Vec sum = new Vec(0, 0, 0);
    for (Spot s : spots) {
      sum = sum.plus(s.normal(), s.normal().dot(up) > ALONG ? s.area() : 0);
    }
    return sum.length() == 0 ? up : sum.unit();
  }

  /**
   * Whether more than some area faces along a direction and next to none against it, as the top of a rib does; a web between
   * two holes through a plate has a top and a bottom.
   */
  private boolean ends(double least, Vec along) {
    double with = facing(along);
    double against = facing(along.times(-1));
    return Math.max(with, against) > least && Math.min(with, against) < ONE_SIDED * Math.max(with, against);
  }

  private double facing(Vec along) {
    return spots.stream().filter(s -> s.normal().dot(along) > ALONG).mapToDouble(Spot::area).sum();
  }

  /** Surface that spots stand for, mm^2. */
  static double area(List<Spot> spots) {
    return spots.stream().mapToDouble(Spot::area).sum();
  }

  /** The part of a vector across a unit vector. */
  private static Vec across(Vec v, Vec unit) {
    return v.plus(unit, -v.dot(unit));
  }

  /** Middle of the balls, by the area they stand for. */
  static Vec middle(List<Spot> spots) {
    double total = area(spots);
    Vec middle = new Vec(0, 0, 0);
    for (Spot s : spots) {
      middle = middle.plus(s.ball().middle(), s.area() / total);
    }
    return middle;
  }

  /**
   * The way a spot is held: the facet's own way, unless it lies across, as the top of a rib does. An edge's own way leads to
   * the middle of a ball that touches it: of a ball in a ring of edges any two may be those that hold it.
   */
  private static Vec grip(Spot spot) {
    Vec across = spot.ball().across();
    if (spot.isEdge()) {
      Vec way = spot.ball().middle().minus(spot.place());
      return way.length() > 0 && way.length() < TOUCHED * spot.width() ? way.unit() : across;
    }
    return Math.abs(spot.normal().dot(across)) > ACROSS ? spot.normal() : across;
  }

  /** An even strip of breadth b has the variance b^2 / 12. */
  private static double extent(double variance) {
    return Math.sqrt(12 * Math.max(0, variance));
  }

  private static void add(double[][] m, Vec v, double weight) {
    double[] c = {v.x(), v.y(), v.z()};
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        m[i][j] += weight * c[i] * c[j];
      }
    }
  }

  private static double trace(double[][] m) {
    return m[0][0] + m[1][1] + m[2][2];
  }

  private static double along(double[][] m, Vec v) {
    double[] c = {v.x(), v.y(), v.z()};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        sum += c[i] * m[i][j] * c[j];
      }
    }
    return sum;
  }
}
