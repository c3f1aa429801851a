package outrigger.generator.accessory.feature;

import java.util.Locale;
import outrigger.generator.accessory.Words;
import outrigger.presets.Printer;

/**
 * What the layers make of a height: a printer stacks one first layer and then whole layers, so only some heights come
 * out; mm.
 *
 * @param height wanted
 * @param firstLayer of the printer
 * @param layer of the printer
 * @param layers after the first one, for the nearest height
 * @param printed nearest height that can come out
 */
public record LayerNote(double height, double firstLayer, double layer, int layers, double printed) {
  /** Errors below a micrometre come from adding decimals in binary. */
  private static final double NOTHING = 0.001;
  /** Share of the first layer's height it may be changed by and still stick and not be squeezed; common practice. */
  private static final double FIRST_LAYER_SPAN = 0.35;

  /** What the printer's layers make of a height. */
  public static LayerNote of(double height, Printer printer) {
    int layers = (int) Math.max(0, Math.rint((height - printer.firstLayer()) / printer.layer()));
    return new LayerNote(height, printer.firstLayer(), printer.layer(), layers,
        printer.firstLayer() + layers * printer.layer());
  }

  /** Printed less wanted height, mm. */
  public double error() {
    return printed - height;
  }

  /** Whether the height comes out as it is. */
  public boolean isExact() {
    return Math.abs(error()) < NOTHING;
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
    String stack = "first layer " + number(firstLayer) + " and " + layers + " x " + number(layer);
    if (isExact()) {
      return Words.mm(height) + " comes out exactly: " + stack + ".";
    }
    return Words.mm(height) + " prints as " + number(printed) + " mm (" + signed(error()) + "): " + stack + ". "
        + remedy() + (otherwise.isEmpty() ? "." : ", or " + otherwise + ".");
  }

  /** What would hit the height. */
  private String remedy() {
    double first = firstLayer - error();
    if (Math.abs(error()) <= FIRST_LAYER_SPAN * firstLayer) {
      return "Set the first layer to " + number(first) + " to hit it";
    }
    double even = layers == 0 ? 0 : (height - firstLayer) / layers;
    if (even > 0) {
      return "Set the layer height to " + String.format(Locale.ROOT, "%.4f", even) + " to hit it";
    }
    return "Make it " + Words.mm(printed);
  }

  private static String signed(double value) {
    return String.format(Locale.ROOT, "%+.3f mm", value);
  }

  private static String number(double value) {
    return Words.number(value);
  }
}
