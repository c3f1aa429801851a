package outrigger.generator.accessory.feature;

import java.util.List;
import outrigger.generator.accessory.BadDimension;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.Refused;
import outrigger.presets.Printer;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Text engraved in a face, as large as its area allows.
 *
 * @param text what it says
 * @param capital height of the capitals, mm
 * @param stroke width of the engraved line, mm
 * @param profile the engraved lines, centred on the origin, read from +Z
 */
public record Label(String text, double capital, double stroke, Profile profile) {
  /** Depth that reads well and costs no strength, mm; common practice. */
  public static final double DEPTH = 0.4;
  /** Narrowest engraved line that comes out, mm; common practice. */
  private static final double NARROWEST = 0.4;
  /** Widest line needed, mm; common practice. */
  private static final double WIDEST = 0.8;
  /** Tallest capitals a label gets, mm: beyond that it is a sign, not a mark. */
  private static final double TALLEST = 6;
  /** Least height of the alphabet's capitals, in strokes. */
  private static final double FEWEST_STROKES = 4;
  /** Stroke widths tried, in beads: two read best (common practice), one still comes out. */
  private static final List<Double> BEADS = List.of(2.0, 1.75, 1.5, 1.25, 1.0);

  /**
   * The largest label that fits an area.
   *
   * @param width of the area, along the text, mm
   * @param height of the area, mm
   * @param key parameter to name in a refusal
   * @throws BadDimension where the text does not fit at the smallest size that prints, or has a letter that the
   *     stroke alphabet has not
   */
  public static Label fit(String text, double width, double height, Printer printer, String key) {
    double bead = printer.extrusionWidth();
    for (double beads : BEADS) {
      double stroke = Math.min(WIDEST, Math.max(NARROWEST, beads * bead));
      double smallest = smallestCapital(stroke, bead);
      double capital = largestCapital(text, stroke, smallest, width, height, key);
      if (capital >= smallest) {
        return new Label(text, capital, stroke, centred(text, capital, stroke, key));
      }
    }
    double stroke = Math.max(NARROWEST, bead);
    Profile least = centred(text, smallestCapital(stroke, bead), stroke, key);
    throw new BadDimension(key, "the label \"" + text + "\" takes at least " + Words.mm(least.maxX() - least.minX())
        + " x " + Words.mm(least.maxY() - least.minY()) + ", but there is room for " + Words.mm(Math.max(0, width))
        + " x " + Words.mm(Math.max(0, height)), "Shorten the label, leave it out, or make the part larger.");
  }

  /** What to cut from a face looking up. */
  public Solid engraveTop(double top, double depth) {
    return Prism.of(profile, top - depth, top + ScrewHole.OVERSHOOT);
  }

  /** What to cut from a face looking down, mirrored so that it reads from below. */
  public Solid engraveBottom(double bottom, double depth) {
    return Prism.of(profile.mirrorX(), bottom - ScrewHole.OVERSHOOT, bottom + depth);
  }

  /** The same label with its middle elsewhere. */
  public Label move(double x, double y) {
    return new Label(text, capital, stroke, profile.move(x, y));
  }

  /** The same label turned about its middle's origin, degrees counter-clockwise. */
  public Label turn(double degrees) {
    return new Label(text, capital, stroke, profile.turn(degrees));
  }

  /** Three lines and two gaps of one bead stand above each other in E and B; the alphabet wants four strokes anyway. */
  private static double smallestCapital(double stroke, double bead) {
    return Math.max(2 * stroke + 2 * bead, FEWEST_STROKES * stroke);
  }

  /** Largest capitals that fit, in steps of 0.05 mm; width and height grow in proportion to the capitals. */
  private static double largestCapital(String text, double stroke, double smallest, double width, double height,
      String key) {
    double trial = 10;
    Profile at = drawn(text, trial, stroke, key);
    double perWidth = (at.maxX() - at.minX() - stroke) / trial;
    double perHeight = (at.maxY() - at.minY() - stroke) / trial;
    double fit = Math.min(TALLEST, Math.min((width - stroke) / perWidth, (height - stroke) / perHeight));
    double capital = Math.floor(fit * 20) / 20;
    while (capital >= smallest && !fits(drawn(text, capital, stroke, key), width, height)) {
      capital -= 0.05;
    }
    return capital;
  }

  private static boolean fits(Profile drawn, double width, double height) {
    return drawn.maxX() - drawn.minX() <= width && drawn.maxY() - drawn.minY() <= height;
  }

  private static Profile centred(String text, double capital, double stroke, String key) {
    Profile drawn = drawn(text, capital, stroke, key);
    return drawn.move(-(drawn.minX() + drawn.maxX()) / 2, -(drawn.minY() + drawn.maxY()) / 2);
  }

  private static Profile drawn(String text, double capital, double stroke, String key) {
    try {
      return Profile.text(text, capital, stroke);
    } catch (ShapeException e) {
      Refused refused = Refused.by(e);
      throw new BadDimension(key, "the label \"" + text + "\" cannot be engraved: " + refused.what(),
          refused.advice());
    }
  }
}
