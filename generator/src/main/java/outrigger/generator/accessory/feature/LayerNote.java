package outrigger.generator.accessory.feature;

import java.util.Locale;
import outrigger.generator.accessory.Words;
import outrigger.presets.Printer;
import outrigger.shapes.print.LayerHeight;

/**
 * What the layers make of a height, in words.
 *
 * @param layers what they make of it
 */
public record LayerNote(LayerHeight layers) {

  /** What the printer's layers make of a height, mm. */
  public static LayerNote of(double height, Printer printer) {
    return new LayerNote(LayerHeight.of(height, printer.firstLayer(), printer.layer()));
  }

  /** One sentence, or two: the nearest height, its error and what would hit it. */
  public String text() {
    return text("");
  }

  /**
   * The same with another way to hit the height.
   *
   * @param otherwise read after "or", such as {@code print on edge}; empty for none
   */
  public String text(String otherwise) {
    String stack = "first layer " + number(layers.firstLayer()) + " and " + layers.layers() + " x "
        + number(layers.layer());
    if (layers.isExact()) {
      return Words.mm(layers.height()) + " comes out exactly: " + stack + ".";
    }
    return Words.mm(layers.height()) + " prints as " + number(layers.printed()) + " mm ("
        + String.format(Locale.ROOT, "%+.3f mm", layers.error()) + "): " + stack + ". " + remedy()
        + (otherwise.isEmpty() ? "." : ", or " + otherwise + ".");
  }

  /** What would hit the height. */
  private String remedy() {
    if (layers.firstLayerToHit().isPresent()) {
      return "Set the first layer to " + number(layers.firstLayerToHit().getAsDouble()) + " to hit it";
    }
    if (layers.layerToHit().isPresent()) {
      return "Set the layer height to " + String.format(Locale.ROOT, "%.4f", layers.layerToHit().getAsDouble())
          + " to hit it";
    }
    return "Make it " + Words.mm(layers.printed());
  }

  private static String number(double value) {
    return Words.number(value);
  }
}
