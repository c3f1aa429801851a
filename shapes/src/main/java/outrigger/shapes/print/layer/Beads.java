package outrigger.shapes.print.layer;

import java.util.Arrays;

/**
 * How well a direction suits for laying beads across an area: {@link Chords} in sums alone, for trying many directions.
 *
 * @param held area under lines with both ends on the edge of what carries, mm^2
 * @param loose area under the others, mm^2
 * @param span length of the longest line held at both ends, mm; 0 if there is none
 */
record Beads(double held, double loose, double span) {
  /** Lines are laid about as near as this, mm, half as wide as printed; no fewer, no more than so many. Own choice. */
  private static final double NEAR = 0.25;
  private static final int FEWEST = 9;
  private static final int MOST = 64;
  /** Share of the area that a line as long as the area is wide weighs: own choice. */
  private static final double LONG = 0.05;

  /** How many lines are laid across a width, mm. */
  static int lines(double width) {
    return (int) Math.max(FEWEST, Math.min(MOST, Math.ceil(width / NEAR)));
  }

  /** Takes a line along X. */
  interface Line {
    /** Returns whether to go on with others. */
    boolean take(double from, double to, double y);
  }

  /** Lays lines along X within a rim until one says stop; whether none did. */
  static boolean alongX(Rim rim, Line line) {
    double[] across = rim.extent(0, 1);
    int lines = lines(across[1] - across[0]);
    double apart = (across[1] - across[0]) / lines;
    Cuts cuts = new Cuts(rim, 1, 0, across[0] + apart / 2, apart, lines);
    for (int j = 0; j < lines; j++) {
      double y = across[0] + apart * (j + 0.5);
      for (int i = cuts.start[j]; i + 1 < cuts.start[j + 1]; i += 2) {
        if (!line.take(cuts.at[i], cuts.at[i + 1], y)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Lays the lines along a unit vector. */
  static Beads laid(Rim rim, double x, double y) {
    double[] across = rim.extent(-y, x);
    int lines = lines(across[1] - across[0]);
    double apart = (across[1] - across[0]) / lines;
    Cuts cuts = new Cuts(rim, x, y, across[0] + apart / 2, apart, lines);
    double held = 0;
    double loose = 0;
    double span = 0;
    for (int j = 0; j < lines; j++) {
      for (int i = cuts.start[j]; i + 1 < cuts.start[j + 1]; i += 2) {
        double length = cuts.at[i + 1] - cuts.at[i];
        if (cuts.carried[i] && cuts.carried[i + 1]) {
          held += length * apart;
          span = Math.max(span, length);
        } else {
          loose += length * apart;
        }
      }
    }
    return new Beads(held, loose, span);
  }

  /** For each line where it crosses a rim, rising, and whether the rim is carried there. */
  static final class Cuts {
    /** First crossing of each line, and the end. */
    final int[] start;
    final double[] at;
    final boolean[] carried;

    Cuts(Rim rim, double x, double y, double from, double apart, int lines) {
      start = new int[lines + 1];
      for (int e = 0; e < rim.size(); e++) {
        int last = last(rim, e, x, y, from, apart, lines);
        for (int j = first(rim, e, x, y, from, apart); j < last; j++) {
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
        double t0 = across(rim.x0(e), rim.y0(e), x, y);
        double t1 = across(rim.x1(e), rim.y1(e), x, y);
        double s0 = rim.x0(e) * x + rim.y0(e) * y;
        double s1 = rim.x1(e) * x + rim.y1(e) * y;
        int last = last(rim, e, x, y, from, apart, lines);
        for (int j = first(rim, e, x, y, from, apart); j < last; j++) {
          put(j, fill[j]++, s0 + (from + apart * j - t0) / (t1 - t0) * (s1 - s0), rim.isCarried(e));
        }
      }
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

    private static double across(double px, double py, double x, double y) {
      return py * x - px * y;
    }

    private static int first(Rim rim, int e, double x, double y, double from, double apart) {
      double low = Math.min(across(rim.x0(e), rim.y0(e), x, y), across(rim.x1(e), rim.y1(e), x, y));
      return (int) Math.max(0, Math.ceil((low - from) / apart));
    }

    private static int last(Rim rim, int e, double x, double y, double from, double apart, int lines) {
      double high = Math.max(across(rim.x0(e), rim.y0(e), x, y), across(rim.x1(e), rim.y1(e), x, y));
      return (int) Math.min(lines, Math.ceil((high - from) / apart));
    }
  }

  /** How well the direction suits: the share held, less a little for long lines; no area is narrower than lines are apart. */
  double merit() {
    return share() - LONG * span / Math.sqrt(Math.max(held + loose, NEAR * span));
  }

  /** Share of the area held, 0 to 1. */
  double share() {
    return held + loose == 0 ? 0 : held / (held + loose);
  }
}
