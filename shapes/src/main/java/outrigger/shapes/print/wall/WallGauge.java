package outrigger.shapes.print.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.place.Descent;
import outrigger.shapes.print.place.FineAreas;
import outrigger.shapes.print.place.NarrowPlace;
import outrigger.shapes.print.place.NarrowPlaces;
import outrigger.shapes.print.spot.BallField;
import outrigger.shapes.print.spot.InnerEdges;
import outrigger.shapes.print.spot.InnerTips;
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
  /** Lengths that would be told as nothing are put in words, mm. */
  private static final double TOLD_FROM = 0.005;
  /** So many times as much surface is worth a second number. */
  private static final double MORE = 1.1;
  /** A ridge of less surface than this part of the thinnest wall's square is a speck. */
  private static final double SPECK = 0.5;
  /** Places of less surface than this part of the thinnest wall's square are dropped. */
  private static final double LEAST_AREA = 0.06;

  @Override
  public String name() {
    return "wall-thickness";
  }

  @Override
  public Reading read(Specimen specimen) {
    double wall = specimen.limit(Limit.WALL);
    double bound = Math.max(wall, Math.max(specimen.limit(Limit.LINE), specimen.limit(Limit.STROKE)));
    double spacing = Widths.spacing(specimen);
    BallField.Reach reach = new BallField.Reach(true, bound, ENOUGH * bound, MOST * bound,
        (specimen.isMapped() ? SHOWN : ENOUGH) * bound, spacing, specimen.isMapped());
    BallField field = BallField.of(specimen, reach);
    Descent descent = new Descent(specimen.facetTree(), reach);
    List<Spot> edges = new ArrayList<>(InnerEdges.narrow(specimen, reach, field.regions()));
    edges.addAll(InnerTips.narrow(specimen, reach));
    field.show(edges);
    List<Spot> narrow = new ArrayList<>(field.narrow());
    narrow.addAll(edges);
    double least = Math.min(LEAST_AREA * bound * bound, specimen.measures().area() / 4);
    double link = 2 * Math.max(spacing, bound / 2);
    List<NarrowPlace> coarse = NarrowPlaces.of(narrow, field.rims(), link, least, descent);
    List<NarrowPlace> fine = new FineAreas(specimen.facetTree(), reach).of(coarse, coarse, bound);
    List<NarrowPlace> places = WallsAndEdges.parted(fine, wall,
        spots -> NarrowPlaces.of(spots, field.rims(), link, wall * wall, descent));
    BallField.Reach far = new BallField.Reach(true, bound, TOLD * bound, TOLD * bound, TOLD * bound, spacing);
    Optional<Spot> thinnest = places.isEmpty()
        ? Thinnest.of(specimen.facetTree(), far, specimen.measures().area())
        : places.stream().filter(place -> !place.isSharp(wall)).findFirst().map(NarrowPlace::narrowest);
    if (places.isEmpty()) {
      thinnest.filter(spot -> Widths.isBelow(spot.width(), wall)).map(NarrowPlace::at).ifPresent(places::add);
    }
    List<Concern> concerns = new ArrayList<>();
    places.forEach(place -> concern(specimen, place).ifPresent(concerns::add));
    List<String> left = new ArrayList<>();
    Widths.coarse(specimen).ifPresent(left::add);
    List<Fact> facts = new ArrayList<>();
    facts.add(thinnest.map(WallGauge::fact).orElseGet(() -> new Fact("walls-above", wall, "mm",
        "no wall is thinner than " + Widths.mm(wall) + " mm" + (places.isEmpty() ? "" : ", but for tips and sharp edges"))));
    specks(specimen, places).ifPresent(facts::add);
    double[] shown = Arrays.stream(field.least()).map(w -> Math.min(w, SHOWN * bound)).toArray();
    return new Reading(Widths.listed(concerns, left), facts,
        List.of(new FacetField("wall-thickness", "mm", wall, true, shown).withPlaces(field.places(), SHOWN * bound)),
        left);
  }

  private static Fact fact(Spot thinnest) {
    Vec at = thinnest.ball().middle();
    return new Fact("thinnest-wall", thinnest.width(), "mm", "thinnest wall " + Widths.mm(thinnest.width()) + " mm at ("
        + Widths.mm(at.x()) + ", " + Widths.mm(at.y()) + ", " + Widths.mm(at.z()) + ") mm");
  }

  private static Optional<Concern> concern(Specimen specimen, NarrowPlace place) {
    double wall = specimen.limit(Limit.WALL);
    if (place.isBetweenEdges()) {
      return neck(specimen, place);
    }
    // of a neck a little may be held by faces too
    Optional<Concern> neck = place.area(wall) < wall * wall ? place.onEdges().flatMap(edges -> neck(specimen, edges))
        : Optional.empty();
    if (neck.isPresent() && place.form() != NarrowPlace.Form.STRIP && (place.onEdges().orElseThrow().length() >= wall
        || place.area(specimen.limit(Limit.LINE)) < Widths.TOLD_AREA)) {
      return neck;
    }
    if (place.isSharp(wall)) {
      return place.isTip(wall) ? Optional.empty() : Optional.of(sharp(specimen, place, Severity.CAUTION, Limit.WALL));
    }
    if (place.runsOut(wall)) {
      return Optional.of(sharp(specimen, place, Severity.ERROR, Limit.LINE));
    }
    double width = place.narrowest().width();
    boolean isWall = place.form() == NarrowPlace.Form.SHEET || place.form() == NarrowPlace.Form.LUMP;
    Limit line = isWall ? Limit.LINE : Limit.STROKE;
    double least = specimen.limit(line);
    if (Widths.isBelow(width, least)) {
      boolean isSmall = place.form() == NarrowPlace.Form.STRIP && place.area(least) < wall * wall;
      return isSpeck(specimen, place) ? Optional.empty()
          : Optional.of(told(specimen, place, isSmall ? Severity.CAUTION : Severity.ERROR, line));
    }
    // raised text, low ribs, and webs no larger than a wall is thick carry nothing: one line will do for them
    boolean carries = place.form() != NarrowPlace.Form.STRIP && place.area(wall) >= wall * wall;
    return carries && Widths.isBelow(width, wall) ? Optional.of(told(specimen, place, Severity.CAUTION, Limit.WALL)) : neck;
  }

  /** What inner edges leave between them carries like a wall where it is long or all that is there, else like a rib. */
  private static Optional<Concern> neck(Specimen specimen, NarrowPlace place) {
    boolean carries = place.form() == NarrowPlace.Form.NECK || place.length() >= specimen.limit(Limit.WALL);
    Limit line = carries ? Limit.LINE : Limit.STROKE;
    if (Widths.isBelow(place.narrowest().width(), specimen.limit(line))) {
      return Optional.of(told(specimen, place, carries ? Severity.ERROR : Severity.CAUTION, line));
    }
    return carries && Widths.isBelow(place.narrowest().width(), specimen.limit(Limit.WALL))
        ? Optional.of(told(specimen, place, Severity.CAUTION, Limit.WALL)) : Optional.empty();
  }

  /** Whether it is a ridge between engraved strokes so small that nobody misses it: told, but no concern. */
  private static boolean isSpeck(Specimen specimen, NarrowPlace place) {
    double wall = specimen.limit(Limit.WALL);
    double least = specimen.limit(Limit.STROKE);
    return !place.isSharp(wall) && !place.runsOut(wall) && place.form() == NarrowPlace.Form.STRIP
        && Widths.isBelow(place.narrowest().width(), least) && place.area(least) < SPECK * wall * wall;
  }

  private static Optional<Fact> specks(Specimen specimen, List<NarrowPlace> places) {
    double least = specimen.limit(Limit.STROKE);
    List<NarrowPlace> specks = places.stream().filter(place -> isSpeck(specimen, place)).toList();
    return specks.stream().max(Comparator.comparingDouble(place -> place.area(least))).map(largest -> {
      Vec at = largest.narrowest().ball().middle();
      return new Fact("specks", specks.size(), "places", (specks.size() == 1 ? "1 speck" : specks.size() + " specks")
          + " between strokes cut close together, thinner than one printed line of " + Widths.mm(least)
          + " mm, may be missing; the largest, at (" + Widths.mm(at.x()) + ", " + Widths.mm(at.y()) + ", " + Widths.mm(at.z())
          + ") mm, has " + Widths.mm(largest.area(least)) + " mm2 of surface");
    });
  }

  /** A sharp edge: a caution where little is lost, an error where a long way of it is thinner than a line. */
  private static Concern sharp(Specimen specimen, NarrowPlace place, Severity severity, Limit limit) {
    double bound = specimen.limit(limit);
    double wall = specimen.limit(Limit.WALL);
    Vec at = place.narrowest().ball().middle();
    NarrowPlace thin = place.below(bound);
    String over = " mm "
        + (thin.breadth() < TOLD_FROM ? "at its very end" : "over its last " + Widths.mm(thin.breadth()) + " mm");
    return new Concern("thin-edge", severity, at.x(), at.y(), at.z(), place.narrowest().width(), bound, limit,
        thin.area(bound), severity == Severity.ERROR
            ? "the part runs out to a sharp edge, thinner than one printed line of " + Widths.mm(bound) + over
                + ": that much of it will be missing"
            : "the part runs out to a sharp edge, thinner than " + Widths.mm(bound) + over
                + ": it will come out ragged or shorter",
        "Cut the edge off where it is " + Widths.mm(wall) + " mm thick, or make it blunter than 25 degrees.");
  }

  private static String fate(Severity severity, Limit limit, String bound, String over) {
    if (limit == Limit.WALL) {
      return "thinner than the " + bound + " to rely on" + over + ": it may come out weak or with holes";
    }
    return "thinner than one printed line of " + bound + over + ": it "
        + (severity == Severity.ERROR ? "will be missing or come out thicker" : "is small and may be missing");
  }

  /** Of a wall that is thinner than a line in part, how much of it is too thin to rely on in all. */
  private static String rest(Specimen specimen, NarrowPlace place, Limit limit) {
    double wall = specimen.limit(Limit.WALL);
    double all = place.area(wall);
    return limit == Limit.LINE && all > MORE * place.area(specimen.limit(limit)) && all >= wall * wall
        ? ", and than the " + Widths.mm(wall) + " mm to rely on over " + Words.number(all, 1) + " mm2" : "";
  }

  private static Concern told(Specimen specimen, NarrowPlace place, Severity severity, Limit limit) {
    double bound = specimen.limit(limit);
    Vec at = place.narrowest().ball().middle();
    double width = place.narrowest().width();
    String what = switch (place.form()) {
      case ROUND -> "pin";
      case STRIP -> "rib or stroke";
      case SHEET, LUMP -> "wall";
      case NOTCH, NECK -> "neck between inner corners";
    };
    String message = "the " + what + " is " + Widths.mm(width) + " mm thick, "
        + fate(severity, limit, Widths.mm(bound) + " mm", Widths.over(place, bound) + rest(specimen, place, limit));
    String advice = "Make it " + Widths.mm(specimen.limit(limit == Limit.STROKE ? Limit.STROKE : Limit.WALL))
        + " mm or thicker, or print with a finer nozzle.";
    return new Concern("thin-" + what.split(" ")[0], severity, at.x(), at.y(), at.z(), width, bound, limit,
        place.area(bound), message, advice);
  }
}
