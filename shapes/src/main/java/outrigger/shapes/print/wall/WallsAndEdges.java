package outrigger.shapes.print.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import outrigger.shapes.print.place.NarrowPlace;
import outrigger.shapes.print.place.NarrowPlaces;
import outrigger.shapes.print.spot.Spot;

/** Parts even walls from the edges that they run out to, so that neither hides the other. */
final class WallsAndEdges {
  /** A wall is even whose widest part is so many times as wide as its narrowest: own choice. */
  private static final double EVEN = 1.25;
  /** An edge beside it is so many times as thin somewhere: own choice. */
  private static final double TAPER = 2;

  private final double wall;
  private final List<Spot> walls = new ArrayList<>();

  private WallsAndEdges(double wall) {
    this.wall = wall;
  }

  /**
   * The places, edges without the walls beside them, and after them these walls.
   *
   * @param wall thinnest wall to rely on, mm
   * @param grouped puts the spots of walls together into places
   */
  static List<NarrowPlace> parted(List<NarrowPlace> places, double wall, Function<List<Spot>, List<NarrowPlace>> grouped) {
    WallsAndEdges parting = new WallsAndEdges(wall);
    List<NarrowPlace> all = new ArrayList<>();
    places.forEach(place -> all.add(parting.edge(place)));
    for (NarrowPlace place : grouped.apply(parting.walls)) {
      NarrowPlace found = parting.runsOut(place) ? NarrowPlaces.asSampled(place) : place;
      if (!parting.runsOut(found)) {
        all.add(found);
      }
    }
    return all;
  }

  private boolean runsOut(NarrowPlace place) {
    return place.isSharp(wall) || place.runsOut(wall);
  }

  /** A place without the even wall that it runs out from, if there is one. */
  private NarrowPlace edge(NarrowPlace place) {
    double least = runsOut(place) || place.mayRunOut(wall) ? evenWidth(place.spots()) : 0;
    if (!(least < wall && least > TAPER * place.narrowest().width())) {
      return place;
    }
    place.spots().stream().filter(spot -> spot.width() >= least).forEach(walls::add);
    return place.without(least);
  }

  /** The least width from which on there is an even wall as large as a wall's square; infinite if there is none. */
  private double evenWidth(List<Spot> spots) {
    List<Spot> even = spots.stream().filter(Spot::isEven).sorted(Spot.ORDER).toList();
    double area = 0;
    int next = 0;
    for (Spot from : even) {
      while (next < even.size() && even.get(next).width() <= EVEN * from.width()) {
        area += even.get(next++).area();
      }
      if (area >= wall * wall) {
        return from.width() - Widths.ROUNDING;
      }
      area -= from.area();
    }
    return Double.POSITIVE_INFINITY;
  }
}
