package outrigger.shapes.print.layer;

import java.util.Arrays;
import java.util.function.IntConsumer;
import outrigger.shapes.print.facet.Extremes;
import outrigger.shapes.profile.Section;

/**
 * The steep facets under a piece of a layer, fetched once. How far places of the piece lie beside them is told through a
 * grid of square cells over them.
 */
final class SteepUnder {
  private static final int SIDES = 4;

  private final Undersides undersides;
  private final double play;

  /** The facets' slots, and least and greatest x and y of each as seen from below, widened by the play. */
  private int[] slots = new int[16];
  private double[] boxes = new double[SIDES * 16];
  private int count;

  private final double minX;
  private final double minY;
  private final double width;
  private final double depth;
  private Cells cells;
  /** Where each cell begins among the facets in cells; null until the first place is asked for. */
  private int[] start;
  private int[] inCells;

  /**
   * Of a piece.
   *
   * @param low where its layer begins: the middle of the layer below, mm
   * @param high its middle, mm
   * @param play how far a place may lie beside a facet, mm: as far as an outline at a layer's middle may lie beside that
   *     just above the middle of the layer below
   */
  SteepUnder(Undersides undersides, Section piece, double low, double high, double play) {
    this.undersides = undersides;
    this.play = play;
    minX = piece.minX() - play;
    minY = piece.minY() - play;
    width = piece.maxX() + play - minX;
    depth = piece.maxY() + play - minY;
    undersides.forEachSteep(minX, minY, low, minX + width, minY + depth, high, this::add);
  }

  /** Whether there are none. */
  boolean isEmpty() {
    return count == 0;
  }

  /** Gives each of them, by its slot. */
  void forEach(IntConsumer consumer) {
    for (int i = 0; i < count; i++) {
      consumer.accept(slots[i]);
    }
  }

  /** How far a place lies beside the nearest; infinite if farther than may be. */
  double beside(double x, double y) {
    if (start == null) {
      layOut();
    }
    int cell = cells.row(y) * cells.columns() + cells.column(x);
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = start[cell]; i < start[cell + 1] && nearest > 0; i++) {
      int at = inCells[i];
      int o = SIDES * at;
      if (boxes[o] <= x && boxes[o + 1] <= y && boxes[o + 2] >= x && boxes[o + 3] >= y) {
        double beside = undersides.beside(slots[at], x, y);
        nearest = beside <= play ? Extremes.less(nearest, beside) : nearest;
      }
    }
    return nearest;
  }

  /** Lays a grid over the facets with about as many cells, none smaller than the play, or a fine one would lie in many. */
  private void layOut() {
    int most = (int) Math.min(count + 1.0, Math.max(1, width * depth / (play * play)));
    cells = Cells.over(minX, minY, width, depth, most);
    int[] ends = new int[cells.count() + 1];
    forEachCell((at, cell) -> ends[cell + 1]++);
    for (int c = 0; c + 1 < ends.length; c++) {
      ends[c + 1] += ends[c];
    }
    start = ends.clone();
    inCells = new int[ends[ends.length - 1]];
    forEachCell((at, cell) -> inCells[ends[cell]++] = at);
  }

  private void add(int slot) {
    if (count == slots.length) {
      slots = Arrays.copyOf(slots, 2 * count);
      boxes = Arrays.copyOf(boxes, 2 * SIDES * count);
    }
    for (int axis = 0; axis < 2; axis++) {
      boxes[SIDES * count + axis] = undersides.least(slot, axis) - play;
      boxes[SIDES * count + 2 + axis] = undersides.most(slot, axis) + play;
    }
    slots[count++] = slot;
  }

  private interface InCell {
    void take(int at, int cell);
  }

  private void forEachCell(InCell taker) {
    for (int at = 0; at < count; at++) {
      int o = SIDES * at;
      int lastRow = cells.row(boxes[o + 3]);
      int lastColumn = cells.column(boxes[o + 2]);
      for (int r = cells.row(boxes[o + 1]); r <= lastRow; r++) {
        for (int c = cells.column(boxes[o]); c <= lastColumn; c++) {
          taker.take(at, r * cells.columns() + c);
        }
      }
    }
  }
}
