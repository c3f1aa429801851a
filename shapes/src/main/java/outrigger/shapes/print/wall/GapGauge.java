package outrigger.shapes.print.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.place.Descent;
import outrigger.shapes.print.place.FineAreas;
import outrigger.shapes.print.place.NarrowPlace;
import outrigger.shapes.print.place.NarrowPlaces;
import outrigger.shapes.print.spot.BallField;
import outrigger.shapes.print.spot.InnerEdges;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.spot.Spot;

/**
 * How wide the air before the surface is everywhere: slots and engraved strokes that close up, holes to be drilled.
 *
 * <p>Measured as {@link WallGauge} measures the solid, with balls that rest on the outside; no farther than the smallest
 * hole to rely on, so open air costs little. Between two outer corners no face stands before another: there the balls rest
 * on the edges ({@link InnerEdges}).
 */
public final class GapGauge implements Gauge {
  /** Narrower gaps would be told as 0.00 mm wide. */
  private static final double NOTHING = 0.005;
  /** Balls with their middles so many spacings apart belong together. */
  private static final double LINK = 2;
  /** The same for holes, whose middles lie on a line; by more, holes beside each other would be one place of no form. */
  private static final double LINK_HOLE = 1.5;

  @Override
  public String name() {
    return "gaps";
  }

  @Override
  public Reading read(Specimen specimen) {
    double gap = specimen.limit(Limit.GAP);
    double most = Math.max(gap, specimen.limit(Limit.HOLE));
    if (most <= 0) {
      return new Reading(List.of(), List.of(), List.of(),
          List.of("Gaps and small holes were not measured: both limits are 0."));
    }
    double spacing = Widths.spacing(specimen);
    Reach reach = Reach.upTo(most, false, spacing, specimen.isMapped());
    BallField field = BallField.of(specimen, reach);
    Descent descent = new Descent(specimen.facetTree(), reach);
    FineAreas areas = new FineAreas(specimen.facetTree(), reach);
    List<Concern> concerns = new ArrayList<>();
    List<NarrowPlace> holes = places(field.narrow(), field.rims(), most, LINK_HOLE * spacing, descent);
    areas.of(holes.stream().filter(p -> p.form() == NarrowPlace.Form.ROUND).toList(), holes, most)
        .forEach(p -> concerns.add(hole(specimen, p)));
    List<Spot> closing = new ArrayList<>(
        InnerEdges.narrow(specimen, Reach.upTo(gap, false, spacing, false), field.regions()));
    closing.addAll(field.narrow());
    closing.removeIf(s -> !Widths.isBelow(s.width(), gap));
    List<Spot> beside = field.narrow().stream()
        .filter(s -> !Widths.isBelow(s.width(), gap) && s.reachesBelow(gap)).toList();
    List<NarrowPlace> gaps = places(closing, beside, gap, LINK * spacing, descent);
    areas.of(gaps.stream().filter(p -> p.form() != NarrowPlace.Form.ROUND && !p.isSharp(gap)).toList(), gaps, gap)
        .forEach(p -> concerns.add(gap(specimen, p)));
    List<String> left = new ArrayList<>();
    double[] shown = Arrays.stream(field.least()).map(w -> w < most ? w : Double.NaN).toArray();
    List<Concern> sorted = concerns.stream().sorted(Comparator.comparingDouble(Concern::measured)).toList();
    return new Reading(Widths.listed(sorted, left), List.of(),
        List.of(new FacetField("gap-width", "mm", gap, true, shown).withPlaces(field.places(), Double.NaN)), left);
  }

  private static List<NarrowPlace> places(List<Spot> spots, List<Spot> rims, double bound, double link, Descent descent) {
    return NarrowPlaces.of(spots, rims, link, Widths.leastArea(bound), descent);
  }

  private static Concern hole(Specimen specimen, NarrowPlace place) {
    double bound = specimen.limit(Limit.HOLE);
    return concern("small-hole", place, bound, Limit.HOLE, "the hole is " + Widths.hundredths(place.narrowest().width())
        + " mm wide, less than the " + Widths.hundredths(bound) + " mm that print open and true"
        + Widths.over(place.area(bound)),
        "Drill it to size after printing, or make it wider.");
  }

  private static Concern gap(Specimen specimen, NarrowPlace place) {
    double bound = specimen.limit(Limit.GAP);
    String what = place.form() == NarrowPlace.Form.STRIP ? "groove" : "gap";
    String wide = place.narrowest().width() < NOTHING ? " runs out to nothing" : " is "
        + Widths.hundredths(place.narrowest().width()) + " mm wide";
    return concern("narrow-" + what, place, bound, Limit.GAP, "the " + what + wide + ", narrower than one printed line of "
        + Widths.hundredths(bound) + " mm" + Widths.over(place, bound) + ": it will close up",
        "Make it " + Widths.hundredths(bound) + " mm or wider, or join the two sides.");
  }

  private static Concern concern(String rule, NarrowPlace place, double bound, Limit limit, String message,
      String advice) {
    Vec at = place.narrowest().ball().middle();
    return new Concern(rule, Severity.CAUTION, at.x(), at.y(), at.z(), place.narrowest().width(), bound, limit,
        place.area(bound), message, advice);
  }
}
