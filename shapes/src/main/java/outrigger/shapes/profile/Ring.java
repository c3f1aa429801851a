package outrigger.shapes.profile;

import java.util.Arrays;
import outrigger.shapes.exact.Sign;

/**
 * A closed loop of grid points, the first not repeated; no three in a row on one line, none twice in a row.
 *
 * <p>It starts at its smallest corner by x, then y. Its turn tells shell from hole: see {@link Region}.
 */
public final class Ring implements Comparable<Ring> {
  private final int[] xy;

  private Ring(int[] xy) {
    this.xy = xy;
  }

  /** The ring through the given points, tidied, in the turn asked for; of size 0 if it encloses nothing. */
  static Ring of(int[] points, boolean counterClockwise) {
    int[] tidy = tidy(points);
    if ((doubleArea(tidy) > 0) != counterClockwise) {
      tidy = reversed(tidy);
    }
    return new Ring(startingAtSmallest(tidy));
  }

  /** The same loop the other way round. */
  Ring turned() {
    return new Ring(startingAtSmallest(reversed(xy)));
  }

  /** Number of corners. */
  public int size() {
    return xy.length / 2;
  }

  /** x of a corner, grid units. */
  public int x(int corner) {
    return xy[2 * corner];
  }

  /** y of a corner, grid units. */
  public int y(int corner) {
    return xy[2 * corner + 1];
  }

  /** Twice the enclosed area in square grid units, positive if counter-clockwise. Exact. */
  public long doubleArea() {
    return doubleArea(xy);
  }

  /** By corners in order, x before y; a shorter ring first where one begins the other. */
  @Override
  public int compareTo(Ring other) {
    return Arrays.compare(xy, other.xy);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Ring ring && Arrays.equals(xy, ring.xy);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(xy);
  }

  @Override
  public String toString() {
    return "Ring" + Arrays.toString(xy);
  }

  private static long doubleArea(int[] p) {
    long sum = 0;
    for (int i = 0, j = p.length - 2; i < p.length; j = i, i += 2) {
      sum += (long) p[j] * p[i + 1] - (long) p[i] * p[j + 1];
    }
    return sum;
  }

  /** Drops repeated points, points in line with their neighbours, and spikes, until none is left. */
  private static int[] tidy(int[] points) {
    int[] now = points;
    int before;
    do {
      before = now.length;
      now = withoutStraights(withoutRepeats(now));
    } while (now.length < before);
    return now.length < 6 ? new int[0] : now;
  }

  private static int[] withoutRepeats(int[] p) {
    int[] kept = new int[p.length];
    int n = 0;
    for (int i = 0; i < p.length; i += 2) {
      int next = (i + 2) % p.length;
      if (p[i] != p[next] || p[i + 1] != p[next + 1]) {
        kept[n++] = p[i];
        kept[n++] = p[i + 1];
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static int[] withoutStraights(int[] p) {
    int[] kept = new int[p.length];
    int n = 0;
    for (int i = 0; i < p.length; i += 2) {
      int next = (i + 2) % p.length;
      // The last point kept stands before this one; until there is one, the loop's last point does.
      int bx = n > 0 ? kept[n - 2] : p[p.length - 2];
      int by = n > 0 ? kept[n - 1] : p[p.length - 1];
      if (Sign.turn(bx, by, p[i], p[i + 1], p[next], p[next + 1]) != 0) {
        kept[n++] = p[i];
        kept[n++] = p[i + 1];
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static int[] reversed(int[] p) {
    int[] r = new int[p.length];
    for (int i = 0; i < p.length; i += 2) {
      r[p.length - 2 - i] = p[i];
      r[p.length - 1 - i] = p[i + 1];
    }
    return r;
  }

  private static int[] startingAtSmallest(int[] p) {
    int s = 0;
    for (int i = 2; i < p.length; i += 2) {
      if (p[i] < p[s] || p[i] == p[s] && p[i + 1] < p[s + 1]) {
        s = i;
      }
    }
    int[] r = new int[p.length];
    System.arraycopy(p, s, r, 0, p.length - s);
    System.arraycopy(p, 0, r, p.length - s, s);
    return r;
  }
}
