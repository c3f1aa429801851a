package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.LongPredicate;
import java.util.function.LongUnaryOperator;

/**
 * Places along a floor where a box of one length may begin and over which each wall, where it comes in most along the box,
 * goes one way only; whole micrometres.
 *
 * @param length of the box along the floor
 * @param from the first place
 * @param to the last place
 * @param isLowRising whether the right wall comes in as the box moves on, or stays
 * @param isHighFalling whether the left wall does
 */
record Bay(Floor floor, long length, long from, long to, boolean isLowRising, boolean isHighFalling) {

  /** The right wall where it comes in most along the box. */
  long low(long x) {
    return floor.low(x, x + length);
  }

  /** The left wall where it comes in most along the box. */
  long high(long x) {
    return floor.high(x, x + length);
  }

  /** Whether the walls do not agree which way there is more room. */
  boolean isSkew() {
    return isLowRising != isHighFalling;
  }

  /** First and last of the places from which a box is kept clear of walls, where it lies between two y; empty if none. */
  Optional<Span> clear(Span within, long mostLow, long leastHigh) {
    Span span = new Span(Math.max(from, within.from()), Math.min(to, within.to()));
    return span.first(isLowRising, x -> low(x) <= mostLow).flatMap(s -> s.first(isHighFalling, x -> high(x) >= leastHigh));
  }

  /** The first of the places between which there is nowhere more room. */
  long best(Span within) {
    if (isLowRising) {
      return within.from();
    }
    long low = low(within.to());
    long high = high(within.to());
    return isSkew() ? within.to() : within.first(false, x -> low(x) == low && high(x) == high).orElseThrow().from();
  }

  /** Places from one to another. */
  record Span(long from, long to) {
    /**
     * Those that will do, all of them before the others or all behind.
     *
     * @param isFirst whether before
     */
    private Optional<Span> first(boolean isFirst, LongPredicate willDo) {
      if (from > to || !willDo.test(isFirst ? from : to)) {
        return Optional.empty();
      }
      if (willDo.test(isFirst ? to : from)) {
        return Optional.of(this);
      }
      long good = isFirst ? from : to;
      long bad = isFirst ? to : from;
      while (Math.abs(good - bad) > 1) {
        long middle = Math.floorDiv(good + bad, 2);
        if (willDo.test(middle)) {
          good = middle;
        } else {
          bad = middle;
        }
      }
      return Optional.of(isFirst ? new Span(from, good) : new Span(good, to));
    }
  }

  /** All of a floor's bays for a box of a length, from its first end on; none where it is longer than the floor. */
  static List<Bay> of(Floor floor, long length) {
    List<Bay> bays = new ArrayList<>();
    if (length > floor.along()) {
      return bays;
    }
    List<Long> ends = new ArrayList<>(ends(floor, length));
    long from = ends.get(0);
    int low = 0;
    int high = 0;
    for (int i = 1; i < ends.size(); i++) {
      long at = ends.get(i);
      long before = ends.get(i - 1);
      int lowWay = Long.signum(floor.low(at, at + length) - floor.low(before, before + length));
      int highWay = Long.signum(floor.high(before, before + length) - floor.high(at, at + length));
      boolean goesOn = lowWay * low >= 0 && highWay * high >= 0
          && agrees(low == 0 ? lowWay : low, high == 0 ? highWay : high);
      if (!goesOn) {
        // A jump between two neighbouring places belongs to neither side; else the bay begins where the last ended.
        add(bays, floor, length, from, before, low, high);
        boolean isJump = at == before + 1;
        from = isJump ? at : before;
        low = isJump ? 0 : lowWay;
        high = isJump ? 0 : highWay;
      } else {
        low = low == 0 ? lowWay : low;
        high = high == 0 ? highWay : high;
      }
    }
    add(bays, floor, length, from, ends.get(ends.size() - 1), low, high);
    return bays;
  }

  /** A bay whose walls go different ways is not joined to others. */
  private static boolean agrees(int low, int high) {
    return low * high >= 0;
  }

  private static void add(List<Bay> bays, Floor floor, long length, long from, long to, int low, int high) {
    int way = low != 0 ? low : high;
    bays.add(new Bay(floor, length, from, to, (low == 0 ? way : low) >= 0, (high == 0 ? way : high) >= 0));
  }

  /** Places between which both walls go one way: where an end of the box passes from section to section, and in between. */
  private static TreeSet<Long> ends(Floor floor, long length) {
    long last = floor.along() - length;
    TreeSet<Long> ends = new TreeSet<>(List.of(0L, last));
    for (Floor.Section s : floor.sections()) {
      for (long at : new long[] {s.from(), s.to(), s.from() - length, s.to() - length}) {
        for (long near = at - 1; near <= at + 1; near++) {
          if (near > 0 && near < last) {
            ends.add(near);
          }
        }
      }
    }
    for (long at : List.copyOf(ends)) {
      Long next = ends.higher(at);
      if (next != null && next > at + 1) {
        turns(x -> floor.low(x + length, x + length + 1) - floor.low(x, x + 1), at, next, ends);
        turns(x -> floor.high(x + length, x + length + 1) - floor.high(x, x + 1), at, next, ends);
      }
    }
    return ends;
  }

  /** Where one end of the box begins to count more than the other, between two places, if anywhere. */
  private static void turns(LongUnaryOperator difference, long from, long to, TreeSet<Long> ends) {
    long low = from + 1;
    long high = to - 1;
    int first = Long.signum(difference.applyAsLong(low));
    if (low >= high || first == Long.signum(difference.applyAsLong(high))) {
      return;
    }
    while (high - low > 1) {
      long middle = (low + high) >>> 1;
      if (Long.signum(difference.applyAsLong(middle)) == first) {
        low = middle;
      } else {
        high = middle;
      }
    }
    for (long near = Math.max(from, low - 2); near <= Math.min(to, high + 2); near++) {
      ends.add(near);
    }
  }
}
