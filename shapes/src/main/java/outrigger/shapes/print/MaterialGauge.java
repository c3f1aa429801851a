package outrigger.shapes.print;

import java.util.List;
import outrigger.shapes.num.Decimals;
import outrigger.shapes.print.facet.Facets;

/**
 * Reckons plastic, filament and time from volume and surface.
 *
 * <p>Outlines lie along every steep face, solid layers along every flat one; what is left inside gets the infill. The
 * share of outlines and solid layers is {@code x} = (surface times their thickness) / volume for a plate, which is
 * closed form, and {@code 1 - (1 - x/3)^3} for a cube with all sides alike, where they overlap at the edges. Most parts
 * lie between; the middle is told, and both ends are its band. Supports, brim and purging are not reckoned.
 */
final class MaterialGauge implements Gauge {
  private static final double MM3_PER_CM3 = 1000;
  /**
   * Facets whose normal lies nearer to the vertical than 45 degrees are covered by solid layers, others by outlines; those
   * at just 45 degrees too, however the part is turned: rounding to the grid leans them by less than a quarter of a degree.
   */
  private static final double STEEP = StrictMath.cos(StrictMath.toRadians(44.75));
  private static final double PERCENT = 100;
  /** How far flow and density may be off, on top: filament of +-0.05 mm is +-5.7 % of area. */
  private static final double FLOW = 0.06;
  /** Bounds of the time estimate as factors, own estimate: acceleration and travel are only in the mean speed. */
  private static final double SHORT = 0.6;
  private static final double LONG = 1.6;
  private static final double SECONDS_PER_MINUTE = 60;
  /** Less is told in hundredths, g. */
  private static final double LIGHT = 0.1;
  /** Part of a layer that is none: far more than rounding to the grid, far less than a printer can tell. */
  private static final double SLIVER = 0.01;

  @Override
  public String name() {
    return "material";
  }

  @Override
  public Reading read(Specimen s) {
    double volume = s.measures().volume();
    double skin = skin(s);
    double most = Math.min(1, skin / volume);
    double third = Math.max(0, 1 - Math.min(3, skin / volume) / 3);
    double least = Math.min(most, 1 - third * third * third);
    double infill = s.limit(Limit.INFILL) / PERCENT;
    double plastic = volume * share((least + most) / 2, infill);
    double low = volume * share(least, infill) * (1 - FLOW);
    double high = volume * share(most, infill) * (1 + FLOW);
    return Reading.of(List.of(), List.of(mass(s, plastic, low, high), filament(s, plastic), time(s, plastic)));
  }

  private static double share(double solid, double infill) {
    return solid + (1 - solid) * infill;
  }

  /** Volume of outlines and solid layers if none overlapped, mm^3. */
  private static double skin(Specimen s) {
    double outlines = s.limit(Limit.OUTLINES) * s.limit(Limit.EXTRUSION_WIDTH);
    double layers = s.limit(Limit.SOLID_LAYERS) * s.limit(Limit.LAYER);
    Facets facets = s.facets();
    double sum = 0;
    for (int f = 0; f < facets.count(); f++) {
      sum += facets.area(f) * (Math.abs(facets.normal(f, 2)) > STEEP ? layers : outlines);
    }
    return sum;
  }

  private static Fact mass(Specimen s, double plastic, double low, double high) {
    double grams = s.limit(Limit.DENSITY) / MM3_PER_CM3;
    String with = hundredths(s.limit(Limit.DENSITY)) + " g/cm3 with " + whole(s.limit(Limit.OUTLINES)) + " outlines, "
        + whole(s.limit(Limit.SOLID_LAYERS)) + " solid layers and " + whole(s.limit(Limit.INFILL)) + " % infill";
    String words = "weighs about " + told(plastic * grams) + " g (" + told(low * grams) + " to "
        + told(high * grams) + ") at " + with;
    return new Fact("mass", plastic * grams, low * grams, high * grams, "g", words, List.of("It is printed at " + with + ".",
        "The band runs from a cube's share of outlines and solid layers to a plate's, and 6 % further for flow and density.",
        "Supports, brim and purging are left out."));
  }

  private static Fact filament(Specimen s, double plastic) {
    double d = s.limit(Limit.FILAMENT);
    double metres = plastic / (StrictMath.PI / 4 * d * d) / 1000;
    return new Fact("filament", metres, "m",
        "takes about " + hundredths(metres) + " m of " + hundredths(d) + " mm filament");
  }

  private static Fact time(Specimen s, double plastic) {
    double path = plastic / (s.limit(Limit.EXTRUSION_WIDTH) * s.limit(Limit.LAYER));
    double height = s.measures().maxZ() - s.measures().minZ();
    // A height may stand over its layers by the rounding to the grid.
    double layers = 1 + Math.max(0, Math.ceil((height - s.limit(Limit.FIRST_LAYER)) / s.limit(Limit.LAYER) - SLIVER));
    double minutes = (path / s.limit(Limit.SPEED) + layers * s.limit(Limit.LAYER_PAUSE)) / SECONDS_PER_MINUTE;
    String from = whole(s.limit(Limit.SPEED)) + " mm/s on the mean and " + whole(s.limit(Limit.LAYER_PAUSE)) + " s a layer";
    return new Fact("time", minutes, SHORT * minutes, LONG * minutes, "min", "prints in about " + whole(minutes) + " min ("
        + whole(SHORT * minutes) + " to " + whole(LONG * minutes) + "; an estimate from " + from
        + ", not checked against a printed part)", List.of("It is printed at " + from + ", travel included.",
        "The band, 0.6 to 1.6 times, is an own estimate; no printed part was timed.",
        "Heating, supports, brim and purging are left out."));
  }

  private static String whole(double value) {
    return Decimals.fixed(value, 0);
  }

  /** A mass in tenths; what would be nothing so, in hundredths. */
  private static String told(double mass) {
    return Decimals.fixed(mass, mass < LIGHT ? 2 : 1);
  }

  private static String hundredths(double value) {
    return Decimals.fixed(value, 2);
  }
}
