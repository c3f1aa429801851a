package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Parallel lines laid across an area in one direction, and points of those that are not held.
 *
 * @param x direction, a unit vector
 * @param y direction
 * @param sums of their lengths
 * @param middle x and y of the middle of the held lines about as long as the longest
 * @param looseEnds x, y of points on lines not held: their free ends and, where both are free, their middles
 * @param looseMiddles of these the middles
 * @param looseLines x, y of both ends of each line not held
 */
record Chords(double x, double y, Beads sums, List<Double> middle, List<Double> looseEnds, List<Double> looseMiddles,
    List<Double> looseLines) {
  /** Lines that differ by so small a share count as alike. */
  private static final double ALIKE = 0.01;
  /** Directions no further apart are one, radians. */
  private static final double SAME = 0.02;
  /** Of so much of an area as this held, no direction need be looked for further. */
  private static final double WHOLE = 0.99;
  /** A direction in which less more is held suits no better: lines are samples and may chance to miss a hole. */
  private static final double CHANCE = 0.025;
  /** Lines end at an edge that they meet at more than this angle, by the sine; others run along it. */
  private static final double ENDS = 0.05;

  Chords {
    middle = List.copyOf(middle);
    looseEnds = List.copyOf(looseEnds);
    looseMiddles = List.copyOf(looseMiddles);
    looseLines = List.copyOf(looseLines);
  }

  /** A line held at both ends: its length, and where its middle lies along and across it. */
  private record Held(double length, double along, double across) {}

  /** Lays the lines. */
  static Chords laid(Rim rim, double x, double y) {
    Cuts cuts = new Cuts(rim, x, y);
    Beads sums = Beads.of(cuts);
    List<Held> held = new ArrayList<>();
    List<Double> ends = new ArrayList<>();
    List<Double> middles = new ArrayList<>();
    List<Double> lineEnds = new ArrayList<>();
    for (int j = 0; j < cuts.lines(); j++) {
      double t = cuts.across(j);
      for (int i = cuts.start[j]; i + 1 < cuts.start[j + 1]; i += 2) {
        double along = (cuts.at[i] + cuts.at[i + 1]) / 2;
        if (cuts.isHeld(i)) {
          held.add(new Held(cuts.at[i + 1] - cuts.at[i], along, t));
          continue;
        }
        for (int end = i; end <= i + 1; end++) {
          List<Double> point = point(x, y, cuts.at[end], t);
          lineEnds.addAll(point);
          ends.addAll(cuts.carried[end] ? List.of() : point);
        }
        if (!cuts.carried[i] && !cuts.carried[i + 1]) {
          ends.addAll(point(x, y, along, t));
          middles.addAll(point(x, y, along, t));
        }
      }
    }
    return new Chords(x, y, sums, middle(held, sums.span(), cuts.apart, x, y), ends, middles, lineEnds);
  }

  /**
   * Where the middle one of the lines about as long as the longest has its middle; of two middle ones next to each other,
   * between.
   */
  private static List<Double> middle(List<Held> lines, double span, double apart, double x, double y) {
    List<Held> longest = lines.stream().filter(line -> line.length >= span * (1 - ALIKE)).toList();
    if (longest.isEmpty()) {
      return List.of(0.0, 0.0);
    }
    Held a = longest.get((longest.size() - 1) / 2);
    Held b = longest.get(longest.size() / 2);
    boolean isNext = Math.abs(a.across - b.across) < 1.5 * apart && Math.abs(a.along - b.along) < span / 2;
    Held other = isNext ? b : a;
    return point(x, y, (a.along + other.along) / 2, (a.across + other.across) / 2);
  }

  private static List<Double> point(double x, double y, double along, double across) {
    return List.of(along * x - across * y, along * y + across * x);
  }

  /** Area under lines held, mm^2. */
  double held() {
    return sums.held();
  }

  /** Share of the area held, 0 to 1. */
  double share() {
    return sums.share();
  }

  /** Length of the longest line held, mm; 0 if there is none. */
  double span() {
    return sums.span();
  }

  /** Whether an edge of the rim is a free one at which lines end. */
  boolean endAt(Rim rim, int e) {
    return !rim.isCarried(e)
        && Math.abs((rim.y1(e) - rim.y0(e)) * x - (rim.x1(e) - rim.x0(e)) * y) > ENDS * rim.length(e);
  }

  /**
   * The best of the directions that suit a rim: along and square to its longest sides and every 15 degrees, then as near
   * to the best of these as a degree.
   */
  static Chords best(Rim rim) {
    double[] angles = directions(rim);
    double at = angles[0];
    if (!rim.mayHold()) {
      return laid(rim, StrictMath.cos(at), StrictMath.sin(at));
    }
    Beads[] all = Arrays.stream(angles).mapToObj(angle -> at(rim, angle)).toArray(Beads[]::new);
    Beads best = all[0];
    for (int i = 1; i < all.length; i++) {
      if (all[i].merit() > best.merit()) {
        best = all[i];
        at = angles[i];
      }
    }
    for (double turn = Math.PI / 24; best.held() > 0 && best.share() < WHOLE && turn > Math.PI / 200; turn /= 2) {
      Beads left = at(rim, at + turn);
      Beads right = at(rim, at - turn);
      boolean toLeft = left.merit() > right.merit();
      if ((toLeft ? left : right).merit() > best.merit()) {
        best = toLeft ? left : right;
        at = toLeft ? at + turn : at - turn;
      }
    }
    double share = best.share() < WHOLE ? best.share() - CHANCE : 1;
    for (int i = 0; i < all.length; i++) {
      if (all[i].share() >= share && all[i].span() < best.span()) {
        best = all[i];
        at = angles[i];
      }
    }
    return laid(rim, StrictMath.cos(at), StrictMath.sin(at));
  }

  private static Beads at(Rim rim, double angle) {
    return Beads.laid(rim, StrictMath.cos(angle), StrictMath.sin(angle));
  }

  /** Taken from the rim itself, so that a turned rim gets turned directions. */
  static double[] directions(Rim rim) {
    int[] longest = rim.longest(4);
    double[] angles = new double[2 * longest.length + 12];
    int n = 0;
    for (int e : longest) {
      double angle = StrictMath.atan2(rim.y1(e) - rim.y0(e), rim.x1(e) - rim.x0(e));
      n = put(angle + Math.PI / 2, angles, n);
      n = put(angle, angles, n);
    }
    for (int i = 1; i < 12; i++) {
      n = put(angles[0] + i * Math.PI / 12, angles, n);
    }
    return Arrays.copyOf(angles, n);
  }

  /** Adds an angle unless one about the same, or half a turn off, is there; returns how many there are. */
  private static int put(double angle, double[] angles, int count) {
    for (int i = 0; i < count; i++) {
      if (isSame(angle, angles[i], SAME)) {
        return count;
      }
    }
    angles[count] = angle;
    return count + 1;
  }

  /** Whether two angles, or one and half a turn on from the other, differ by less than some, all radians. */
  static boolean isSame(double angle, double other, double within) {
    double turns = (angle - other) / Math.PI;
    return Math.abs(turns - Math.rint(turns)) * Math.PI < within;
  }
}
