package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.print.slice.FlatBox;

/**
 * The carried lengths of a rim, and the straight ways between them.
 *
 * @param apart the greatest of the distances of each from its nearest, mm
 * @param directions of the shortest ways from each to its nearest ones, those most ways take first, radians
 */
record Holds(double apart, List<Double> directions) {
  /** No more directions are tried: those most ways take. */
  private static final int DIRECTIONS = 32;
  /** Fewer holds are joined whether or not their ways have directions in common. */
  private static final int FEW = 64;
  /** Each is joined to so many. */
  private static final int NEAREST = 3;
  /** Points of each taken at most. */
  private static final int POINTS = 48;
  /** Directions no further apart are one, radians. */
  private static final double SAME = 0.003;
  /** Points nearer than this belong together, mm. */
  private static final double TOUCH = 1e-6;

  Holds {
    directions = List.copyOf(directions);
  }

  static Holds of(Rim rim) {
    List<Run> runs = runs(rim).stream().map(Run::of).sorted(Comparator.comparingDouble(Run::minX)).toList();
    double[] reach = new double[runs.size()];
    for (int i = 0; i < reach.length; i++) {
      reach[i] = Math.max(runs.get(i).maxX(), i == 0 ? Double.NEGATIVE_INFINITY : reach[i - 1]);
    }
    double apart = 0;
    List<double[]> angles = new ArrayList<>();
    for (int i = 0; i < reach.length && reach.length > 1; i++) {
      List<Way> ways = nearest(runs, reach, i);
      apart = Math.max(apart, ways.get(0).length);
      ways.stream().filter(way -> way.length > TOUCH).forEach(way -> {
        add(way.angle, angles);
        add(way.ofMiddles, angles);
      });
    }
    return new Holds(apart, mostTaken(angles, runs.size()));
  }

  /** The ways to the nearest others, nearest first; those are looked at whose boxes lie near enough. */
  private static List<Way> nearest(List<Run> runs, double[] reach, int i) {
    Run run = runs.get(i);
    List<Way> ways = new ArrayList<>();
    for (int j = i + 1; j < runs.size() && runs.get(j).minX() - run.maxX() < farthest(ways); j++) {
      addIfNear(run, runs.get(j), ways);
    }
    for (int j = i - 1; j >= 0 && run.minX() - reach[j] < farthest(ways); j--) {
      addIfNear(run, runs.get(j), ways);
    }
    return ways;
  }

  private static double farthest(List<Way> ways) {
    return ways.size() < NEAREST ? Double.POSITIVE_INFINITY : ways.get(NEAREST - 1).length;
  }

  private static void addIfNear(Run run, Run other, List<Way> ways) {
    if (run.apart(other) < farthest(ways)) {
      ways.add(Way.between(run.points, other.points));
      ways.sort(Comparator.comparingDouble(Way::length));
      ways.subList(Math.min(NEAREST, ways.size()), ways.size()).clear();
    }
  }

  /** One run of carried edges, x, y of its points, with the box round it. */
  private record Run(double[] points, FlatBox box) {
    static Run of(double[] p) {
      FlatBox box = FlatBox.NONE;
      for (int i = 0; i < p.length; i += 2) {
        box = box.with(p[i], p[i + 1]);
      }
      return new Run(p, box);
    }

    double minX() {
      return box.minX();
    }

    double maxX() {
      return box.maxX();
    }

    /** How far the boxes lie apart. */
    double apart(Run other) {
      return Math.hypot(Math.max(0, Math.max(minX() - other.maxX(), other.minX() - maxX())),
          Math.max(0, Math.max(box.minY() - other.box.maxY(), other.box.minY() - box.maxY())));
    }
  }

  /** Counts an angle among angles and their counts, as one that is there already if it is the same or half a turn off. */
  private static void add(double angle, List<double[]> angles) {
    for (double[] other : angles) {
      if (Chords.isSame(angle, other[0], SAME)) {
        other[1]++;
        return;
      }
    }
    angles.add(new double[] {angle, 1});
  }

  /** The angles most ways take; none of many holds strewn about, whose ways have no direction in common. */
  private static List<Double> mostTaken(List<double[]> angles, int holds) {
    List<double[]> most = angles.stream().sorted((a, b) -> Double.compare(b[1], a[1])).limit(DIRECTIONS).toList();
    double all = angles.stream().mapToDouble(angle -> angle[1]).sum();
    double taken = most.stream().mapToDouble(angle -> angle[1]).sum();
    return holds > FEW && taken < all / 2 ? List.of() : most.stream().map(angle -> angle[0]).toList();
  }

  /** x, y of the points of each run of carried edges. */
  private static List<double[]> runs(Rim rim) {
    List<double[]> runs = new ArrayList<>();
    int first = 0;
    for (int from = 0; from < rim.size();) {
      int to = from;
      while (to < rim.size() && rim.isCarried(to) == rim.isCarried(from) && (to == from || goesOn(rim, to - 1, to))) {
        to++;
      }
      if (rim.isCarried(from)) {
        double[] run = points(rim, from, to);
        boolean closes = from > first && goesOn(rim, to - 1, first) && rim.isCarried(first) && !runs.isEmpty();
        if (closes) {
          int at = firstOf(runs, rim.x0(first), rim.y0(first));
          runs.set(at, join(run, runs.get(at)));
        } else {
          runs.add(run);
        }
      }
      first = to < rim.size() && !goesOn(rim, to - 1, to) ? to : first;
      from = to;
    }
    return runs;
  }

  private static int firstOf(List<double[]> runs, double x, double y) {
    for (int i = runs.size() - 1; i > 0; i--) {
      if (runs.get(i)[0] == x && runs.get(i)[1] == y) {
        return i;
      }
    }
    return 0;
  }

  private static boolean goesOn(Rim rim, int e, int next) {
    return rim.x1(e) == rim.x0(next) && rim.y1(e) == rim.y0(next);
  }

  private static double[] points(Rim rim, int from, int to) {
    int step = Math.max(1, (to - from) / POINTS);
    double[] points = new double[2 * (to - from) + 2];
    int n = 0;
    for (int e = from; e < to; e += step) {
      points[n++] = rim.x0(e);
      points[n++] = rim.y0(e);
    }
    points[n++] = rim.x1(to - 1);
    points[n++] = rim.y1(to - 1);
    return Arrays.copyOf(points, n);
  }

  private static double[] join(double[] a, double[] b) {
    double[] both = Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, both, a.length, b.length);
    return both;
  }

  /**
   * The shortest way from one run's points and edges to the other's, and the direction from middle to middle.
   *
   * @param length mm
   * @param angle radians
   * @param ofMiddles radians
   */
  private record Way(double length, double angle, double ofMiddles) {
    static Way between(double[] a, double[] b) {
      double middles = StrictMath.atan2(mean(b, 1) - mean(a, 1), mean(b, 0) - mean(a, 0));
      Way forth = from(a, b, middles);
      Way back = from(b, a, middles);
      return forth.length <= back.length ? forth : back;
    }

    private static double mean(double[] points, int axis) {
      double sum = 0;
      for (int i = axis; i < points.length; i += 2) {
        sum += points[i];
      }
      return 2 * sum / points.length;
    }

    private static Way from(double[] points, double[] run, double middles) {
      Way best = new Way(Double.POSITIVE_INFINITY, 0, middles);
      for (int i = 0; i < points.length; i += 2) {
        for (int j = 0; j + 3 < run.length; j += 2) {
          double dx = run[j + 2] - run[j];
          double dy = run[j + 3] - run[j + 1];
          double px = points[i] - run[j];
          double py = points[i + 1] - run[j + 1];
          double square = dx * dx + dy * dy;
          double t = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
          double length = Math.hypot(t * dx - px, t * dy - py);
          if (length < best.length) {
            best = new Way(length, StrictMath.atan2(t * dy - py, t * dx - px), middles);
          }
        }
      }
      return best;
    }
  }
}
