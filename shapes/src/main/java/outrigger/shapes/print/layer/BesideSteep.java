package outrigger.shapes.print.layer;

import java.util.Arrays;
import outrigger.shapes.print.facet.Extremes;
import outrigger.shapes.profile.Section;

/** Tells how far places of a layer's piece lie beside the steep facets there, through a grid of square cells over these. */
final class BesideSteep {
  private static final int SIDES = 4;

  private final Undersides undersides;
  private final Section piece;
  private final double low;
  private final double high;
  private final double play;

  /** The facets' slots, and least and greatest x and y of each as seen from below, widened by the play. */
  private int[] slots = new int[16];
  private double[] boxes = new double[SIDES * 16];
  private int count;

  private double minX;
  private double minY;
  private double size;
  private int columns;
  private int rows;
  /** Where each cell begins among the facets in cells; null until the first place is asked for. */
  private int[] start;
  private int[] inCells;

  /**
   * Of a piece.
   *
   * @param low where its layer begins: the middle of the layer below, mm
   * @param high its middle, mm
   * @param play how far a place may lie beside a facet, mm: as far as an outline at a layer's middle may lie beside that just
   *     above the middle of the layer below
   */
  BesideSteep(Undersides undersides, Section piece, double low, double high, double play) {
    this.undersides = undersides;
    this.piece = piece;
    this.low = low;
    this.high = high;
    this.play = play;
  }

  /** How far a place lies beside the nearest; infinite if farther than may be. */
  double beside(double x, double y) {
    if (start == null) {
      layOut();
    }
    int cell = row(y) * columns + column(x);
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

  /** Fetches the facets and lays a grid over them with about as many cells. */
  private void layOut() {
    undersides.forEachSteep(piece.minX() - play, piece.minY() - play, low, piece.maxX() + play, piece.maxY() + play, high,
        this::add);
    minX = piece.minX() - play;
    minY = piece.minY() - play;
    double width = piece.maxX() + play - minX;
    double depth = piece.maxY() + play - minY;
    size = Math.max(Math.sqrt(width * depth / (count + 1)), Math.max(width, depth) / (count + 1));
    columns = 1 + (int) (width / size);
    rows = 1 + (int) (depth / size);
    int[] ends = new int[columns * rows + 1];
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
      int lastRow = row(boxes[o + 3]);
      int lastColumn = column(boxes[o + 2]);
      for (int r = row(boxes[o + 1]); r <= lastRow; r++) {
        for (int c = column(boxes[o]); c <= lastColumn; c++) {
          taker.take(at, r * columns + c);
        }
      }
    }
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - minX) / size)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) ((y - minY) / size)));
  }
}
