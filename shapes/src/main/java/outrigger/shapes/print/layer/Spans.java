package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import outrigger.shapes.profile.Section;

/**
 * The span of an area that may be held in several places: the least length of lines that lay it, or as much of it as can be
 * laid, some of them on others.
 */
final class Spans {
  /** Rims of more edges are not looked into. */
  private static final int MOST_EDGES = 1500;
  /** Spans are found as near as this, mm. */
  private static final double NEAR = 0.02;
  /** What is left may stand out further by this, mm, if the span is less for it. */
  private static final double ALIKE = 0.02;

  private final Section piece;
  private final Holds holds;
  private final OutlineGrid below;
  private final double narrowest;
  private final double snap;
  private final ToDoubleFunction<Laying> depth;
  private Laying best;

  private Spans(Section piece, Holds holds, OutlineGrid below, double narrowest, double snap,
      ToDoubleFunction<Laying> depth) {
    this.piece = piece;
    this.holds = holds;
    this.below = below;
    this.narrowest = narrowest;
    this.snap = snap;
    this.depth = depth;
  }

  /**
   * The way to lay a piece with the shortest lines.
   *
   * @param known length of lines with which it may be laid, mm; 0 if there is none
   * @param ledge what is left may stand out so far, mm
   * @param depth how far what is left stands out, mm
   */
  static Optional<Laying> shortest(Section piece, Rim rim, OutlineGrid below, double known, double ledge,
      double narrowest, double snap, ToDoubleFunction<Laying> depth) {
    if (rim.size() > MOST_EDGES || rim.carriedLength() == 0) {
      return Optional.empty();
    }
    Holds holds = Holds.of(rim);
    return holds.directions().isEmpty() ? Optional.empty()
        : Optional.of(new Spans(piece, holds, below, narrowest, snap, depth).seek(known, ledge));
  }

  /** A piece held in one place, as by a wall round three sides of it, laid in the direction known to suit. */
  static Optional<Laying> along(Section piece, Rim rim, OutlineGrid below, Chords chords, double narrowest, double snap) {
    double[] across = rim.extent(-chords.y(), chords.x());
    // the longest line may lie between two of those known
    double most = chords.span() + 2 * (across[1] - across[0]) / Beads.lines(across[1] - across[0]);
    return rim.size() > MOST_EDGES ? Optional.empty() : Optional.of(
        new Laying(piece, List.of(StrictMath.atan2(chords.y(), chords.x())), below, most, narrowest, snap));
  }

  private Laying seek(double known, double ledge) {
    double least = Double.POSITIVE_INFINITY;
    List<Laying> tried = new ArrayList<>();
    List<Double> depths = new ArrayList<>();
    for (double most : new double[] {holds.apart() + NEAR, known + NEAR, Double.MAX_VALUE}) {
      Laying laying = new Laying(piece, holds.directions(), below, most, narrowest, snap);
      tried.add(laying);
      depths.add(depth.applyAsDouble(laying));
      least = Math.min(least, depths.get(depths.size() - 1));
    }
    double allowed = Math.max(least + ALIKE, ledge);
    for (int i = 0; i < tried.size(); i++) {
      if (depths.get(i) <= allowed && (best == null || tried.get(i).span() < best.span())) {
        best = tried.get(i);
      }
    }
    double low = 0;
    while (best.span() - low > NEAR) {
      double middle = (low + best.span()) / 2;
      Laying laying = new Laying(piece, holds.directions(), below, middle, narrowest, snap);
      if (depth.applyAsDouble(laying) <= allowed) {
        best = laying;
      } else {
        low = middle;
      }
    }
    return best;
  }
}
