package outrigger.shapes.print;

import java.util.OptionalDouble;

/**
 * What the layers make of a height above the bed: a printer stacks one first layer and then whole layers, so only some
 * heights come out; mm.
 *
 * @param height wanted
 * @param firstLayer height of the first layer
 * @param layer height of every other layer
 * @param layers after the first one, for the nearest height
 */
public record LayerHeight(double height, double firstLayer, double layer, int layers) {
  /** Errors below a micrometre come from adding decimals in binary. */
  private static final double NOTHING = 0.001;
  /** Share of the first layer's height it may be changed by and still stick and not be squeezed; common practice. */
  private static final double FIRST_LAYER_SPAN = 0.35;

  /** The nearest height that comes out; never less than the first layer. Halfway between two, the even count. */
  public static LayerHeight of(double height, double firstLayer, double layer) {
    return new LayerHeight(height, firstLayer, layer, (int) Math.max(0, Math.rint((height - firstLayer) / layer)));
  }

  /**
   * What comes out of a distance within the part, such as a pocket's depth: both its ends go to their nearest layer.
   *
   * @param low height of its lower end above the bed
   * @param high height of its upper end
   */
  public static double between(double low, double high, double firstLayer, double layer) {
    return of(high, firstLayer, layer).printed() - of(low, firstLayer, layer).printed();
  }

  /** The nearest height that comes out. */
  public double printed() {
    return firstLayer + layers * layer;
  }

  /** Printed less wanted height. */
  public double error() {
    return printed() - height;
  }

  /** Whether the height comes out as it is. */
  public boolean isExact() {
    return Math.abs(error()) < NOTHING;
  }

  /** The first layer that would hit the height with the other layers as they are; empty if it would not stick. */
  public OptionalDouble firstLayerToHit() {
    return Math.abs(error()) <= FIRST_LAYER_SPAN * firstLayer ? OptionalDouble.of(firstLayer - error())
        : OptionalDouble.empty();
  }

  /** The layer height that would hit it with as many layers and the first one as it is; empty if there is none. */
  public OptionalDouble layerToHit() {
    return layers > 0 && height > firstLayer ? OptionalDouble.of((height - firstLayer) / layers)
        : OptionalDouble.empty();
  }
}
