package outrigger.generator.layout;

import java.util.List;

/**
 * A floor seen along a way from its first end, never wider further on; whole micrometres.
 *
 * <p>Of walls that widen again only the strip counts that goes on straight: what is asked for is the narrowest so far.
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

  /** The right wall where it comes in most, from the first end to so far. */
  long low(long at) {
    long low = sections.get(0).lowFrom();
    for (Section section : sections) {
      if (section.from() < at) {
        low = Math.max(low, Math.max(section.lowFrom(), section.low(at)));
      }
    }
    return low;
  }

  /** The left wall where it comes in most, from the first end to so far. */
  long high(long at) {
    long high = sections.get(0).highFrom();
    for (Section section : sections) {
      if (section.from() < at) {
        high = Math.min(high, Math.min(section.highFrom(), section.high(at)));
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
