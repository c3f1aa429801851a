package outrigger.generator.accessory.feature;

import java.util.List;
import java.util.Optional;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;
import outrigger.shapes.num.Axis;
import outrigger.shapes.solid.Solid;

/**
 * The pole mark, and under it a line of text, engraved in an upright face that looks towards +Y; mm. The pole reads
 * upright; the text reads upright or up the face, whichever comes out larger.
 *
 * @param y of the face
 * @param width of the face between its rounded corners, its middle at x = 0
 * @param bottom z of the face's lower edge
 * @param top z of its upper edge
 */
public record PoleMark(double y, double width, double bottom, double top) {
  /** A pole mark taller than this reads no better, mm. */
  private static final double TALLEST_POLE = 5;
  /** Share of the height the pole gets where both marks must share a low face. */
  private static final double POLE_SHARE = 0.45;

  /**
   * What to cut for the marks asked for: above each other, or in one line where the face is too low for that.
   *
   * @param pole what the mark says
   * @param text the line under it; empty for none
   * @throws BadDimension naming {@code pole} or {@code label} where the face is too small
   */
  public List<Solid> cutters(Pole pole, Optional<String> text, Printer printer) {
    double margin = printer.minimumWall();
    double ceiling = top - margin;
    double room = ceiling - bottom - margin;
    if (text.isEmpty()) {
      return pole == Pole.NONE ? List.of()
          : List.of(hung(Label.fit(pole.name(), width, Math.min(TALLEST_POLE, room), printer, "pole"), ceiling));
    }
    if (pole == Pole.NONE) {
      return List.of(hung(Label.larger(text.get(), width, room, printer), ceiling));
    }
    try {
      return stacked(pole.name(), text.get(), ceiling, room, printer);
    } catch (BadDimension tooLow) {
      // Upright only: an N that lies on its side reads as a Z.
      return List.of(hung(Label.fit(pole.name() + " " + text.get(), width, room, printer, "label"), ceiling));
    }
  }

  private List<Solid> stacked(String pole, String text, double ceiling, double room, Printer printer) {
    Label mark = Label.fit(pole, width, Math.min(TALLEST_POLE, room * POLE_SHARE), printer, "pole");
    double used = tall(mark) + printer.minimumWall();
    Label line = Label.larger(text, width, room - used, printer);
    return List.of(hung(mark, ceiling), hung(line, ceiling - used));
  }

  /** The label as a cutter, its upper edge at a height. */
  private Solid hung(Label label, double ceiling) {
    return label.engraveTop(y, Label.DEPTH).turn(Axis.X, 90).turn(Axis.Z, 180).move(0, 0, ceiling - tall(label) / 2);
  }

  private static double tall(Label label) {
    return label.profile().maxY() - label.profile().minY();
  }
}
