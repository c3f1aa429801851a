package outrigger.generator.stack;

import outrigger.presets.Printer;

/**
 * The heights a printed block can have: one first layer and then whole layers.
 *
 * @param first nm
 * @param layer nm
 * @param fewest layers after the first one
 * @param most layers after the first one, not below fewest
 */
record Block(long first, long layer, long fewest, long most) {

  /**
   * The blocks of a printer, as high as its bed allows.
   *
   * @param least lowest block wanted, mm
   */
  static Block of(Printer printer, double least) {
    long first = Nano.of(printer.firstLayer());
    long layer = Math.max(1, Nano.of(printer.layer()));
    long fewest = Math.max(0, upwards(Nano.of(least) - first, layer));
    return new Block(first, layer, fewest, Math.floorDiv(Nano.of(printer.bedZ()) - first, layer));
  }

  long height(long layers) {
    return first + layers * layer;
  }

  /** Layers after the first one of the lowest height at or above this one, which may be above the highest. */
  long layersAtLeast(long height) {
    return Math.max(fewest, upwards(height - first, layer));
  }

  private static long upwards(long length, long step) {
    return -Math.floorDiv(-length, step);
  }

  /** How many heights there are. */
  long heights() {
    return most - fewest + 1;
  }
}
