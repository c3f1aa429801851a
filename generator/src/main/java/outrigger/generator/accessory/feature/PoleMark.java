package outrigger.generator.accessory.feature;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.BadDimension;
import outrigger.presets.Printer;
import outrigger.shapes.num.Axis;
import outrigger.shapes.solid.Solid;

/**
 * The pole mark, and under it a line of text, engraved in an upright face that looks towards +Y; mm. The pole reads
 * upright; the text reads upright or up the face, whichever comes out larger.
 *
 * @param y of the face
 * @param width of the face, its middle at x = 0
 * @param bottom z of the face's lower edge
 * @param top z of its upper edge
 */
public record PoleMark(double y, double width, double bottom, double top) {
  /** Plain face left round each mark, mm; common practice. */
  private static final double MARGIN = 0.6;
  /** A pole mark taller than this reads no better, mm. */
  private static final double TALLEST_POLE = 5;
  /** Share of the height the pole gets where both marks must share a low face. */
  private static final double POLE_SHARE = 0.45;

  /**
   * What to cut for the marks asked for.
   *
   * @param pole what the mark says
   * @param text the line under it; empty for none
   * @throws BadDimension naming {@code pole} or {@code label} where the face is too small
   */
  public List<Solid> cutters(Pole pole, Optional<String> text, Printer printer) {
    List<Solid> cutters = new ArrayList<>();
    double room = top - bottom - 2 * MARGIN;
    double ceiling = top - MARGIN;
    double across = width - 2 * MARGIN;
    if (pole != Pole.NONE) {
      double share = Math.min(TALLEST_POLE, text.isPresent() ? room * POLE_SHARE : room);
      Label mark = Label.fit(pole.name(), across, share, printer, "pole");
      double tall = mark.profile().maxY() - mark.profile().minY();
      cutters.add(engrave(mark, ceiling - tall / 2));
      ceiling -= tall + MARGIN;
    }
    if (text.isPresent()) {
      double height = ceiling - bottom - MARGIN;
      Label line = larger(text.get(), across, height, printer);
      cutters.add(engrave(line, ceiling - (line.profile().maxY() - line.profile().minY()) / 2));
    }
    return cutters;
  }

  private static Label larger(String text, double width, double height, Printer printer) {
    Optional<Label> upright = tryFit(text, width, height, printer);
    Optional<Label> climbing = tryFit(text, height, width, printer).map(label -> label.turn(90));
    if (upright.isEmpty() && climbing.isEmpty()) {
      return Label.fit(text, width, height, printer, "label");
    }
    if (upright.isEmpty() || climbing.isEmpty()) {
      return upright.or(() -> climbing).orElseThrow();
    }
    return climbing.get().capital() > upright.get().capital() ? climbing.get() : upright.get();
  }

  private static Optional<Label> tryFit(String text, double width, double height, Printer printer) {
    try {
      return Optional.of(Label.fit(text, width, height, printer, "label"));
    } catch (BadDimension tooSmall) {
      return Optional.empty();
    }
  }

  private Solid engrave(Label label, double z) {
    return label.engraveTop(y, Label.DEPTH).turn(Axis.X, 90).turn(Axis.Z, 180).move(0, 0, z);
  }
}
