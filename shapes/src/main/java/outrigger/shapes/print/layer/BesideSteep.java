package outrigger.shapes.print.layer;

import java.util.Arrays;

/** Tells how far places one after another along a rim lie beside steep facets: those near a place serve the next ones. */
final class BesideSteep {
  /** Facets are fetched for so many points ahead. */
  private static final double AHEAD = 16;

  private final Undersides undersides;
  private final double low;
  private final double high;
  /** As far as an outline at a layer's middle may lie beside that just above the middle of the layer below. */
  private final double play;
  private final double[] box = new double[6];
  private int[] near = new int[16];
  private int count;
  /** The one that lay under the last place: it or those next to it are likely to lie under the next. */
  private int last;
  private double nearX;
  private double nearY;
  private double reach = -1;

  /**
   * Of a layer.
   *
   * @param low where it begins: the middle of the layer below, mm
   * @param high its middle, mm
   * @param play how far a place may lie beside a facet, mm
   */
  BesideSteep(Undersides undersides, double low, double high, double play) {
    this.undersides = undersides;
    this.low = low;
    this.high = high;
    this.play = play;
  }

  /** How far a place lies beside the nearest; infinite if farther than may be. The next place is some way off. */
  double beside(double x, double y, double way) {
    if (Math.abs(x - nearX) > reach || Math.abs(y - nearY) > reach) {
      count = 0;
      last = 0;
      nearX = x;
      nearY = y;
      reach = AHEAD * way;
      double around = reach + play;
      undersides.forEachSteep(x - around, y - around, low, x + around, y + around, high, this::add);
    }
    box[0] = x - play;
    box[1] = y - play;
    box[2] = low;
    box[3] = x + play;
    box[4] = y + play;
    box[5] = high;
    double nearest = Double.POSITIVE_INFINITY;
    int from = last;
    for (int i = 0; i < count && nearest > 0; i++) {
      int at = (from + i) % count;
      double beside = undersides.meets(near[at], box) ? undersides.beside(near[at], x, y) : Double.POSITIVE_INFINITY;
      if (beside <= play && beside < nearest) {
        nearest = beside;
        last = at;
      }
    }
    return nearest;
  }

  private void add(int slot) {
    if (count == near.length) {
      near = Arrays.copyOf(near, 2 * count);
    }
    near[count++] = slot;
  }
}
