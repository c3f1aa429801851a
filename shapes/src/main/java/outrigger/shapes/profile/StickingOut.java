package outrigger.shapes.profile;

import java.util.List;

/**
 * Sees the common way in which regions do not lie within an area: a corner that stands out of it so far that no rounding to
 * the grid hides it. Quicker than to cut the area off and look at what is left.
 */
final class StickingOut {
  /** How far from the area's edges a corner must be, grid steps: rounding an overlay moves an edge by less than one. */
  private static final int CLEAR = 16;

  private StickingOut() {}

  /** Whether a corner is seen to stand out; false may mean that it does so less clearly. */
  static boolean isSeen(List<Region> regions, List<Region> area) {
    for (Region region : regions) {
      if (region.holes().isEmpty() && isConvex(region.shell()) && isSeen(region.shell(), area)) {
        return true;
      }
    }
    return false;
  }

  /** At a blunt corner with long sides a good part of the square about it is covered. */
  private static boolean isSeen(Ring shell, List<Region> area) {
    for (int i = 0; i < shell.size(); i++) {
      Box about = new Box(shell.x(i) - CLEAR, shell.y(i) - CLEAR, shell.x(i) + CLEAR, shell.y(i) + CLEAR);
      if (turn(shell, i) >= 0.5 * length(shell, i) * length(shell, next(shell, i)) && length(shell, i) >= 2 * CLEAR
          && length(shell, next(shell, i)) >= 2 * CLEAR && Apart.isClear(area, List.of(about))
          && !Apart.holdsOne(area, shell.x(i), shell.y(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isConvex(Ring ring) {
    for (int i = 0; i < ring.size(); i++) {
      if (turn(ring, i) <= 0) {
        return false;
      }
    }
    return true;
  }

  private static int next(Ring ring, int i) {
    return i + 1 == ring.size() ? 0 : i + 1;
  }

  private static int before(Ring ring, int i) {
    return i == 0 ? ring.size() - 1 : i - 1;
  }

  /** Product of the sides at a corner, positive for a left turn. Exact: sides are below 2^25 steps. */
  private static long turn(Ring ring, int i) {
    int h = before(ring, i);
    int j = next(ring, i);
    long ax = (long) ring.x(i) - ring.x(h);
    long ay = (long) ring.y(i) - ring.y(h);
    return ax * ((long) ring.y(j) - ring.y(i)) - ay * ((long) ring.x(j) - ring.x(i));
  }

  /** Length of the side that ends at a corner, grid steps. */
  private static double length(Ring ring, int i) {
    double x = (double) ring.x(i) - ring.x(before(ring, i));
    double y = (double) ring.y(i) - ring.y(before(ring, i));
    return Math.sqrt(x * x + y * y);
  }
}
