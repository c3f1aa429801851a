package outrigger.shapes.print.layer;

import java.util.Arrays;
import outrigger.shapes.print.facet.Extremes;
import outrigger.shapes.print.slice.Outline;
import outrigger.shapes.profile.Section;

/** The edges of an area that stands out over the layer below, each either carried by that layer's outline or free. */
public final class Rim {
  /** How near to the outline below an edge's middle counts as on it, mm: far more than rounding, less than a step. */
  private static final double ON = 0.001;
  /** Of a strip held along one side some half is carried, with one of its ends or not; of what closes a gap nearly all. */
  private static final double MOSTLY = 0.6;

  private final double[] ends;
  private final boolean[] carried;
  private final double carriedLength;
  private OutlineGrid grid;

  private Rim(double[] ends, boolean[] carried) {
    this.ends = ends;
    this.carried = carried;
    double sum = 0;
    for (int e = 0; e < carried.length; e++) {
      sum += carried[e] ? length(e) : 0;
    }
    carriedLength = sum;
  }

  static Rim of(Section piece, OutlineGrid... carriers) {
    double[] ends = OutlineGrid.ends(piece.loops());
    boolean[] carried = new boolean[ends.length / 4];
    for (int e = 0; e < carried.length; e++) {
      for (OutlineGrid carrier : carriers) {
        carried[e] |= carrier.isWithin(ON, (ends[4 * e] + ends[4 * e + 2]) / 2, (ends[4 * e + 1] + ends[4 * e + 3]) / 2);
      }
    }
    return new Rim(ends, carried);
  }

  /**
   * The same, corners left out that lie nearer than a distance to the line of those kept, mm, where both edges are alike.
   */
  Rim simplified(double within) {
    double[] kept = new double[ends.length];
    boolean[] alike = new boolean[carried.length];
    int count = 0;
    for (int from = 0; from < size();) {
      int to = from + 1;
      while (to < size() && carried[to] == carried[from] && x0(to) == x1(to - 1) && y0(to) == y1(to - 1)) {
        to++;
      }
      double[] run = new double[2 * (to - from) + 2];
      for (int e = from; e < to; e++) {
        run[2 * (e - from)] = x0(e);
        run[2 * (e - from) + 1] = y0(e);
      }
      run[run.length - 2] = x1(to - 1);
      run[run.length - 1] = y1(to - 1);
      for (int at = 0; at < to - from;) {
        int next = at + Outline.reach(run, at, to - from - at, within);
        System.arraycopy(run, 2 * at, kept, 4 * count, 2);
        System.arraycopy(run, 2 * next, kept, 4 * count + 2, 2);
        alike[count++] = carried[from];
        at = next;
      }
      from = to;
    }
    return new Rim(Arrays.copyOf(kept, 4 * count), Arrays.copyOf(alike, count));
  }

  /** How many edges there are. */
  public int size() {
    return carried.length;
  }

  /** Where an edge begins, mm. */
  public double x0(int e) {
    return ends[4 * e];
  }

  /** Where an edge begins, mm. */
  public double y0(int e) {
    return ends[4 * e + 1];
  }

  /** Where an edge ends, mm. */
  public double x1(int e) {
    return ends[4 * e + 2];
  }

  /** Where an edge ends, mm. */
  public double y1(int e) {
    return ends[4 * e + 3];
  }

  /** Whether the layer below carries an edge. */
  public boolean isCarried(int e) {
    return carried[e];
  }

  /** How many lengths of it are carried, each parted from the next by a free one or on a loop of its own. */
  public int holds() {
    int holds = 0;
    int first = 0;
    for (int e = 0; e < size(); e++) {
      boolean ends = x1(e) == x0(first) && y1(e) == y0(first);
      int next = ends ? first : e + 1;
      holds += carried[e] && !(next < size() && carried[next]) ? 1 : 0;
      if (ends) {
        holds += allCarried(first, e) ? 1 : 0;
        first = e + 1;
      }
    }
    return holds;
  }

  /**
   * Whether a straight line across the area may have both ends on carried edges: not where these are all of one convex hole,
   * as of a roof that stands out all round.
   */
  public boolean mayHold() {
    int from = 0;
    boolean one = false;
    for (int e = 0; e < size(); e++) {
      if (x1(e) == x0(from) && y1(e) == y0(from)) {
        if (isAnyCarried(from, e)) {
          if (one || !isConvexHole(from, e)) {
            return true;
          }
          one = true;
        }
        from = e + 1;
      }
    }
    return false;
  }

  private boolean isAnyCarried(int from, int to) {
    for (int e = from; e <= to; e++) {
      if (carried[e]) {
        return true;
      }
    }
    return false;
  }

  /** Whether a loop, area on its left, turns right everywhere, and once round. */
  private boolean isConvexHole(int from, int to) {
    double turned = 0;
    for (int e = from; e <= to; e++) {
      int next = e == to ? from : e + 1;
      double ax = x1(e) - x0(e);
      double ay = y1(e) - y0(e);
      double bx = x1(next) - x0(next);
      double by = y1(next) - y0(next);
      double cross = ax * by - ay * bx;
      if (cross > 0 || cross == 0 && ax * bx + ay * by < 0) {
        return false;
      }
      turned += StrictMath.atan2(cross, ax * bx + ay * by);
    }
    return turned > -3 * Math.PI;
  }

  /** Whether its free edges are those of holes in it, and all round it is carried. */
  public boolean isFreeAtHolesAlone() {
    int free = 0;
    for (boolean isCarried : carried) {
      free += isCarried ? 0 : 1;
    }
    return free > 0 && freeHoles().size() == free;
  }

  /** Those of its holes, area on the left of every edge, that are nowhere carried. */
  Rim freeHoles() {
    double[] kept = new double[ends.length];
    int n = 0;
    int first = 0;
    for (int e = 0; e < size(); e++) {
      if (x1(e) == x0(first) && y1(e) == y0(first)) {
        boolean free = true;
        double area = 0;
        for (int i = first; i <= e; i++) {
          free &= !carried[i];
          area += (x0(i) - x0(first)) * (y1(i) - y0(first)) - (y0(i) - y0(first)) * (x1(i) - x0(first));
        }
        if (free && area < 0) {
          System.arraycopy(ends, 4 * first, kept, n, 4 * (e + 1 - first));
          n += 4 * (e + 1 - first);
        }
        first = e + 1;
      }
    }
    return new Rim(Arrays.copyOf(kept, n), new boolean[n / 4]);
  }

  private boolean allCarried(int from, int to) {
    for (int e = from; e <= to; e++) {
      if (!carried[e]) {
        return false;
      }
    }
    return true;
  }

  double length(int e) {
    return Math.sqrt((x1(e) - x0(e)) * (x1(e) - x0(e)) + (y1(e) - y0(e)) * (y1(e) - y0(e)));
  }

  /** Distance of a point from an edge. */
  public double distance(int e, double x, double y) {
    return Math.sqrt(OutlineGrid.square(ends, e, x, y));
  }

  /** What lies within it, area on the left of every edge, mm^2. */
  double area() {
    double sum = 0;
    for (int e = 0; e < size(); e++) {
      sum += (x0(e) - x0(0)) * (y1(e) - y0(0)) - (y0(e) - y0(0)) * (x1(e) - x0(0));
    }
    return sum / 2;
  }

  /** Length of all carried edges, mm. */
  double carriedLength() {
    return carriedLength;
  }

  /** Whether clearly more than half of it is carried. */
  public boolean isMostlyCarried() {
    double all = 0;
    for (int e = 0; e < size(); e++) {
      all += length(e);
    }
    return carriedLength > MOSTLY * all;
  }

  /** Least and greatest product of the corners with a vector. */
  double[] extent(double x, double y) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ends.length; i += 2) {
      double s = ends[i] * x + ends[i + 1] * y;
      low = Extremes.less(low, s);
      high = Extremes.greater(high, s);
    }
    return new double[] {low, high};
  }

  /** The longest edges, longest first, the first of equal ones first; at most as many as asked for. */
  int[] longest(int most) {
    int[] best = new int[Math.min(most, size())];
    int n = 0;
    for (int e = 0; e < size(); e++) {
      int at = n;
      while (at > 0 && length(best[at - 1]) < length(e)) {
        at--;
      }
      if (at < best.length) {
        n = Math.min(best.length, n + 1);
        System.arraycopy(best, at, best, at + 1, n - at - 1);
        best[at] = e;
      }
    }
    return best;
  }

  /** Whether an edge lies within a distance of a point. Not for several threads at once. */
  public boolean isWithin(double distance, double x, double y) {
    if (grid == null) {
      grid = new OutlineGrid(ends);
    }
    return grid.isWithin(distance, x, y);
  }

  /** Whether a free edge lies within a distance of a point. */
  boolean isFreeWithin(double distance, double x, double y) {
    for (int e = 0; e < size(); e++) {
      if (!carried[e] && OutlineGrid.square(ends, e, x, y) <= distance * distance) {
        return true;
      }
    }
    return false;
  }

  /** Whether a corner of either rim lies on the other, nearer than a distance; this one is likely to be carried by it. */
  public boolean touches(Rim other, double within) {
    return hasCarriedOn(other, within) || hasCornerOn(other, within) || other.hasCornerOn(this, within);
  }

  /** Whether the first carried edge begins on another rim: so it does on most it goes on from, and no grid is needed. */
  private boolean hasCarriedOn(Rim other, double within) {
    int e = 0;
    while (e < size() && !carried[e]) {
      e++;
    }
    for (int i = 0; i < other.size() && e < size(); i++) {
      if (OutlineGrid.square(other.ends, i, x0(e), y0(e)) <= within * within) {
        return true;
      }
    }
    return false;
  }

  private boolean hasCornerOn(Rim other, double within) {
    for (int e = 0; e < size(); e++) {
      if (other.isWithin(within, x0(e), y0(e))) {
        return true;
      }
    }
    return false;
  }
}
