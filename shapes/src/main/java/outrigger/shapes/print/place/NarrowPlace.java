package outrigger.shapes.print.place;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.spot.Spot;

/**
 * Narrow spots that belong together.
 *
 * @param narrowest the narrowest place among them
 * @param form what they form
 * @param length extent of the ball's middles along their longest way, mm
 * @param breadth extent of the middles across that, mm
 * @param spots all of them
 * @param rim spots beside them that are not narrow, but stand for some narrow surface
 * @param fine finer samples of the same surface, from which its area is told; empty where the others are fine enough
 */
public record NarrowPlace(Spot narrowest, Form form, double length, double breadth, List<Spot> spots, List<Spot> rim,
    List<Spot> fine) {
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
  /** A lower strip is a rib or a stroke, mm: raised text stands 0.4 to 0.6 mm high (common practice), ribs twice that. */
  static final double LOW = 2;
  /**
   * Whose top, across the way it is held, is a larger part of its surface is a land, less than three times as high as wide,
   * as between engraved strokes. Walls and what hangs free have nothing or as much on the other side.
   */
  private static final double LAND = 0.15;

  /** Parts of the bound: what runs out begins as wide as this, ends as narrow as that, and takes no longer. */
  private static final double WALL = 0.6;
  private static final double NOTHING = 0.2;
  private static final double SHORT_RUN = 3;
  /** What lies within this part of the breadth from the middle lies amid; where an edge runs out it is a half. */
  private static final double AMID = 0.125;
  /** No wall is so thin a part of the bound, but every tip is. */
  private static final double FOIL = 0.02;

  /** What narrow spots form, by their extents. */
  public enum Form {
    /** As wide one way as the other across its length: a pin of the solid, a hole of the air. */
    ROUND,
    /** A low strip that ends, or a land: a rib or raised stroke of the solid, an engraved stroke of the air. */
    STRIP,
    /** Wide two ways: a wall of the solid, a slot of the air. */
    SHEET,
    /** None of these, with sides that face several ways: a ball, or walls that meet. */
    LUMP,
    /** Narrow between inner edges alone, which face each other one way: what two notches leave. */
    NOTCH,
    /** The same, several ways: where two bodies hang together by a corner. */
    NECK
  }

  /** One spot that stands for no surface about it. */
  public static NarrowPlace at(Spot spot) {
    return of(spot, List.of(spot.alone()), List.of());
  }

  static NarrowPlace of(Spot narrowest, List<Spot> spots, List<Spot> rim) {
    double[][] spread = spread(spots);
    Axes axes = new Axes(spread);
    return new NarrowPlace(narrowest, form(spots, spread, narrowest.width()), extent(axes.value(0)),
        extent(axes.value(1)), List.copyOf(spots), List.copyOf(rim), List.of());
  }

  /** The same with its area told from finer samples. */
  NarrowPlace measured(List<Spot> samples) {
    return new NarrowPlace(narrowest, form, length, breadth, spots, rim, List.copyOf(samples));
  }

  /** Whether it runs out to nothing within a short way: the last of a sharp edge or tip, not a wall. */
  public boolean isSharp(double bound) {
    double widest = 0;
    for (Spot spot : spots) {
      widest = Math.max(widest, spot.width());
    }
    boolean runsOut = mayRunOut(bound) && widest > WALL * bound && !isNarrowestAmid() || runsOut(bound);
    return runsOut && breadth < SHORT_RUN * bound;
  }

  /** Whether its narrowest spot lies amid the others, as under a dent, and not at an end, as where it runs out. */
  private boolean isNarrowestAmid() {
    return middle(spots).distance(narrowest.ball().middle()) < AMID * breadth;
  }

  /** Whether it is nothing at its thinnest, as no wall is meant to be. */
  public boolean runsOut(double bound) {
    return narrowest.width() < FOIL * bound;
  }

  /** The part of it that is narrower than a bound, its narrowest spot at least. */
  public NarrowPlace below(double bound) {
    List<Spot> narrower = narrower(spots, bound);
    List<Spot> beside = Stream.concat(spots.stream().filter(s -> s.width() >= bound), rim.stream()).toList();
    return of(narrowest, narrower.isEmpty() ? List.of(narrowest) : narrower, beside).measured(fine);
  }

  /** Whether it is next to nothing at its thinnest, beside what it is elsewhere. */
  public boolean mayRunOut(double bound) {
    return narrowest.width() < NOTHING * bound;
  }

  /** The same without all that is no narrower than a width, but for its narrowest spot. */
  public NarrowPlace without(double width) {
    List<Spot> left = narrower(spots, width);
    return of(narrowest, left.isEmpty() ? List.of(narrowest) : left, List.of()).measured(narrower(fine, width));
  }

  private static List<Spot> narrower(List<Spot> spots, double width) {
    return spots.stream().filter(s -> s.width() < width).toList();
  }

  /** Whether a sharp place is a tip and no edge. */
  public boolean isTip(double bound) {
    return length < SHORT_RUN * bound;
  }

  /** Surface narrower than a bound, mm^2. */
  public double area(double bound) {
    return fine.isEmpty() ? area(spots, bound) + area(rim, bound) : area(fine, bound);
  }

  private static double area(List<Spot> spots, double bound) {
    double sum = 0;
    for (Spot spot : spots) {
      sum += spot.areaBelow(bound);
    }
    return sum;
  }

  /** The part of it that lies on inner edges, if any does. */
  public Optional<NarrowPlace> onEdges() {
    List<Spot> edges = spots.stream().filter(Spot::isEdge).toList();
    return edges.isEmpty() ? Optional.empty() : Optional.of(of(narrowest, edges, List.of()));
  }

  /** Whether it lies between inner edges alone, which have no surface. */
  public boolean isBetweenEdges() {
    return form == Form.NOTCH || form == Form.NECK;
  }

  /** Which way its top faces: what faces along the mean of all normals, but for the way it is held. */
  Vec top() {
    Vec up = up();
    Vec sum = new Vec(0, 0, 0);
    for (Spot s : spots) {
      sum = sum.plus(s.normal(), s.normal().dot(up) > ALONG ? s.area() : 0);
    }
    return sum.length() == 0 ? up : sum.times(1 / sum.length());
  }

  private Vec up() {
    Vec top = across(facing(spots), new Axes(grips(spots)).axis(0));
    return top.times(1 / top.length());
  }

  /** Middle of the ball that lies nearest to the middle of all. */
  Vec centre() {
    Vec middle = middle(spots);
    return spots.stream().map(s -> s.ball().middle()).min(Comparator.comparingDouble(middle::distance)).orElseThrow();
  }

  /** The same, found to have an end on both sides: no strip. */
  NarrowPlace throughout() {
    return new NarrowPlace(narrowest, Form.SHEET, length, breadth, spots, rim, fine);
  }

  private static Form form(List<Spot> spots, double[][] spread, double width) {
    Vec facing = facing(spots);
    Axes ofGrips = new Axes(grips(spots));
    Vec axis = ofGrips.axis(2);
    double length = extent(along(spread, axis));
    if (spots.stream().allMatch(Spot::isEdge)) {
      return ofGrips.value(1) > RING * ofGrips.value(0) ? Form.NECK : Form.NOTCH;
    }
    boolean severalWays = isSeveralWays(ofGrips);
    if (isAllRound(ofGrips, facing) && Math.sqrt(Math.max(0, trace(spread) - along(spread, axis))) < STRAIGHT * width
        && length > SHORT * width) {
      return Form.ROUND;
    }
    if (Math.abs(facing.dot(ofGrips.axis(0))) > ONE_FACED) {
      return severalWays ? Form.LUMP : Form.SHEET;
    }
    Vec top = across(facing, ofGrips.axis(0));
    if (top.length() > LAND && ends(spots, 0, top.times(1 / top.length()))) {
      return Form.STRIP;
    }
    Axes axes = new Axes(spread);
    double height = extent(axes.value(1));
    boolean low = Math.min(length, height) < LOW && extent(axes.value(0)) > LOW;
    return low && ends(spots, TOP * area(spots), length < height ? axis : axes.axis(1)) ? Form.STRIP
        : severalWays ? Form.LUMP : Form.SHEET;
  }

  private static boolean isSeveralWays(Axes ofGrips) {
    return ofGrips.value(1) > ROUND * ofGrips.value(0);
  }

  private static boolean isAllRound(Axes ofGrips, Vec facing) {
    return isSeveralWays(ofGrips) && across(facing, ofGrips.axis(2)).length() < CLOSED;
  }

  /** Whether spots have sides all round, as those of a pin or hole: nothing else is one. */
  static boolean isAllRound(List<Spot> spots) {
    return isAllRound(new Axes(grips(spots)), facing(spots));
  }

  /**
   * Whether more than some area faces along a direction and next to none against it, as the top of a rib does; a web between
   * two holes through a plate has a top and a bottom.
   */
  private static boolean ends(List<Spot> spots, double area, Vec along) {
    double with = facing(spots, along);
    double against = facing(spots, along.times(-1));
    return Math.max(with, against) > area && Math.min(with, against) < ONE_SIDED * Math.max(with, against);
  }

  private static double facing(List<Spot> spots, Vec along) {
    return spots.stream().filter(s -> s.normal().dot(along) > ALONG).mapToDouble(Spot::area).sum();
  }

  /** Surface that spots stand for, mm^2. */
  static double area(List<Spot> spots) {
    return spots.stream().mapToDouble(Spot::area).sum();
  }

  /** Mean of the normals. */
  private static Vec facing(List<Spot> spots) {
    double total = area(spots);
    Vec facing = new Vec(0, 0, 0);
    for (Spot s : spots) {
      facing = facing.plus(s.normal(), s.area() / total);
    }
    return facing;
  }

  /** Second moments of the ways spots are held. */
  private static double[][] grips(List<Spot> spots) {
    double total = area(spots);
    double[][] grips = new double[3][3];
    for (Spot s : spots) {
      add(grips, grip(s), s.area() / total);
    }
    return grips;
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
      return way.length() > 0 && way.length() < TOUCHED * spot.width() ? way.times(1 / way.length()) : across;
    }
    return Math.abs(spot.normal().dot(across)) > ACROSS ? spot.normal() : across;
  }

  /** Second moments of the balls' middles about their own middle, a part of area. */
  private static double[][] spread(List<Spot> spots) {
    double[][] spread = new double[3][3];
    double total = area(spots);
    Vec middle = middle(spots);
    for (Spot s : spots) {
      add(spread, s.ball().middle().minus(middle), s.area() / total);
    }
    return spread;
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
