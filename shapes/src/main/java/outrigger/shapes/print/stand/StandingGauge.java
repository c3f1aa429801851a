package outrigger.shapes.print.stand;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.layer.Layering;
import outrigger.shapes.print.slice.FlatHull;
import outrigger.shapes.print.slice.Slice;
import outrigger.shapes.print.slice.Slicer;

/**
 * Looks how a part stands: what its first layer holds on to, whether it tips or is knocked over, and whether it fits the
 * bed with a brim.
 *
 * <p>What stands on the bed is the slice through the middle of the first layer.
 */
public final class StandingGauge implements Gauge {
  /** Flat parts are not torn off: the moment of a nozzle that catches grows with height. From this height on, mm. */
  private static final double TALL = 2;
  /** What is exactly at a limit is within it, however the part is turned: rounding changes it by less than this part. */
  private static final double ROUNDING = 1e-3;

  @Override
  public String name() {
    return "standing";
  }

  @Override
  public Reading read(Specimen specimen) {
    Layering layering = Layering.of(specimen);
    Slicer slicer = specimen.slicer();
    Slice foot = slicer.at(layering.middle(0));
    List<Concern> concerns = new ArrayList<>();
    List<Fact> facts = new ArrayList<>();
    double area = foot.area();
    facts.add(new Fact("contact-area", area, "mm2", onBed(area, "first layer")));
    FlatHull hull = FlatHull.around(foot.outer());
    double tall = specimen.measures().maxZ() - specimen.bed();
    if (tall > TALL && area < specimen.limit(Limit.CONTACT) * (1 - ROUNDING)) {
      concerns.add(small(specimen, hull, area));
    }
    if (hull.isArea()) {
      stand(specimen, hull, concerns, facts);
    }
    new BedFit(specimen).judge(concerns);
    BedHoles holes = new BedHoles(specimen, slicer, foot);
    concerns.addAll(holes.concerns());
    facts.addAll(holes.facts());
    return Reading.of(concerns, facts);
  }

  /** How much lies on the bed: less than can be told in a number is a point or an edge. */
  private static String onBed(double area, String what) {
    return (area < Words.LEAST_AREA ? "a point or an edge of the " + what + " lies"
        : Words.number(area, 1) + " mm2 of the " + what + " lie") + " on the bed";
  }

  private static Concern small(Specimen specimen, FlatHull hull, double area) {
    double[] at = hull.middle();
    return new Concern("small-contact", Severity.CAUTION, at[0], at[1], specimen.bed(), area,
        specimen.limit(Limit.CONTACT), Limit.CONTACT, area,
        "only " + onBed(area, "part") + ", so it may come loose while it is printed",
        "Print it with a brim, on another face, or several of them at once joined by a thin sheet.");
  }

  private static void stand(Specimen specimen, FlatHull hull, List<Concern> concerns, List<Fact> facts) {
    double x = specimen.measures().centroidX();
    double y = specimen.measures().centroidY();
    double inside = hull.inside(x, y);
    double tall = specimen.measures().maxZ() - specimen.bed();
    double width = hull.width();
    double up = specimen.measures().centroidZ() - specimen.bed();
    double angle = StrictMath.toDegrees(StrictMath.atan2(inside, up));
    facts.add(new Fact("tipping-angle", angle, "degree", inside > 0 ? "leaned over by " + Words.degrees(angle) + " it tips"
        : "its centre of mass lies " + Words.mm(-inside) + " beyond its foot: only the bed's grip holds it"));
    if (-inside > specimen.limit(Limit.BEYOND)) {
      concerns.add(new Concern("tips-over", Severity.CAUTION, x, y, specimen.bed(), -inside,
          specimen.limit(Limit.BEYOND), Limit.BEYOND, 0,
          "the part may tip over: its centre of mass lies " + Words.mm(-inside) + " beyond what stands on the bed",
          "Print it with a brim, turn it onto another face, or widen its foot."));
    } else if (tall > specimen.limit(Limit.SLENDERNESS) * width * (1 + ROUNDING)) {
      concerns.add(new Concern("slender", Severity.CAUTION, x, y, specimen.bed(), tall / width,
          specimen.limit(Limit.SLENDERNESS), Limit.SLENDERNESS, 0,
          "the part is " + Words.mm(tall) + " tall on a foot " + Words.mm(width) + " wide and may be knocked over",
          "Print it with a brim, lying down, or with a wider foot."));
    }
  }
}
