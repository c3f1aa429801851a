package outrigger.generator.accessory.feature;

import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
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
  /** Thickness of a ridge between bars in beads: rounded corners take some of it. */
  private static final double RIDGE = 1.2;
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
    try {
      return fitted(text, width, height, printer, key);
    } catch (ShapeException e) {
      Refused refused = Refused.by(e);
      throw new BadDimension(key, "the label \"" + text + "\" cannot be engraved: " + refused.what(),
          refused.advice());
    }
  }

  /**
   * The largest label that fits an area, upright or climbing, read from the right; refused as {@link #fit} does.
   *
   * @param width of the area, mm
   * @param height of the area, mm
   */
  public static Label larger(String text, double width, double height, Printer printer) {
    Optional<Label> upright = tryFit(text, width, height, printer);
    Optional<Label> climbing = tryFit(text, height, width, printer).map(label -> label.turn(90));
    if (upright.isEmpty() && climbing.isEmpty()) {
      return fit(text, width, height, printer, "label");
    }
    if (upright.isEmpty() || climbing.isEmpty()) {
      return upright.or(() -> climbing).orElseThrow();
    }
    return climbing.get().capital() > upright.get().capital() ? climbing.get() : upright.get();
  }

  private static Optional<Label> tryFit(String text, double width, double height, Printer printer) {
    try {
      return Optional.of(fit(text, width, height, printer, "label"));
    } catch (BadDimension tooSmall) {
      return Optional.empty();
    }
  }

  private static Label fitted(String text, double width, double height, Printer printer, String key) {
    double bead = printer.extrusionWidth();
    for (double beads : BEADS) {
      double stroke = stroke(beads * bead);
      double capital = largestCapital(text, stroke, smallestCapital(stroke, bead), width, height);
      if (capital > 0) {
        return new Label(text, capital, stroke, centred(text, capital, stroke));
      }
    }
    double stroke = stroke(bead);
    double least = smallestCapital(stroke, bead);
    throw new BadDimension(key, "the label \"" + text + "\" takes at least "
        + Words.number(Profile.textWidth(text, least, stroke)) + " x " + Words.mm(least) + ", but there is room for "
        + Words.number(Math.max(0, width)) + " x " + Words.mm(Math.max(0, height)),
        "Leave it out, or make the part larger.");
  }

  private static double stroke(double wanted) {
    return Math.min(WIDEST, Math.max(NARROWEST, wanted));
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

  /** Three bars and two ridges of a bead and more stand above each other in E and B; the lettering asks 4 strokes. */
  private static double smallestCapital(double stroke, double bead) {
    return Math.max(4 * stroke, 3 * stroke + 2 * RIDGE * bead);
  }

  /** Largest capitals that fit, to 0.05 mm, or 0 where not even the smallest do. */
  private static double largestCapital(String text, double stroke, double smallest, double width, double height) {
    for (double capital = Math.min(TALLEST, height); capital >= smallest; capital -= 0.05) {
      if (Profile.textWidth(text, capital, stroke) <= width) {
        return capital;
      }
    }
    return 0;
  }

  private static Profile centred(String text, double capital, double stroke) {
    Profile drawn = Profile.text(text, capital, stroke);
    return drawn.move(-(drawn.minX() + drawn.maxX()) / 2, -(drawn.minY() + drawn.maxY()) / 2);
  }
}
