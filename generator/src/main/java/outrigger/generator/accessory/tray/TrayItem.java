package outrigger.generator.accessory.tray;

import java.util.OptionalDouble;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Texts;
import outrigger.presets.ElectronicsItem;
import outrigger.presets.LengthText;
import outrigger.presets.Shelf;

/**
 * A thing that a tray must carry; mm.
 *
 * @param name what it is called in the layout
 * @param length of its longer side as it lies
 * @param width of its other side
 * @param height upwards
 * @param clearance room on each of its four sides and above it, for wires, plugs and swelling
 */
public record TrayItem(String name, double length, double width, double height, double clearance) {
  private static final double LONGEST = 500;

  /**
   * Reads {@code NAME:LxWxH}, {@code NAME:LxWxH+CLEARANCE} or the name of an electronics preset.
   *
   * @throws BadDimension where the text is none of them
   */
  public static TrayItem parse(String text, Shelf shelf) {
    int colon = text.indexOf(':');
    return colon < 0 ? preset(text.strip(), shelf) : sized(text.substring(0, colon).strip(),
        text.substring(colon + 1).strip());
  }

  private static TrayItem preset(String name, Shelf shelf) {
    return shelf.find(ElectronicsItem.class, name)
        .map(i -> new TrayItem(i.name(), i.length(), i.width(), i.height(), i.clearance()))
        .orElseThrow(() -> new BadDimension("items", "which is neither NAME:LxWxH nor an electronics preset ("
            + String.join(", ", shelf.names(ElectronicsItem.class)) + ")",
            "Write name, colon and sizes, such as battery:60x30x16 or battery:60x30x16+1."));
  }

  private static TrayItem sized(String name, String sizes) {
    int plus = sizes.indexOf('+');
    String[] sides = (plus < 0 ? sizes : sizes.substring(0, plus)).split("[xX\u00d7]", -1);
    if (!name.matches("[A-Za-z0-9][A-Za-z0-9 _.-]*") || sides.length != 3) {
      throw new BadDimension("items", "which is no NAME:LxWxH or NAME:LxWxH+CLEARANCE",
          "Write a name of letters and figures, a colon and three sizes, such as battery:60x30x16+1.");
    }
    double clearance = plus < 0 ? 0 : length(sizes.substring(plus + 1), 0);
    return new TrayItem(name, length(sides[0], 0.1), length(sides[1], 0.1), length(sides[2], 0.1), clearance);
  }

  private static double length(String text, double least) {
    OptionalDouble length = LengthText.parse(text).value();
    if (length.isEmpty() || !(length.getAsDouble() >= least && length.getAsDouble() <= LONGEST)) {
      throw new BadDimension("items", "in which " + Texts.quoted(text.strip()) + " is no length from " + Words.number(least)
          + " to " + Words.mm(LONGEST), "Write lengths in mm, in or thou, such as 60, 2.4in or 400thou.");
    }
    return length.getAsDouble();
  }
}
