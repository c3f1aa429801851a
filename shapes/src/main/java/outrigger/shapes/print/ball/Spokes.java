package outrigger.shapes.print.ball;

import outrigger.shapes.num.Grid;
import outrigger.shapes.print.facet.Vec;

/**
 * Unit vectors from the places a ball touches to its centre, and the pull of them all: the point closest to the origin
 * in the convex hull of the vectors.
 *
 * <p>The pull is the direction in which the distance from the surface grows fastest, and its length is how fast: 1 over
 * a flat face, sin(a/2) in an edge of inner angle a, 0 between parallel faces (A. Lieutier, Any open bounded subset of
 * R^n has the same homotopy type as its medial axis, 2004).
 */
final class Spokes {
  /** Cosine of a thousandth of a radian: vectors no farther apart are one. */
  private static final double SAME = 1 - 5e-7;
  /** Products of unit vectors that differ by less are equal. */
  private static final double ROUNDING = 1e-10;
  /** Parts of the nearer distance: by how much a place beside is farther away, and how far it lies off the plane. */
  private static final double FARTHER = 1 + 2e-4;
  private static final double PLANE = 1e-3;
  /** Two corners of one face lie no farther off it than this after rounding to the grid, mm. */
  private static final double ROUNDED = 2.0 / Grid.PER_MM;
  /** tan 3 degrees: facets of one face lie no farther off each other's planes, for a way along these. */
  private static final double FOLD = 0.0524;
  /** Vectors tried one after another for the pull, at most. */
  private static final int ROUNDS = 60;
  /** Vectors taken at most. */
  private static final int MOST = 160;
  /** What standing along the wish weighs in choosing a pair, beside standing against each other. */
  private static final double WISH = 0.1;

  /** Three numbers a vector. */
  private final double[] all = new double[3 * MOST];
  private final double[] distances = new double[MOST];
  private final boolean[] square = new boolean[MOST];
  private int count;
  private int first;
  private int second;
  /** The vectors whose hull is looked at, and which of all they are. */
  private final Vec[] active = new Vec[4];
  private final int[] actives = new int[4];
  private int activeCount;
  private Vec best = new Vec(0, 0, 0);

  void clear() {
    count = 0;
  }

  /** Whether there is none. */
  boolean isEmpty() {
    return count == 0;
  }

  /** Whether no more are taken. */
  boolean isFull() {
    return count == MOST;
  }

  /**
   * Adds a unit vector, how far away the place touched lies, mm, and whether its facet is touched squarely there; one
   * within a thousandth of a radian of another, or one beyond the first {@value #MOST}, is left out.
   */
  void add(double vx, double vy, double vz, double distance, boolean isSquare) {
    for (int i = 0; i < count; i++) {
      if (product(i, vx, vy, vz) > SAME) {
        square[i] |= isSquare;
        return;
      }
    }
    if (count < MOST) {
      distances[count] = distance;
      square[count] = isSquare;
      all[3 * count] = vx;
      all[3 * count + 1] = vy;
      all[3 * count + 2] = vz;
      count++;
    }
  }

  /**
   * Leaves out places on the plane that touches the ball at a nearer one: these are the borders of facets beside that one,
   * near enough to count, and no contacts. In a small ball they would lean against each other where nothing holds it.
   */
  void dropBeside() {
    boolean[] beside = new boolean[count];
    for (int i = 0; i < count; i++) {
      beside[i] = isBeside(i);
    }
    int kept = 0;
    for (int i = 0; i < beside.length; i++) {
      if (!beside[i]) {
        distances[kept] = distances[i];
        square[kept] = square[i];
        System.arraycopy(all, 3 * i, all, 3 * kept++, 3);
      }
    }
    count = kept;
  }

  /** Whether the plane that touches the ball at another place, a nearer one or one touched squarely, holds this one. */
  private boolean isBeside(int i) {
    for (int j = 0; j < count; j++) {
      double cosine = product(j, all[3 * i], all[3 * i + 1], all[3 * i + 2]);
      double off = Math.abs(distances[i] * cosine - distances[j]);
      if (off < PLANE * distances[j] && distances[i] > distances[j] * FARTHER) {
        return true;
      }
      if (square[j] && !square[i] && off < ROUNDED + FOLD * distances[i] * Math.sqrt(Math.max(0, 1 - cosine * cosine))) {
        return true;
      }
    }
    return false;
  }

  private double product(int i, double x, double y, double z) {
    return all[3 * i] * x + all[3 * i + 1] * y + all[3 * i + 2] * z;
  }

  private Vec vector(int i) {
    return new Vec(all[3 * i], all[3 * i + 1], all[3 * i + 2]);
  }

  /** The pull; nothing added, nothing pulls. */
  Vec pull() {
    if (count == 0) {
      return new Vec(0, 0, 0);
    }
    activeCount = 0;
    activate(0);
    best = active[0];
    for (int i = 0; i < ROUNDS; i++) {
      int next = lowest();
      if (product(next, best.x(), best.y(), best.z()) >= best.dot(best) - ROUNDING) {
        return best;
      }
      if (activeCount == active.length || isActive(next)) {
        return new Vec(0, 0, 0);
      }
      activate(next);
      reduce();
    }
    return best;
  }

  private void activate(int i) {
    actives[activeCount] = i;
    active[activeCount++] = vector(i);
  }

  /** Seeks the two that stand most against each other; of about equal pairs, the one most along a wish. */
  void seekPair(Vec wish) {
    double most = -1;
    double wx = wish.x();
    double wy = wish.y();
    double wz = wish.z();
    for (int i = 0; i < count; i++) {
      double x = all[3 * i];
      double y = all[3 * i + 1];
      double z = all[3 * i + 2];
      for (int j = 0, o = 0; j < i; j++, o += 3) {
        double dx = x - all[o];
        double dy = y - all[o + 1];
        double dz = z - all[o + 2];
        double score = dx * dx + dy * dy + dz * dz + WISH * Math.abs(dx * wx + dy * wy + dz * wz);
        if (score > most) {
          most = score;
          first = i;
          second = j;
        }
      }
    }
  }

  /** Unit vector along which the pair holds the ball. */
  Vec across() {
    return vector(first).minus(vector(second)).unit();
  }

  /** Whether the two of the pair alone hold the ball. */
  boolean pairHolds(double held) {
    return pairGrowth() < held;
  }

  /** How fast the distance from the pair grows at most, mm a mm. */
  double pairGrowth() {
    return vector(first).plus(vector(second), 1).length() / 2;
  }

  /** From one side of the pair to the other by way of the centre, mm. */
  double pairWidth() {
    return distances[first] + distances[second];
  }

  /** Middle between the two places touched, seen from the centre. */
  Vec pairMiddle() {
    return vector(first).times(-distances[first] / 2).plus(vector(second), -distances[second] / 2);
  }

  private int lowest() {
    int lowest = 0;
    double least = Double.POSITIVE_INFINITY;
    double x = best.x();
    double y = best.y();
    double z = best.z();
    for (int i = 0; i < count; i++) {
      double product = product(i, x, y, z);
      if (product < least) {
        least = product;
        lowest = i;
      }
    }
    return lowest;
  }

  /** An active vector that lies lower than the best point of its own hull's faces: the hull holds the origin. */
  private boolean isActive(int v) {
    for (int i = 0; i < activeCount; i++) {
      if (actives[i] == v) {
        return true;
      }
    }
    return false;
  }

  /** Finds the best point over faces, edges and corners of the active hull and keeps its corners alone. */
  private void reduce() {
    double least = Double.POSITIVE_INFINITY;
    int kept = 0;
    for (int set = 1; set < 1 << activeCount; set++) {
      Vec p = Integer.bitCount(set) > 3 ? null : closest(set);
      if (p != null && p.dot(p) < least) {
        least = p.dot(p);
        best = p;
        kept = set;
      }
    }
    int n = 0;
    for (int i = 0; i < activeCount; i++) {
      if ((kept >> i & 1) == 1) {
        actives[n] = actives[i];
        active[n++] = active[i];
      }
    }
    activeCount = n;
  }

  /** The origin's foot on what the chosen vectors span, or null if it lies outside their hull. */
  private Vec closest(int set) {
    Vec a = active[Integer.numberOfTrailingZeros(set)];
    int rest = set & set - 1;
    if (rest == 0) {
      return a;
    }
    Vec b = active[Integer.numberOfTrailingZeros(rest)];
    int last = rest & rest - 1;
    return last == 0 ? onEdge(a, b) : onFace(a, b, active[Integer.numberOfTrailingZeros(last)]);
  }

  private static Vec onEdge(Vec a, Vec b) {
    Vec d = b.minus(a);
    double t = -a.dot(d) / d.dot(d);
    return t >= 0 && t <= 1 ? a.plus(d, t) : null;
  }

  private static Vec onFace(Vec a, Vec b, Vec c) {
    Vec n = b.minus(a).cross(c.minus(a));
    double nn = n.dot(n);
    if (nn < ROUNDING * ROUNDING) {
      return null;
    }
    Vec p = n.times(n.dot(a) / nn);
    Vec toA = a.minus(p);
    Vec toB = b.minus(p);
    Vec toC = c.minus(p);
    boolean inside = toB.cross(toC).dot(n) >= 0 && toC.cross(toA).dot(n) >= 0 && toA.cross(toB).dot(n) >= 0;
    return inside ? p : null;
  }
}
