package outrigger.shapes.print.layer;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.profile.Section;

/**
 * Lays lines no longer than a bound over an area: the first from hold to hold of what is below, others across on these, as
 * over a plate on four legs, which is laid from leg to leg along its edges and then between these edges.
 *
 * <p>Each round takes the direction that lays most. No line lies on one of the others: sag would add up.
 */
final class Laying {
  /** More pieces than this are not looked into: own choice. */
  private static final int MOST_PIECES = 4000;
  /** Directions are chosen with corners left out that lie nearer to their line, mm. */
  private static final double COARSE = 0.02;
  /** Less than this part of a piece is not worth a round: own choice. */
  private static final double LITTLE = 0.01;
  /** Pieces smaller than this are left by rounding, mm^2. */
  private static final double LEAST_AREA = 1e-3;
  /** Distance between points asked, mm, and how many on a line at most. */
  private static final double APART = 0.5;
  private static final int MOST_POINTS = 64;

  private final OutlineGrid below;
  private final double most;
  private final LayingLimits limits;
  private final List<double[]> outlines = new ArrayList<>();
  private final List<Rim> left = new ArrayList<>();
  private final OutlineGrid first;
  private final OutlineGrid laid;
  private double span;
  private double[] along = new double[2];
  private double[] middle = new double[2];

  /** Something to be done for a place, and how far it lies from what carries there. */
  interface Place {
    void take(double x, double y, double out);
  }

  /**
   * Lays lines over a piece.
   *
   * @param directions from hold to hold, radians
   * @param most length of the longest line, mm
   */
  Laying(Section piece, List<Double> directions, OutlineGrid below, double most, LayingLimits limits) {
    this.below = below;
    this.most = most;
    this.limits = limits;
    double[] angles = directions.stream().mapToDouble(angle -> angle).toArray();
    List<Section> across = new ArrayList<>();
    Deque<Section> open = new ArrayDeque<>(List.of(piece));
    for (int n = 0; !open.isEmpty(); n++) {
      Section next = open.remove();
      Optional<List<Section>> rest = n < MOST_PIECES ? lay(Rim.of(next, below), next, angles) : Optional.empty();
      rest.ifPresentOrElse(open::addAll, () -> across.add(next));
    }
    first = new OutlineGrid(outlines);
    open.addAll(across);
    for (int n = 0; !open.isEmpty(); n++) {
      Section next = open.remove();
      Rim rim = Rim.of(next, below, first);
      Optional<List<Section>> rest = n < MOST_PIECES ? lay(rim, next, Chords.directions(rim)) : Optional.empty();
      rest.ifPresentOrElse(open::addAll, () -> left.add(rim));
    }
    laid = new OutlineGrid(outlines);
  }

  /** Length of the longest line laid, mm; 0 if there is none. */
  double span() {
    return span;
  }

  /** Its direction, a unit vector. */
  double[] along() {
    return along;
  }

  /** Its middle. */
  double[] middle() {
    return middle;
  }

  /** What is left of a piece; nothing if no line is laid. */
  private Optional<List<Section>> lay(Rim rim, Section piece, double... angles) {
    double area = LITTLE * piece.area();
    double[] best = new double[2];
    Rim coarse = rim.simplified(COARSE);
    for (double angle : angles) {
      double x = StrictMath.cos(angle);
      double y = StrictMath.sin(angle);
      double covered = Strips.laid(coarse, x, y, most + COARSE, limits.narrowest()).stream()
          .mapToDouble(Strips.Strip::area).sum();
      if (covered > area * (1 + LITTLE)) {
        area = covered;
        best = new double[] {x, y};
      }
    }
    List<Strips.Strip> strips = best[0] == 0 && best[1] == 0 ? List.of()
        : Strips.laid(rim, best[0], best[1], most, limits.narrowest());
    List<double[]> covered = new ArrayList<>();
    for (Strips.Strip strip : strips) {
      covered.add(strip.outline(best[0], best[1]));
      if (strip.longest() > span) {
        span = strip.longest();
        along = best;
        middle = strip.middle(best[0], best[1]);
      }
    }
    outlines.addAll(covered);
    return strips.isEmpty() ? Optional.empty()
        : Optional.of(piece.minus(Section.of(covered), limits.snap()).pieces(LEAST_AREA));
  }

  /** The pieces left, their edges carried by lines or by what is below, or free. */
  List<Rim> left() {
    return left;
  }

  /** Gives places in one of the pieces left, the farthest out among them. */
  void forEachLeft(Rim rim, Place place) {
    onFreeEdges(rim, (x, y, out) -> place.take(x, y, Math.min(out, laid.distance(x, y))));
    Cuts.alongX(rim, (from, to, y) -> {
      inside(from, to, y, place);
      return true;
    });
  }

  private void inside(double from, double to, double y, Place place) {
    int steps = (int) Math.min(MOST_POINTS, Math.max(1, Math.ceil((to - from) / APART)));
    for (int i = 0; i < steps; i++) {
      double x = from + (to - from) * (i + 0.5) / steps;
      place.take(x, y, Math.min(below.distance(x, y), laid.distance(x, y)));
    }
  }

  /** Gives places on the edges of holes: lines laid across round these lie in the air, those from hold to hold do not. */
  void forEachOnFreeHoles(Rim rim, Place place) {
    onFreeEdges(rim.freeHoles(), (x, y, out) -> place.take(x, y, Math.min(out, first.distance(x, y))));
  }

  private void onFreeEdges(Rim rim, Place place) {
    FreeEdges.forEachPoint(rim, 2, (x, y) -> place.take(x, y, below.distance(x, y)));
  }
}
