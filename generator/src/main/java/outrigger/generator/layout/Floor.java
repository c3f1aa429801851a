package outrigger.generator.layout;

import java.util.List;

/**
 * A floor between two walls, seen along a way from its first end; whole micrometres, walls rounded inward.
 *
 * @param sections one after the other from 0, none empty
 */
public record Floor(List<Section> sections) {
  private static final int HALF = 2;

  /**
   * A piece of it with straight walls.
   *
   * @param from how far from the first end it begins
   * @param to where it ends
   * @param lowFrom the wall on the right at its beginning
   * @param lowTo the same at its end
   * @param highFrom the wall on the left at its beginning
   * @param highTo the same at its end
   */
  public record Section(long from, long to, long lowFrom, long lowTo, long highFrom, long highTo) {
    long low(long at) {
      return at >= to ? lowTo : lowFrom - Math.floorDiv((lowFrom - lowTo) * (at - from), to - from);
    }

    long high(long at) {
      return at >= to ? highTo : highFrom + Math.floorDiv((highTo - highFrom) * (at - from), to - from);
    }
  }

  public Floor {
    sections = List.copyOf(sections);
    if (sections.isEmpty()) {
      throw new IllegalArgumentException("no sections");
    }
  }

  /** A rectangle with a corner at 0. */
  public static Floor rectangle(long along, long across) {
    return new Floor(List.of(new Section(0, along, 0, 0, across, across)));
  }

  /** How long it is. */
  public long along() {
    return sections.get(sections.size() - 1).to();
  }

  /** Whether walls on both sides are straight all along and the right one lies at 0. */
  boolean isRectangle() {
    return sections.size() == 1 && low(0) == 0 && low(along()) == 0 && high(0) == high(along());
  }

  /** Whether its walls nowhere part again further on, so that all of it lies before whatever lies beyond. */
  boolean onlyNarrows() {
    long low = Long.MIN_VALUE;
    long high = Long.MAX_VALUE;
    for (Section s : sections) {
      if (s.lowFrom < low || s.lowTo < s.lowFrom || s.highFrom > high || s.highTo > s.highFrom) {
        return false;
      }
      low = s.lowTo;
      high = s.highTo;
    }
    return true;
  }

  /** The right wall where it comes in most, from the first end to so far. */
  long low(long at) {
    return Math.max(sections.get(0).lowFrom(), low(0, at));
  }

  /** The left wall where it comes in most, from the first end to so far. */
  long high(long at) {
    return Math.min(sections.get(0).highFrom(), high(0, at));
  }

  /** How far apart its walls are at most, the one where it is out most and the other where it is. */
  long widest() {
    return sections.stream().mapToLong(s -> Math.max(s.highFrom, s.highTo)).max().orElseThrow()
        - sections.stream().mapToLong(s -> Math.min(s.lowFrom, s.lowTo)).min().orElseThrow();
  }

  /** The right wall where it comes in most between two places. */
  long low(long from, long to) {
    long low = Long.MIN_VALUE;
    for (Section s : sections) {
      if (s.from() < to && s.to() > from) {
        low = Math.max(low, Math.max(s.low(Math.max(from, s.from())), s.low(Math.min(to, s.to()))));
      }
    }
    return low;
  }

  /** The left wall where it comes in most between two places. */
  long high(long from, long to) {
    long high = Long.MAX_VALUE;
    for (Section s : sections) {
      if (s.from() < to && s.to() > from) {
        high = Math.min(high, Math.min(s.high(Math.max(from, s.from())), s.high(Math.min(to, s.to()))));
      }
    }
    return high;
  }

  /** Its area at most. */
  double area() {
    double area = 0;
    for (Section s : sections) {
      area += Math.max(0, (double) (s.to() - s.from()) * (high(s.from() + 1) - low(s.from() + 1) + HALF));
    }
    return area;
  }
}
