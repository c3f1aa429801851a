package outrigger.generator.accessory.feature;

import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;

/** Whether a part fits on the printer's bed. */
public final class Bed {
  private Bed() {}

  /**
   * Refuses a part that fits on the bed neither along nor across, or is too high.
   *
   * @param x length as it lies on the bed, mm
   * @param y its other side, mm
   * @param z height, mm
   * @param key the parameter to look at
   */
  public static void require(Printer printer, double x, double y, double z, String key) {
    double longer = Math.max(x, y);
    double shorter = Math.min(x, y);
    boolean lies = longer <= Math.max(printer.bedX(), printer.bedY())
        && shorter <= Math.min(printer.bedX(), printer.bedY());
    if (!lies || z > printer.bedZ()) {
      throw new BadDimension(key, "a part " + Words.number(x) + " x " + Words.number(y) + " x " + Words.mm(z)
          + " does not fit printer " + printer.name() + " with " + Words.number(printer.bedX()) + " x "
          + Words.number(printer.bedY()) + " x " + Words.mm(printer.bedZ()), "Make it smaller, or in two pieces.");
    }
  }
}
