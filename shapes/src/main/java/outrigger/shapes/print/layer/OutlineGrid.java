package outrigger.shapes.print.layer;

import java.util.List;
import outrigger.shapes.print.facet.Extremes;

/**
 * Tells how far a point lies from the nearest of many outlines, through a grid of square cells about as many as there
 * are edges; mm.
 */
final class OutlineGrid {
  /** Cells at most, whatever the edges: own choice, for memory. */
  private static final int MOST_CELLS = 1 << 20;
  /** Outlines count as this wide at least, mm, so that cells have a size. */
  private static final double LEAST_WIDTH = 1e-3;

  private final double[] ends;
  private final Cells cells;
  private final int[] start;
  private final int[] edges;

  /** A grid over closed loops, x, y of each one's corners. */
  OutlineGrid(List<double[]> loops) {
    this(ends(loops));
  }

  /** A grid over edges, x0, y0, x1, y1 of each; not to be changed after. */
  OutlineGrid(double[] ends) {
    this.ends = ends;
    double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
        Double.NEGATIVE_INFINITY};
    for (int i = 0; i < ends.length; i += 2) {
      box[0] = Math.min(box[0], ends[i]);
      box[1] = Math.min(box[1], ends[i + 1]);
      box[2] = Math.max(box[2], ends[i]);
      box[3] = Math.max(box[3], ends[i + 1]);
    }
    int count = Math.min(MOST_CELLS, Math.max(1, ends.length / 4));
    cells = ends.length == 0 ? new Cells(0, 0, 1, 0, 0) : Cells.over(box[0], box[1],
        Math.max(LEAST_WIDTH, box[2] - box[0]), Math.max(LEAST_WIDTH, box[3] - box[1]), count);
    start = new int[cells.count() + 1];
    for (int e = 0; e < ends.length / 4; e++) {
      visit(e, cell -> start[cell + 1]++);
    }
    for (int c = 0; c + 1 < start.length; c++) {
      start[c + 1] += start[c];
    }
    int[] fill = start.clone();
    edges = new int[start[start.length - 1]];
    for (int e = 0; e < ends.length / 4; e++) {
      int edge = e;
      visit(e, cell -> edges[fill[cell]++] = edge);
    }
  }

  /** x0, y0, x1, y1 of every edge of closed loops. */
  static double[] ends(List<double[]> loops) {
    int numbers = 0;
    for (double[] loop : loops) {
      numbers += loop.length;
    }
    double[] ends = new double[2 * numbers];
    int n = 0;
    for (double[] p : loops) {
      for (int i = 0; i < p.length; i += 2) {
        int j = i + 2 == p.length ? 0 : i + 2;
        ends[n++] = p[i];
        ends[n++] = p[i + 1];
        ends[n++] = p[j];
        ends[n++] = p[j + 1];
      }
    }
    return ends;
  }

  private interface Cell {
    void take(int cell);
  }

  /** Row by row the cells an edge runs through. */
  private void visit(int e, Cell taker) {
    double x0 = ends[4 * e];
    double y0 = ends[4 * e + 1];
    double x1 = ends[4 * e + 2];
    double y1 = ends[4 * e + 3];
    int first = cells.row(Math.min(y0, y1));
    int last = cells.row(Math.max(y0, y1));
    for (int r = first; r <= last; r++) {
      double a = x0;
      double b = x1;
      if (first < last) {
        a = x0 + (x1 - x0) * share(cells.bottom(r), y0, y1);
        b = x0 + (x1 - x0) * share(cells.bottom(r + 1), y0, y1);
      }
      int to = cells.column(Math.max(a, b));
      for (int c = cells.column(Math.min(a, b)); c <= to; c++) {
        taker.take(r * cells.columns() + c);
      }
    }
  }

  private static double share(double y, double y0, double y1) {
    return Math.max(0, Math.min(1, (y - y0) / (y1 - y0)));
  }

  /** Distance of a point from the nearest edge; infinite without edges. Rings of cells are looked at, inmost first. */
  double distance(double x, double y) {
    int c = cells.column(x);
    int r = cells.row(y);
    double best = Double.POSITIVE_INFINITY;
    for (int ring = 0; ring < Math.max(cells.columns(), cells.rows()); ring++) {
      best = Math.min(best, ring(x, y, c, r, ring));
      // What lies in rings further out is as far as the cells between are wide, less the place within its own cell.
      double within = Math.min(Math.min(x - cells.left(c), cells.left(c + 1) - x),
          Math.min(y - cells.bottom(r), cells.bottom(r + 1) - y));
      double seen = ring * cells.size() + Math.max(0, within);
      if (best <= seen * seen) {
        break;
      }
    }
    return Math.sqrt(best);
  }

  /** Whether an edge lies within a distance of a point; looks no further than that. */
  boolean isWithin(double distance, double x, double y) {
    int to = cells.row(y + distance);
    for (int r = cells.row(y - distance); r <= to; r++) {
      for (int c = cells.column(x - distance); c <= cells.column(x + distance); c++) {
        if (cells.columns() > 0 && inCell(x, y, r * cells.columns() + c) <= distance * distance) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a corner of these outlines lies nearly on another's edge, or nearly at its corner, but not just there. */
  boolean skims(OutlineGrid other, double distance) {
    for (int i = 0; i < ends.length; i += 4) {
      if (other.isSkimmed(distance, ends[i], ends[i + 1])) {
        return true;
      }
    }
    return false;
  }

  private boolean isSkimmed(double distance, double x, double y) {
    int to = cells.row(y + distance);
    for (int r = cells.row(y - distance); r <= to && cells.columns() > 0; r++) {
      int last = r * cells.columns() + cells.column(x + distance);
      for (int cell = r * cells.columns() + cells.column(x - distance); cell <= last; cell++) {
        for (int i = start[cell]; i < start[cell + 1]; i++) {
          int e = 4 * edges[i];
          boolean corner = ends[e] == x && ends[e + 1] == y || ends[e + 2] == x && ends[e + 3] == y;
          if (!corner && square(ends, edges[i], x, y) <= distance * distance) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private double ring(double x, double y, int column, int row, int ring) {
    double best = Double.POSITIVE_INFINITY;
    for (int r = Math.max(0, row - ring); r <= Math.min(cells.rows() - 1, row + ring); r++) {
      boolean whole = Math.abs(r - row) == ring;
      int step = whole || ring == 0 ? 1 : 2 * ring;
      for (int c = column - ring; c <= column + ring; c += step) {
        if (c >= 0 && c < cells.columns()) {
          best = Extremes.less(best, inCell(x, y, r * cells.columns() + c));
        }
      }
    }
    return best;
  }

  private double inCell(double x, double y, int cell) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = start[cell]; i < start[cell + 1]; i++) {
      best = Extremes.less(best, square(ends, edges[i], x, y));
    }
    return best;
  }

  /** Square of the distance of a point from edge e of x0, y0, x1, y1 each. */
  static double square(double[] ends, int e, double x, double y) {
    double dx = ends[4 * e + 2] - ends[4 * e];
    double dy = ends[4 * e + 3] - ends[4 * e + 1];
    double px = x - ends[4 * e];
    double py = y - ends[4 * e + 1];
    double square = dx * dx + dy * dy;
    double t = square == 0 ? 0 : Extremes.greater(0, Extremes.less(1, (px * dx + py * dy) / square));
    return (px - t * dx) * (px - t * dx) + (py - t * dy) * (py - t * dy);
  }
}
