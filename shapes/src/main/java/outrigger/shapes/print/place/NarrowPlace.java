package outrigger.shapes.print.place;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.shapes.print.ball.BallProbe;
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
  /** A lower strip is a rib or a stroke, mm: raised text stands 0.4 to 0.6 mm high (common practice), ribs twice that. */
  static final double LOW = 2;
  /** Parts of the bound: what runs out begins as wide as this, ends as narrow as that, and takes no longer. */
  private static final double WALL = 0.6;
  private static final double NOTHING = 0.2;
  private static final double SHORT_RUN = 3;
  /** What lies within this part of the breadth from the middle lies amid; where an edge runs out it is a half. */
  private static final double AMID = 0.125;
  /** cos 45 degrees. */
  private static final double LEVEL = 0.707;
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
    SpotSpread spread = new SpotSpread(spots);
    return new NarrowPlace(narrowest, spread.form(narrowest.width()), spread.length(), spread.breadth(),
        List.copyOf(spots), List.copyOf(rim), List.of());
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
    return SpotSpread.middle(spots).distance(narrowest.ball().middle()) < AMID * breadth;
  }

  /** Whether all faces between which it is narrower than a bound lie rather above and below it than beside it. */
  public boolean isLevel(double bound) {
    List<Spot> facing = narrower(spots, bound).stream().filter(s -> s.ball().grip() == BallProbe.Grip.FACING).toList();
    return !facing.isEmpty() && facing.stream().allMatch(s -> Math.abs(s.ball().across().z()) > LEVEL);
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

  /** Which way its top faces. */
  Vec top() {
    return new SpotSpread(spots).top();
  }

  /** Middle of the ball that lies nearest to the middle of all. */
  Vec centre() {
    Vec middle = SpotSpread.middle(spots);
    return spots.stream().map(s -> s.ball().middle()).min(Comparator.comparingDouble(middle::distance)).orElseThrow();
  }

  /** The same, found to have an end on both sides: no strip. */
  NarrowPlace throughout() {
    return new NarrowPlace(narrowest, Form.SHEET, length, breadth, spots, rim, fine);
  }
}
