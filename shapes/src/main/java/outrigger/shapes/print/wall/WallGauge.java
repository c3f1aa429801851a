package outrigger.shapes.print.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.place.Descent;
import outrigger.shapes.print.place.FineAreas;
import outrigger.shapes.print.place.NarrowPlace;
import outrigger.shapes.print.place.NarrowPlaces;
import outrigger.shapes.print.spot.BallField;
import outrigger.shapes.print.spot.InnerEdges;
import outrigger.shapes.print.spot.InnerTips;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.spot.Spot;

/**
 * How thick the solid is everywhere: walls, ribs, raised strokes and pins too thin to print.
 *
 * <p>Thickness is the diameter of the ball held between opposite faces ({@code BallProbe}). No wall hides inside a large
 * facet: samples of it lie no more than 0.6 of the thinnest wall allowed from any of its points ({@code FacetSamples}).
 * Even a spot that nothing but one tip makes thin, as under a drilled hole, is found from a fifth of that wall upward: the
 * first ball at the nearest sample is no wider than (0.6^2 + 0.2^2) / 0.2 = 2 walls, so it rests on the tip, and the point
 * straight before the tip is measured then. Facets much smaller than that share samples, run by run.
 */
public final class WallGauge implements Gauge {
  /** Balls out of corners grow to so many times the thinnest wall. */
  private static final double ENOUGH = 1.05;
  /** Thicker walls show alike on the map, and so do spots where no ball is held. */
  private static final double SHOWN = 2;
  /** The first balls are so many times as wide as the thinnest wall, to rest on tips beside the samples. */
  private static final double MOST = 2;
  /** Thicker walls than so many times the thinnest are not told apart. */
  private static final double TOLD = 8;

  @Override
  public String name() {
    return "wall-thickness";
  }

  @Override
  public Reading read(Specimen specimen) {
    double wall = specimen.limit(Limit.WALL);
    double bound = Stream.of(Limit.WALL, Limit.LEAST_WALL, Limit.FLOOR, Limit.STROKE).mapToDouble(specimen::limit).max()
        .orElseThrow();
    double spacing = Widths.spacing(specimen);
    Reach reach = new Reach(true, bound, ENOUGH * bound, MOST * bound,
        (specimen.isMapped() ? SHOWN : ENOUGH) * bound, spacing, specimen.isMapped());
    BallField field = BallField.of(specimen, reach);
    List<Spot> edges = new ArrayList<>(InnerEdges.narrow(specimen, reach, field.regions()));
    edges.addAll(InnerTips.narrow(specimen, reach));
    field.show(edges);
    List<Spot> narrow = new ArrayList<>(field.narrow());
    narrow.addAll(edges);
    List<NarrowPlace> places = places(specimen, reach, narrow, field.rims());
    Optional<Spot> thinnest = places.isEmpty() ? Thinnest.of(specimen.facetTree(),
        new Reach(true, bound, TOLD * bound, TOLD * bound, TOLD * bound, spacing, false), specimen.measures().area())
        : places.stream().filter(place -> !place.isSharp(wall)).findFirst().map(NarrowPlace::narrowest);
    if (places.isEmpty()) {
      thinnest.filter(spot -> Widths.isBelow(spot.width(), wall)).map(NarrowPlace::at).ifPresent(places::add);
    }
    WallConcerns judge = new WallConcerns(specimen);
    List<Concern> concerns = new ArrayList<>();
    places.forEach(place -> judge.concern(place).ifPresent(concerns::add));
    Optional<Concern> whole = judge.whole();
    if (concerns.stream().noneMatch(concern -> concern.severity() == Severity.ERROR)) {
      whole.ifPresent(concerns::add);
    }
    List<String> left = new ArrayList<>();
    Widths.coarse(specimen).ifPresent(left::add);
    List<Fact> facts = new ArrayList<>();
    facts.add(thinnest.map(WallGauge::fact).or(() -> whole.map(all -> new Fact("thinnest-wall", all.measured(), "mm",
        "all of it is thinner than a wall"))).orElseGet(() -> new Fact("walls-above", wall, "mm", "no wall is thinner than "
        + Widths.hundredths(wall) + " mm" + (places.isEmpty() ? "" : ", but for tips and sharp edges"))));
    judge.specks(places).ifPresent(facts::add);
    double[] shown = Arrays.stream(field.least()).map(w -> Math.min(w, SHOWN * bound)).toArray();
    return new Reading(Widths.listed(concerns, left), facts,
        List.of(new FacetField("wall-thickness", "mm", wall, true, shown).withPlaces(field.places(), SHOWN * bound)),
        left);
  }

  /** The places that narrow spots form, edges without the walls beside them, and after them these walls. */
  private static List<NarrowPlace> places(Specimen specimen, Reach reach, List<Spot> narrow, List<Spot> rims) {
    double wall = specimen.limit(Limit.WALL);
    double least = Math.min(Widths.leastArea(reach.bound()), specimen.measures().area() / 4);
    double link = 2 * Math.max(reach.spacing(), reach.bound() / 2);
    Descent descent = new Descent(specimen.facetTree(), reach);
    List<NarrowPlace> coarse = NarrowPlaces.of(narrow, rims, link, least, descent);
    List<NarrowPlace> fine = new FineAreas(specimen.facetTree(), reach).of(coarse, coarse, reach.bound());
    return WallsAndEdges.parted(fine, wall, spots -> NarrowPlaces.of(spots, rims, link, wall * wall, descent));
  }

  private static Fact fact(Spot thinnest) {
    return new Fact("thinnest-wall", thinnest.width(), "mm",
        "thinnest wall " + Widths.hundredths(thinnest.width()) + " mm " + Widths.at(thinnest.ball().middle()));
  }
}
