package outrigger.shapes.print.layer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import outrigger.shapes.profile.Section;

/**
 * The span of an area that may be held in several places: the least length of lines that lay it, or as much of it as can be
 * laid, some of them on others.
 */
final class Spans {
  /** Rims of more edges are not looked into: own choice. */
  private static final int MOST_EDGES = 4000;
  /** Spans are found as near as this, mm: own choice, far below what a printer can tell. */
  private static final double NEAR = 0.02;
  /** What is left may stand out further by this, mm, if the span is less for it. */
  private static final double ALIKE = 0.02;
  /** And by this part of itself, if the span is within the limit for it. */
  private static final double WORTH = 0.1;

  private final Section piece;
  private final Holds holds;
  private final OutlineGrid below;
  private final LayingLimits limits;
  private final ToDoubleFunction<Laying> depth;

  private Spans(Section piece, Holds holds, OutlineGrid below, LayingLimits limits, ToDoubleFunction<Laying> depth) {
    this.piece = piece;
    this.holds = holds;
    this.below = below;
    this.limits = limits;
    this.depth = depth;
  }

  /**
   * The way to lay a piece with the shortest lines.
   *
   * @param known length of lines with which it may be laid, mm; 0 if there is none
   * @param depth how far what is left stands out, mm
   */
  static Optional<Laying> shortest(Section piece, Rim rim, OutlineGrid below, double known, LayingLimits limits,
      ToDoubleFunction<Laying> depth) {
    if (rim.size() > MOST_EDGES || rim.carriedLength() == 0) {
      return Optional.empty();
    }
    Holds holds = Holds.of(rim);
    return holds.directions().isEmpty() ? Optional.empty()
        : Optional.of(new Spans(piece, holds, below, limits, depth).seek(known));
  }

  /** A piece held in one place, as by a wall round three sides of it, laid in the direction known to suit. */
  static Optional<Laying> along(Section piece, Rim rim, OutlineGrid below, Chords chords, LayingLimits limits) {
    double[] across = rim.extent(-chords.y(), chords.x());
    // the longest line may lie between two of those known
    double most = chords.span() + 2 * (across[1] - across[0]) / Cuts.lines(across[1] - across[0]);
    return rim.size() > MOST_EDGES ? Optional.empty()
        : Optional.of(new Laying(piece, List.of(StrictMath.atan2(chords.y(), chords.x())), below, most, limits));
  }

  private Laying seek(double known) {
    Laying near = laid(holds.apart() + NEAR);
    double nearDepth = depth.applyAsDouble(near);
    if (nearDepth <= limits.ledge()) {
      return near.span() <= limits.bridge() ? near
          : shortest(List.of(near), new double[] {nearDepth}, limits.ledge());
    }
    Laying within = laid(limits.bridge());
    double withinDepth = depth.applyAsDouble(within);
    if (withinDepth <= limits.ledge()) {
      return within;
    }
    List<Laying> tried = List.of(near, laid(known + NEAR), laid(Double.MAX_VALUE));
    double[] depths = {nearDepth, depth.applyAsDouble(tried.get(1)), depth.applyAsDouble(tried.get(2))};
    double least = Arrays.stream(depths).min().orElse(0);
    double allowed = Math.max(least + ALIKE, limits.ledge());
    if (near.span() <= limits.bridge() && nearDepth <= allowed) {
      return near;
    }
    return within.span() > 0 && withinDepth <= (1 + WORTH) * least ? within : shortest(tried, depths, allowed);
  }

  /** The shortest lines, and as short ones as will do. */
  private Laying shortest(List<Laying> tried, double[] depths, double allowed) {
    Laying best = null;
    for (int i = 0; i < depths.length; i++) {
      if (depths[i] <= allowed && (best == null || tried.get(i).span() < best.span())) {
        best = tried.get(i);
      }
    }
    double low = 0;
    while (best.span() - low > NEAR) {
      double middle = (low + best.span()) / 2;
      Laying laying = laid(middle);
      if (depth.applyAsDouble(laying) <= allowed) {
        best = laying;
      } else {
        low = middle;
      }
    }
    return best;
  }

  private Laying laid(double most) {
    return new Laying(piece, holds.directions(), below, most, limits);
  }
}
