package outrigger.generator.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToLongFunction;
import java.util.stream.Stream;

/**
 * Some boxes with what has been settled about which lies before or beside which, and about where each begins; whole
 * micrometres.
 *
 * <p>Bounds are drawn in until nothing more follows from them. Then a box whose bay is settled lies nowhere better than at
 * the end of it that leaves most room, as far to the right as goes; one whose bay is not is tried at its first place.
 */
final class Knot {
  private static final int LOOSE = 0;
  private static final int BEFORE = 1;
  private static final int BESIDE = 2;

  private final List<Narrows.Turned> boxes;
  /** What holds of box i and box j: i ends before j begins, or i lies to the right of j. */
  private final int[][] order;
  private final long[] from;
  private final long[] to;
  /** At best, wherever it begins: as far right as it goes, and as far left. */
  private final long[] right;
  private final long[] left;
  /** The bay in which the first place lies. */
  private final int[] firstBay;
  /** Where it is tried. */
  private final long[] x;
  private final long[] y;

  private Knot(List<Narrows.Turned> boxes, int[][] order, long[] from, long[] to) {
    this.boxes = boxes;
    this.order = order;
    this.from = from;
    this.to = to;
    this.right = new long[from.length];
    this.left = new long[from.length];
    this.firstBay = new int[from.length];
    this.x = new long[from.length];
    this.y = new long[from.length];
  }

  /** No boxes. */
  static Knot none() {
    return new Knot(List.of(), new int[0][0], new long[0], new long[0]);
  }

  /** The same with one box more, if it can be. */
  Optional<Knot> with(Narrows.Turned box) {
    int n = boxes.size();
    if (box.bays().isEmpty()) {
      return Optional.empty();
    }
    Knot more = new Knot(Stream.concat(boxes.stream(), Stream.of(box)).toList(), new int[n + 1][n + 1],
        Arrays.copyOf(from, n + 1), Arrays.copyOf(to, n + 1));
    for (int i = 0; i < n; i++) {
      System.arraycopy(order[i], 0, more.order[i], 0, n);
    }
    more.from[n] = box.bays().get(0).from();
    more.to[n] = box.bays().get(box.bays().size() - 1).to();
    return more.drawnIn();
  }

  /** The same with box i ending before box j begins, if it can be. */
  Optional<Knot> before(int i, int j) {
    return ordered(i, j, BEFORE);
  }

  /** The same with box i to the right of box j, if it can be. */
  Optional<Knot> beside(int i, int j) {
    return ordered(i, j, BESIDE);
  }

  private Optional<Knot> ordered(int i, int j, int what) {
    Knot more = copy();
    more.order[i][j] = what;
    return more.drawnIn();
  }

  /** The same with a box beginning between two places only, if it can be. */
  Optional<Knot> within(int i, long first, long last) {
    Knot more = copy();
    more.from[i] = Math.max(from[i], first);
    more.to[i] = Math.min(to[i], last);
    return more.drawnIn();
  }

  private Knot copy() {
    int[][] same = new int[order.length][];
    for (int i = 0; i < same.length; i++) {
      same[i] = order[i].clone();
    }
    return new Knot(boxes, same, from.clone(), to.clone());
  }

  private Optional<Knot> drawnIn() {
    for (boolean moved = true; moved;) {
      moved = along();
      for (int i = 0; i < from.length; i++) {
        if (from[i] > to[i]) {
          return Optional.empty();
        }
        atBest(i);
      }
      if (!across()) {
        return Optional.empty();
      }
      for (int i = 0; i < from.length; i++) {
        moved |= walls(i);
      }
    }
    tryPlaces();
    return Optional.of(this);
  }

  /** Draws in where boxes begin by those before and behind them. */
  private boolean along() {
    boolean any = false;
    for (boolean moved = true; moved;) {
      moved = false;
      for (int i = 0; i < order.length; i++) {
        for (int j = 0; j < order.length; j++) {
          if (order[i][j] == BEFORE && from[j] < from[i] + length(i)) {
            from[j] = from[i] + length(i);
            moved |= from[j] <= to[j];
            any = true;
          }
          if (order[i][j] == BEFORE && to[i] > to[j] - length(i)) {
            to[i] = to[j] - length(i);
            moved |= from[i] <= to[i];
            any = true;
          }
        }
      }
    }
    return any;
  }

  private void atBest(int i) {
    right[i] = Long.MAX_VALUE;
    left[i] = Long.MIN_VALUE;
    for (Bay bay : boxes.get(i).bays()) {
      long first = Math.max(from[i], bay.from());
      long last = Math.min(to[i], bay.to());
      if (first <= last) {
        right[i] = Math.min(right[i], bay.low(bay.isLowRising() ? first : last));
        left[i] = Math.max(left[i], bay.high(bay.isHighFalling() ? first : last) - width(i));
      }
    }
  }

  /** Draws in how far right and left boxes may lie by those beside them; false where one finds no room. */
  private boolean across() {
    for (boolean moved = true; moved;) {
      moved = false;
      for (int i = 0; i < order.length; i++) {
        if (right[i] > left[i]) {
          return false;
        }
        for (int j = 0; j < order.length; j++) {
          if (order[i][j] == BESIDE && (right[j] < right[i] + width(i) || left[i] > left[j] - width(i))) {
            right[j] = Math.max(right[j], right[i] + width(i));
            left[i] = Math.min(left[i], left[j] - width(i));
            moved = true;
          }
        }
      }
    }
    return true;
  }

  /** Draws in where a box begins by where the walls leave it room. */
  private boolean walls(int i) {
    List<Bay> bays = boxes.get(i).bays();
    Bay.Span span = new Bay.Span(from[i], to[i]);
    long first = from[i];
    from[i] = to[i] + 1;
    long last = to[i];
    to[i] = first - 1;
    for (int bay = 0; bay < bays.size() && from[i] > last; bay++) {
      Optional<Bay.Span> clear = bays.get(bay).clear(span, left[i], right[i] + width(i));
      firstBay[i] = bay;
      from[i] = clear.map(Bay.Span::from).orElse(from[i]);
    }
    for (int bay = bays.size() - 1; bay >= firstBay[i] && to[i] < first; bay--) {
      to[i] = bays.get(bay).clear(span, left[i], right[i] + width(i)).map(Bay.Span::to).orElse(to[i]);
    }
    return from[i] != first || to[i] != last;
  }

  /** Every box at the first place that is best for it, further on where one before it asks for that. */
  private void tryPlaces() {
    for (int i = 0; i < x.length; i++) {
      x[i] = isSettled(i) ? bay(i).best(new Bay.Span(from[i], to[i])) : from[i];
    }
    push(BEFORE, x, i -> length(i));
    for (int i = 0; i < y.length; i++) {
      y[i] = boxes.get(i).low(x[i]);
    }
    push(BESIDE, y, i -> width(i));
  }

  private void push(int what, long[] places, IntToLongFunction size) {
    for (int turn = 0; turn < places.length; turn++) {
      for (int i = 0; i < places.length; i++) {
        for (int j = 0; j < places.length; j++) {
          if (order[i][j] == what) {
            places[j] = Math.max(places[j], places[i] + size.applyAsLong(i));
          }
        }
      }
    }
  }

  int size() {
    return boxes.size();
  }

  Narrows.Turned box(int i) {
    return boxes.get(i);
  }

  long length(int i) {
    return boxes.get(i).length();
  }

  long width(int i) {
    return boxes.get(i).width();
  }

  /** The first bay in which a box may lie. */
  Bay bay(int i) {
    return boxes.get(i).bays().get(firstBay[i]);
  }

  /** Whether a box may lie in one bay only. */
  boolean isSettled(int i) {
    return to[i] <= bay(i).to();
  }

  /** Where a box is tried. */
  long x(int i) {
    return x[i];
  }

  /** As far to the right as it goes there. */
  long y(int i) {
    return y[i];
  }

  /** Whether it is clear of the left wall where it is tried. */
  boolean isClear(int i) {
    return y[i] + width(i) <= boxes.get(i).high(x[i]);
  }

  boolean isOrdered(int i, int j) {
    return order[i][j] != LOOSE || order[j][i] != LOOSE;
  }

  boolean isBefore(int i, int j) {
    return order[i][j] == BEFORE;
  }

  long from(int i) {
    return from[i];
  }

  long to(int i) {
    return to[i];
  }
}
