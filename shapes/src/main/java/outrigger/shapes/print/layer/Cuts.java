package outrigger.shapes.print.layer;

import java.util.Arrays;
import outrigger.shapes.print.facet.Extremes;

/** Parallel lines laid across an area, as a printer lays beads over a gap: where each crosses the area's rim; mm. */
final class Cuts {
  /** Lines are laid about as near as this, mm, half as wide as printed; no fewer, no more than so many. Own choice. */
  static final double NEAR = 0.25;
  private static final int FEWEST = 9;
  private static final int MOST = 64;

  private final Rim rim;
  private final double x;
  private final double y;
  private final double low;
  private final double first;
  /** Distance of a line from the next. */
  final double apart;
  /** First crossing of each line, and the end. */
  final int[] start;
  /** Crossings of each line, rising, and whether the rim is carried there; two by two the area lies between them. */
  final double[] at;
  final boolean[] carried;

  /** Lays lines along a unit vector. */
  Cuts(Rim rim, double x, double y) {
    this.rim = rim;
    this.x = x;
    this.y = y;
    double[] across = rim.extent(-y, x);
    int lines = lines(across[1] - across[0]);
    low = across[0];
    apart = (across[1] - across[0]) / lines;
    first = low + apart / 2;
    start = new int[lines + 1];
    int[] from = new int[rim.size()];
    int[] to = new int[rim.size()];
    for (int e = 0; e < rim.size(); e++) {
      double t0 = across(rim.x0(e), rim.y0(e));
      double t1 = across(rim.x1(e), rim.y1(e));
      from[e] = lineFrom(Extremes.less(t0, t1));
      to[e] = lineFrom(Extremes.greater(t0, t1));
      for (int j = from[e]; j < to[e]; j++) {
        start[j + 1]++;
      }
    }
    for (int j = 0; j < lines; j++) {
      start[j + 1] += start[j];
    }
    at = new double[start[lines]];
    carried = new boolean[start[lines]];
    int[] fill = Arrays.copyOf(start, lines);
    for (int e = 0; e < rim.size(); e++) {
      // most edges are short and cross no line
      if (from[e] < to[e]) {
        put(e, from[e], to[e], fill);
      }
    }
  }

  private void put(int e, int from, int to, int... fill) {
    double t0 = across(rim.x0(e), rim.y0(e));
    double t1 = across(rim.x1(e), rim.y1(e));
    double s0 = rim.x0(e) * x + rim.y0(e) * y;
    double s1 = rim.x1(e) * x + rim.y1(e) * y;
    for (int j = from; j < to; j++) {
      put(j, fill[j]++, s0 + (first + apart * j - t0) / (t1 - t0) * (s1 - s0), rim.isCarried(e));
    }
  }

  /** How many lines are laid across a width, mm. */
  static int lines(double width) {
    return (int) Math.max(FEWEST, Math.min(MOST, Math.ceil(width / NEAR)));
  }

  /** Takes a length of a line along X within an area. */
  interface Line {
    /** Returns whether to go on with others. */
    boolean take(double from, double to, double y);
  }

  /** Lays lines along X within a rim until one says stop; whether none did. */
  static boolean alongX(Rim rim, Line line) {
    Cuts cuts = new Cuts(rim, 1, 0);
    for (int j = 0; j < cuts.lines(); j++) {
      for (int i = cuts.start[j]; i + 1 < cuts.start[j + 1]; i += 2) {
        if (!line.take(cuts.at[i], cuts.at[i + 1], cuts.across(j))) {
          return false;
        }
      }
    }
    return true;
  }

  private void put(int line, int end, double s, boolean isCarried) {
    int i = end;
    for (; i > start[line] && at[i - 1] > s; i--) {
      at[i] = at[i - 1];
      carried[i] = carried[i - 1];
    }
    at[i] = s;
    carried[i] = isCarried;
  }

  private double across(double px, double py) {
    return py * x - px * y;
  }

  /** The first line that lies across no less than a place does; the number of lines if none. */
  private int lineFrom(double place) {
    double number = (place - first) / apart;
    if (!(number > 0)) {
      return 0;
    }
    int whole = (int) number;
    return whole >= lines() ? lines() : whole < number ? whole + 1 : whole;
  }

  /** How many lines there are. */
  int lines() {
    return start.length - 1;
  }

  /** Where a line lies across the others. */
  double across(int line) {
    return low + apart * (line + 0.5);
  }

  /** Whether a crossing and the next lie on carried edges both. */
  boolean isHeld(int i) {
    return carried[i] && carried[i + 1];
  }
}
