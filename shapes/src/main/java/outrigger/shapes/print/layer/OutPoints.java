package outrigger.shapes.print.layer;

import java.util.Arrays;
import outrigger.shapes.num.Grid;

/**
 * Points that stand out from the layer below further than the limit lets them, a steep facet under them.
 *
 * <p>A point stands out as far as it lies from the layer below, less what it lies beside the steep facet under it: the
 * layer's middle lies beside what its lower face shows, as where a slope goes on from a ledge. That is looked up late, for
 * the farthest point is found with few of them, and the others are seldom asked for. Not for several threads at a time.
 */
public final class OutPoints {
  /** None at all. */
  static final OutPoints NONE = new OutPoints(Double.POSITIVE_INFINITY, null);
  /** Numbers of a point: its place and how far it lies from the layer below. */
  private static final int WIDTH = 3;

  private final double reach;
  private final SteepUnder under;
  private double[] numbers = new double[0];
  /** How far each stands out; not a number until it is looked up. */
  private double[] outs = new double[0];
  private int count;
  /** The first so many are compared: none of them stands out farther than the farthest. */
  private int compared;
  private double most;
  private int farthest;

  /**
   * None yet.
   *
   * @param reach how far a point may stand out, mm
   */
  OutPoints(double reach, SteepUnder under) {
    this.reach = reach;
    this.under = under;
  }

  /** How far the farthest point stands out, mm; 0 without any. */
  double most() {
    if (compared < count) {
      int likely = compared;
      for (int i = compared + 1; i < count; i++) {
        likely = far(i) > far(likely) ? i : likely;
      }
      compare(likely);
      for (int i = compared; i < count; i++) {
        compare(i);
      }
      compared = count;
    }
    return most;
  }

  /** Keeps a point if it stands out farthest, of equal ones the first. */
  private void compare(int i) {
    if (far(i) < most || far(i) == most && i >= farthest) {
      return;
    }
    double out = out(i);
    if (out > reach && (out > most || out == most && i < farthest)) {
      most = out;
      farthest = i;
    }
  }

  private double far(int i) {
    return numbers[WIDTH * i + 2];
  }

  private double out(int i) {
    if (Double.isNaN(outs[i])) {
      outs[i] = far(i) - under.beside(numbers[WIDTH * i], numbers[WIDTH * i + 1]);
    }
    return outs[i];
  }

  /** None yet, asked for alike. */
  OutPoints others() {
    return new OutPoints(reach, under);
  }

  /** Asks for a point as far as it lies from the layer below. */
  void ask(double x, double y, OutlineGrid below) {
    askOut(x, y, Math.min(below.distance(x, y), Grid.LIMIT_MM));
  }

  /** Asks for a point that is known to lie so far out. */
  void askOut(double x, double y, double far) {
    if (far > reach) {
      makeRoom(count + 1);
      numbers[WIDTH * count] = x;
      numbers[WIDTH * count + 1] = y;
      numbers[WIDTH * count + 2] = far;
      outs[count++] = Double.NaN;
    }
  }

  private void makeRoom(int size) {
    if (size > outs.length) {
      int room = Math.max(size, 2 * outs.length);
      numbers = Arrays.copyOf(numbers, WIDTH * room);
      outs = Arrays.copyOf(outs, room);
    }
  }

  /** x, y of the points, the farthest first. */
  public double[] points() {
    if (most() == 0) {
      return new double[0];
    }
    double[] points = new double[2 * count];
    int n = 0;
    int first = 0;
    for (int i = 0; i < count; i++) {
      if (out(i) > reach) {
        first = i == farthest ? n : first;
        points[n++] = numbers[WIDTH * i];
        points[n++] = numbers[WIDTH * i + 1];
      }
    }
    for (int k = 0; k < 2; k++) {
      points[first + k] = points[k];
      points[k] = numbers[WIDTH * farthest + k];
    }
    return Arrays.copyOf(points, n);
  }

  /** x, y of the farthest point; of no meaning without any. */
  public double[] farthest() {
    most();
    return new double[] {numbers[WIDTH * farthest], numbers[WIDTH * farthest + 1]};
  }

  /** Adds the points of another. */
  void add(OutPoints other) {
    makeRoom(count + other.count);
    System.arraycopy(other.numbers, 0, numbers, WIDTH * count, WIDTH * other.count);
    System.arraycopy(other.outs, 0, outs, count, other.count);
    count += other.count;
  }
}
