package outrigger.shapes.print.stand;

import java.util.List;
import java.util.stream.IntStream;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.slice.FlatHull;

/** Whether a part fits the printer's room, as it lies or turned about the vertical, with its brim and without. */
final class BedFit {
  private final Specimen specimen;

  BedFit(Specimen specimen) {
    this.specimen = specimen;
  }

  void judge(List<Concern> concerns) {
    double x = specimen.measures().maxX() - specimen.measures().minX();
    double y = specimen.measures().maxY() - specimen.measures().minY();
    double tall = specimen.measures().maxZ() - specimen.bed();
    if (tall > specimen.limit(Limit.BED_Z)) {
      concerns.add(concern(Severity.ERROR, specimen.measures().maxZ(), tall, specimen.limit(Limit.BED_Z), Limit.BED_Z,
          "the part is " + Words.mm(tall) + " tall, and the printer has room for "
              + Words.mm(specimen.limit(Limit.BED_Z)),
          otherwise("Lay it down", x, y, tall) + " it, or take a taller printer."));
    }
    double brim = specimen.limit(Limit.BRIM);
    if (!fits(x, y, brim)) {
      concerns.add(tooWide(x, y, tall, brim));
    }
  }

  private Concern tooWide(double x, double y, double tall, double brim) {
    boolean bare = fits(x, y, 0);
    double turn = bare ? Double.NaN : turn(brim);
    String size = Words.mm(x) + " by " + Words.mm(y);
    String bed = Words.mm(specimen.limit(Limit.BED_X)) + " by " + Words.mm(specimen.limit(Limit.BED_Y));
    boolean alongX = x - specimen.limit(Limit.BED_X) >= y - specimen.limit(Limit.BED_Y);
    double measured = alongX ? x : y;
    Limit limit = alongX ? Limit.BED_X : Limit.BED_Y;
    if (bare) {
      return concern(Severity.CAUTION, specimen.bed(), measured, specimen.limit(limit), limit,
          "the part of " + size + " fits the bed of " + bed + ", but not with a brim of " + Words.mm(brim),
          "Print it without a brim, or with a narrower one.");
    }
    if (!Double.isNaN(turn)) {
      return concern(Severity.CAUTION, specimen.bed(), measured, specimen.limit(limit), limit,
          "the part of " + size + " does not fit the bed of " + bed + " as it lies",
          "Turn it by " + Words.number(turn, 0) + " degrees about the vertical: then it fits.");
    }
    return concern(Severity.ERROR, specimen.bed(), measured, specimen.limit(limit), limit,
        "the part of " + size + " does not fit the bed of " + bed + ", however it is turned on it",
        otherwise("Stand it up", x, y, tall) + " it, or take a larger printer.");
  }

  /** Advises to put it on another side of the box round it, where it fits on one, or to split. */
  private String otherwise(String advice, double x, double y, double tall) {
    double room = specimen.limit(Limit.BED_Z);
    return y <= room && fitsTurned(x, tall) || x <= room && fitsTurned(tall, y) ? advice + ", split" : "Split";
  }

  /** Whether a rectangle fits in some turn, without brim. */
  private boolean fitsTurned(double x, double y) {
    return IntStream.rangeClosed(0, 90).mapToDouble(StrictMath::toRadians).anyMatch(a -> fits(
        x * StrictMath.cos(a) + y * StrictMath.sin(a), x * StrictMath.sin(a) + y * StrictMath.cos(a), 0));
  }

  private boolean fits(double x, double y, double brim) {
    return x + 2 * brim <= specimen.limit(Limit.BED_X) && y + 2 * brim <= specimen.limit(Limit.BED_Y);
  }

  /** The least turn in whole degrees by which it fits, with its brim if any turn does so; not a number for none. */
  private double turn(double brim) {
    FlatHull hull = FlatHull.around(List.of(corners()));
    double bare = Double.NaN;
    for (int degrees = 1; degrees < 180; degrees++) {
      double[] sizes = hull.sizes(degrees);
      if (fits(sizes[0], sizes[1], brim)) {
        return degrees;
      }
      bare = Double.isNaN(bare) && fits(sizes[0], sizes[1], 0) ? degrees : bare;
    }
    return bare;
  }

  private double[] corners() {
    Mesh mesh = specimen.mesh();
    double[] xy = new double[2 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      xy[2 * v] = Grid.toMm(mesh.x(v));
      xy[2 * v + 1] = Grid.toMm(mesh.y(v));
    }
    return xy;
  }

  private Concern concern(Severity severity, double z, double measured, double bound, Limit limit, String message,
      String advice) {
    return new Concern("bed-fit", severity, (specimen.measures().minX() + specimen.measures().maxX()) / 2,
        (specimen.measures().minY() + specimen.measures().maxY()) / 2, z, measured, bound, limit, 0, message, advice);
  }
}
