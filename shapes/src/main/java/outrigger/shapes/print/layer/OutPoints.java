package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import outrigger.shapes.num.Grid;

/** Points that stand out from the layer below further than the limit lets them, a steep facet under them. */
final class OutPoints {
  private final double reach;
  private final List<Double> points = new ArrayList<>();
  private final SteepUnder under;
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
    return most;
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
    // the layer's middle lies beside what its lower face shows, as where a slope goes on from a ledge
    double out = far <= reach ? 0 : far - under.beside(x, y);
    if (out <= reach) {
      return;
    }
    if (out > most) {
      most = out;
      farthest = points.size();
    }
    points.add(x);
    points.add(y);
  }

  /** x, y of the points, the farthest first. */
  List<Double> points() {
    if (!points.isEmpty()) {
      Collections.swap(points, 0, farthest);
      Collections.swap(points, 1, farthest + 1);
      farthest = 0;
    }
    return points;
  }

  /** Adds the points of another. */
  void add(OutPoints other) {
    farthest = other.most > most ? points.size() + other.farthest : farthest;
    most = Math.max(most, other.most);
    points.addAll(other.points);
  }
}
