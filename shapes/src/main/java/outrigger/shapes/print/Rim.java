package outrigger.shapes.print;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import outrigger.shapes.profile.Section;

/** The edges of an area that stands out over the layer below, each either carried by that layer's outline or free. */
final class Rim {
  /** How near to the outline below an edge's middle counts as on it, mm: far more than rounding, less than a step. */
  private static final double ON = 0.001;
  private final double[] ends;
  private final boolean[] carried;
  private final double carriedLength;

  private Rim(double[] ends, boolean[] carried) {
    this.ends = ends;
    this.carried = carried;
    double sum = 0;
    for (int e = 0; e < carried.length; e++) {
      sum += carried[e] ? length(e) : 0;
    }
    carriedLength = sum;
  }

  static Rim of(Section piece, Section below) {
    List<double[]> loops = piece.loops();
    double[] ends = new double[2 * loops.stream().mapToInt(loop -> loop.length).sum()];
    int n = 0;
    for (double[] p : loops) {
      for (int i = 0; i < p.length; i += 2) {
        int j = (i + 2) % p.length;
        ends[n++] = p[i];
        ends[n++] = p[i + 1];
        ends[n++] = p[j];
        ends[n++] = p[j + 1];
      }
    }
    boolean[] carried = new boolean[n / 4];
    for (int e = 0; e < carried.length; e++) {
      carried[e] = below.fromOutline((ends[4 * e] + ends[4 * e + 2]) / 2, (ends[4 * e + 1] + ends[4 * e + 3]) / 2) <= ON;
    }
    return new Rim(ends, carried);
  }

  int size() {
    return carried.length;
  }

  double x0(int e) {
    return ends[4 * e];
  }

  double y0(int e) {
    return ends[4 * e + 1];
  }

  double x1(int e) {
    return ends[4 * e + 2];
  }

  double y1(int e) {
    return ends[4 * e + 3];
  }

  boolean isCarried(int e) {
    return carried[e];
  }

  double length(int e) {
    return Math.sqrt((x1(e) - x0(e)) * (x1(e) - x0(e)) + (y1(e) - y0(e)) * (y1(e) - y0(e)));
  }

  /** Distance of a point from an edge. */
  double distance(int e, double x, double y) {
    double dx = x1(e) - x0(e);
    double dy = y1(e) - y0(e);
    double square = dx * dx + dy * dy;
    double t = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - x0(e)) * dx + (y - y0(e)) * dy) / square));
    return Math.hypot(x - x0(e) - t * dx, y - y0(e) - t * dy);
  }

  /** Length of all carried edges, mm. */
  double carriedLength() {
    return carriedLength;
  }

  /** Least and greatest product of the corners with a vector. */
  double[] extent(double x, double y) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ends.length; i += 2) {
      double s = ends[i] * x + ends[i + 1] * y;
      low = Math.min(low, s);
      high = Math.max(high, s);
    }
    return new double[] {low, high};
  }

  /** The longest edges, longest first, at most as many as asked for. */
  int[] longest(int most) {
    return IntStream.range(0, size()).boxed().sorted(Comparator.comparingDouble((Integer e) -> -length(e)))
        .limit(most).mapToInt(e -> e).toArray();
  }
}
