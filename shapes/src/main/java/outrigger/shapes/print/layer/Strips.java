package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What of an area lies under parallel lines no longer than a bound, both ends on carried edges: the area cut at every corner
 * into trapezoids along the lines, and these put together into strips; exact, where {@link Cuts} are samples.
 */
final class Strips {
  /** Corners that lie so near to each other across the lines are at one place, mm. */
  private static final double SAME = 1e-7;
  /** Edges of trapezoids that meet no better than this do not go on from each other, mm. */
  private static final double MEETS = 1e-5;
  /** Lines that differ by so small a share count as alike. */
  private static final double ALIKE = 0.01;

  private final double x;
  private final double y;
  private final double most;
  private final double narrowest;
  private final double[] t0;
  private final double[] t1;
  private final double[] s0;
  private final double[] s1;
  private final int[] edge;
  private final int edges;
  private final List<Strip> done = new ArrayList<>();
  private List<Strip> open = new ArrayList<>();

  /** One strip: its trapezoids from low to high across the lines. */
  static final class Strip {
    /** t, s of the left end and s of the right end of each line at which something changes, each twice within. */
    private double[] lines = new double[12];
    private int count;
    private double area;
    private double longest;

    private void add(double t, double left, double right) {
      if (count + 3 > lines.length) {
        lines = Arrays.copyOf(lines, 2 * lines.length);
      }
      lines[count++] = t;
      lines[count++] = left;
      lines[count++] = right;
      longest = Math.max(longest, right - left);
    }

    private boolean goesOnAt(double t, double left, double right) {
      return Math.abs(lines[count - 3] - t) <= SAME && Math.abs(lines[count - 2] - left) <= MEETS
          && Math.abs(lines[count - 1] - right) <= MEETS;
    }

    /** How wide it is across its lines, mm. */
    double width() {
      return lines[count - 3] - lines[0];
    }

    /** mm^2. */
    double area() {
      return area;
    }

    /** Length of its longest line, mm. */
    double longest() {
      return longest;
    }

    /** Outline, x and y of each corner, area on its left. */
    double[] outline(double x, double y) {
      double[] loop = new double[4 * count / 3];
      int n = 0;
      for (int i = 0; i < count; i += 3) {
        n = put(loop, n, x, y, lines[i + 2], lines[i]);
      }
      for (int i = count - 3; i >= 0; i -= 3) {
        n = put(loop, n, x, y, lines[i + 1], lines[i]);
      }
      return Arrays.copyOf(loop, n);
    }

    private static int put(double[] loop, int n, double x, double y, double along, double across) {
      double px = along * x - across * y;
      double py = along * y + across * x;
      if (n > 0 && Math.hypot(px - loop[n - 2], py - loop[n - 1]) <= SAME) {
        return n;
      }
      loop[n] = px;
      loop[n + 1] = py;
      return n + 2;
    }

    /** Middle of the line midway between the first and the last about as long as the longest. */
    double[] middle(double x, double y) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      double along = 0;
      for (int i = 0; i < count; i += 3) {
        if (lines[i + 2] - lines[i + 1] >= longest * (1 - ALIKE)) {
          low = Math.min(low, lines[i]);
          high = Math.max(high, lines[i]);
          along = (lines[i + 1] + lines[i + 2]) / 2;
        }
      }
      double across = (low + high) / 2;
      return new double[] {along * x - across * y, along * y + across * x};
    }
  }

  /**
   * Lays lines along a unit vector.
   *
   * @param most greatest length of a line, mm
   * @param narrowest strips narrower than this are left out, mm
   */
  static List<Strip> laid(Rim rim, double x, double y, double most, double narrowest) {
    Strips strips = new Strips(rim, x, y, most, narrowest);
    strips.sweep(rim);
    return strips.done;
  }

  private Strips(Rim rim, double x, double y, double most, double narrowest) {
    this.x = x;
    this.y = y;
    this.most = most;
    this.narrowest = narrowest;
    int n = 0;
    int size = rim.size();
    t0 = new double[size];
    t1 = new double[size];
    s0 = new double[size];
    s1 = new double[size];
    edge = new int[size];
    for (int e = 0; e < size; e++) {
      double ta = across(rim.x0(e), rim.y0(e));
      double tb = across(rim.x1(e), rim.y1(e));
      if (Math.abs(ta - tb) > SAME) {
        boolean rises = ta < tb;
        t0[n] = rises ? ta : tb;
        t1[n] = rises ? tb : ta;
        double sa = along(rim.x0(e), rim.y0(e));
        double sb = along(rim.x1(e), rim.y1(e));
        s0[n] = rises ? sa : sb;
        s1[n] = rises ? sb : sa;
        edge[n++] = e;
      }
    }
    edges = n;
  }

  private double across(double px, double py) {
    return py * x - px * y;
  }

  private double along(double px, double py) {
    return px * x + py * y;
  }

  private void sweep(Rim rim) {
    double[] stops = new double[2 * edges];
    System.arraycopy(t0, 0, stops, 0, edges);
    System.arraycopy(t1, 0, stops, edges, edges);
    Arrays.sort(stops);
    Integer[] order = new Integer[edges];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> Double.compare(t0[a], t0[b]));
    int next = 0;
    List<Integer> active = new ArrayList<>();
    for (int k = 0; k + 1 < stops.length; k++) {
      double low = stops[k];
      double high = stops[k + 1];
      if (high - low <= SAME) {
        continue;
      }
      double middle = (low + high) / 2;
      active.removeIf(i -> t1[i] < middle);
      while (next < edges && t0[order[next]] < middle) {
        if (t1[order[next]] > middle) {
          active.add(order[next]);
        }
        next++;
      }
      active.sort((a, b) -> Double.compare(at(a, middle), at(b, middle)));
      List<Strip> before = open;
      open = new ArrayList<>();
      for (int i = 0; i + 1 < active.size(); i += 2) {
        int left = active.get(i);
        int right = active.get(i + 1);
        if (rim.isCarried(edge[left]) && rim.isCarried(edge[right])) {
          lay(left, right, low, high, before);
        }
      }
      before.forEach(this::close);
    }
    open.forEach(this::close);
  }

  private void close(Strip strip) {
    if (strip.width() >= narrowest) {
      done.add(strip);
    }
  }

  private double at(int i, double t) {
    return s0[i] + (t - t0[i]) / (t1[i] - t0[i]) * (s1[i] - s0[i]);
  }

  /** Lays what of a trapezoid is no longer than allowed, on top of a strip of before if it goes on from there. */
  private void lay(int left, int right, double from, double to, List<Strip> before) {
    double low = from;
    double high = to;
    double a = at(right, low) - at(left, low) - most;
    double b = at(right, high) - at(left, high) - most;
    if (a > 0 && b > 0) {
      return;
    }
    if (a > 0) {
      low += (high - low) * a / (a - b);
    } else if (b > 0) {
      high -= (high - low) * b / (b - a);
    }
    if (high - low <= SAME) {
      return;
    }
    double start = low;
    Strip strip = before.stream().filter(s -> s.goesOnAt(start, at(left, start), at(right, start))).findFirst()
        .orElse(null);
    if (strip == null) {
      strip = new Strip();
      strip.add(low, at(left, low), at(right, low));
    } else {
      before.remove(strip);
    }
    strip.add(high, at(left, high), at(right, high));
    strip.area += (high - low) * (at(right, low) - at(left, low) + at(right, high) - at(left, high)) / 2;
    if (high < to) {
      close(strip);
    } else {
      open.add(strip);
    }
  }
}
