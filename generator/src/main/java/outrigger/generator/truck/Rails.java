package outrigger.generator.truck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import outrigger.presets.Rail;

/**
 * The two rails along their length. Their top edges lie in the plane z = 0.
 *
 * @param params sections and ends
 * @param stations places where the section is known, from the front end backward
 */
public record Rails(RailParams params, List<Station> stations) {

  /** Turns of the search for a seat; webs run straight between stations, so that few settle it. */
  private static final int SETTLE = 8;

  /** A length that tells no slope, mm. */
  private static final double SHORT = 1e-6;

  /** Section at a place; mm. */
  public record Station(double x, double spacing, double height) {}

  public Rails {
    stations = List.copyOf(stations);
  }

  /** The rails of what a plan says; a value of 0 is that of the place ahead. */
  public static Rails of(RailParams params, List<RailAt> places) {
    List<Station> stations = new ArrayList<>();
    stations.add(new Station(params.front(), params.spacing(), params.height()));
    for (RailAt at : places.stream().sorted(Comparator.comparingDouble(RailAt::x).reversed()).toList()) {
      Station ahead = stations.get(stations.size() - 1);
      stations.add(new Station(at.x(), at.spacing() == 0 ? ahead.spacing() : at.spacing(),
          at.height() == 0 ? ahead.height() : at.height()));
    }
    return new Rails(params, stations);
  }

  /** The section at a place along the truck; beyond the last place as there. */
  public Station at(double x) {
    Station ahead = stations.get(0);
    for (Station behind : stations.subList(1, stations.size())) {
      if (x > behind.x()) {
        return params.change() == RailChange.STEP || x >= ahead.x() ? new Station(x, ahead.spacing(), ahead.height())
            : between(ahead, behind, x);
      }
      ahead = behind;
    }
    return new Station(x, ahead.spacing(), ahead.height());
  }

  private static Station between(Station ahead, Station behind, double x) {
    double share = (ahead.x() - x) / (ahead.x() - behind.x());
    return new Station(x, ahead.spacing() + share * (behind.spacing() - ahead.spacing()),
        ahead.height() + share * (behind.height() - ahead.height()));
  }

  /** Narrowest spacing over a length, mm. */
  public double narrowest(double from, double to) {
    double least = Math.min(at(from).spacing(), at(to).spacing());
    for (Station station : stations) {
      if (station.x() > Math.min(from, to) && station.x() < Math.max(from, to)) {
        least = Math.min(least, station.spacing());
      }
    }
    return least;
  }

  /** Degrees by which the left web turns away from straight ahead at a place; 0 of parallel rails. */
  public double toe(double x) {
    double step = 1e-3;
    if (params.change() == RailChange.STEP) {
      return 0;
    }
    return StrictMath.toDegrees(StrictMath.atan((at(x + step).spacing() - at(x - step).spacing()) / (4 * step)));
  }

  /**
   * Where to bolt what stands square out from a web, so that its end comes to lie at x.
   *
   * @param x of the end, mm
   * @param reach from the web's face to the end, mm; negative inward from the inner face
   */
  public Seat seat(double x, double reach) {
    double at = x;
    for (int i = 0; i < SETTLE; i++) {
      at = x + reach * StrictMath.sin(StrictMath.toRadians(toe(at)));
    }
    return new Seat(at, at(at).spacing() / 2 + (reach < 0 ? 0 : thickness()), toe(at));
  }

  /**
   * Where to bolt a foot that stands flat on a web and carries an end square out from it, so that the end comes to lie at
   * x; over a bend or a step the foot touches the web and cuts into it nowhere.
   *
   * @param x of the end, mm
   * @param reach from the web's face to the end, mm; negative inward from the inner face
   * @param from where the foot ends behind, mm forward of the end; negative behind it
   * @param to where it ends in front
   */
  public Seat foot(double x, double reach, double from, double to) {
    return seat(face(x, reach, from, to), reach < 0);
  }

  /** Where such a foot stands off the web most, which bends or steps away from under it. */
  public StandOff footOff(double x, double reach, double from, double to) {
    return off(face(x, reach, from, to), reach < 0);
  }

  /** A flat face of a length against the outside of the left web, touching it and cutting into it nowhere. */
  public Seat flat(double x, double length) {
    return seat(face(x, length), false);
  }

  /** Where such a face stands off the web most. */
  public StandOff flatOff(double x, double length) {
    return off(face(x, length), false);
  }

  /** A straight face along a web: a place of it, its slope and its ends. */
  private record Face(double at, double slope, double rear, double front) {}

  private Face face(double x, double length) {
    double from = x - length / 2;
    double to = x + length / 2;
    return new Face(x, params.change() == RailChange.STEP ? 0 : (at(to).spacing() - at(from).spacing()) / 2 / length, from,
        to);
  }

  private Face face(double x, double reach, double from, double to) {
    double at = x;
    double slope = 0;
    double rear = x + from;
    double front = x + to;
    for (int i = 0; i < SETTLE; i++) {
      double cosine = 1 / Math.sqrt(1 + slope * slope);
      rear = Math.max(params.rear(), Math.min(at + from * cosine, params.front()));
      front = Math.max(params.rear(), Math.min(at + to * cosine, params.front()));
      slope = params.change() == RailChange.STEP || front - rear < SHORT ? 0
          : (at(front).spacing() - at(rear).spacing()) / 2 / (front - rear);
      at = x + reach * slope * cosine;
    }
    return new Face(at, slope, rear, front);
  }

  private Seat seat(Face f, boolean isInside) {
    return new Seat(f.at, line(f, isInside) + (isInside ? 0 : thickness()),
        StrictMath.toDegrees(StrictMath.atan(f.slope)));
  }

  private double line(Face f, boolean isInside) {
    return isInside ? inmost(f.rear, f.front, f.at, f.slope) : outmost(f.rear, f.front, f.at, f.slope);
  }

  private StandOff off(Face f, boolean isInside) {
    double line = line(f, isInside);
    return corners(f.rear, f.front).mapToObj(x -> new StandOff(x, Math.abs(line - out(x, f.at, f.slope))
        / Math.sqrt(1 + f.slope * f.slope))).max(Comparator.comparingDouble(StandOff::mm)).orElseThrow();
  }

  /** y at x of the line of a slope that lies on the web's inner face from its outside, shifted by no thickness. */
  private double outmost(double from, double to, double x, double slope) {
    return corners(from, to).map(at -> out(at, x, slope)).max().orElseThrow();
  }

  private double inmost(double from, double to, double x, double slope) {
    return corners(from, to).map(at -> out(at, x, slope)).min().orElseThrow();
  }

  /** Ends of a length and the places between where the web bends. */
  private DoubleStream corners(double from, double to) {
    return DoubleStream.concat(DoubleStream.of(from, to), stations.stream().mapToDouble(Station::x)
        .filter(at -> at > from && at < to));
  }

  private double out(double at, double x, double slope) {
    return at(at).spacing() / 2 - slope * (at - x);
  }

  /** Thickness of a rail from its inner to its outer face, mm. */
  public double thickness() {
    return params.form() == RailForm.BOX ? params.flange() : params.web();
  }

  /** The section at a place as a rail of the shelf, called {@code truck-} and its place. */
  public Rail section(double x) {
    Station here = at(x);
    return new Rail(String.format(Locale.ROOT, "truck at x %.1f", x + 0.0), params.form().name().toLowerCase(Locale.ROOT),
        here.height(), params.web(), params.flange(), here.spacing());
  }

  /** Whether a place lies on the rails. */
  public boolean reach(double x) {
    return x <= params.front() && x >= params.rear();
  }
}
