package outrigger.shapes.num;

import java.util.Comparator;
import java.util.Locale;

/**
 * A grid point, ordered by x, then y, then z.
 *
 * @param x grid units
 * @param y grid units
 * @param z grid units
 */
public record Place(int x, int y, int z) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparingInt(Place::x).thenComparingInt(Place::y).thenComparingInt(Place::z);

  /** The place of a vertex among the coordinates x, y, z of many. */
  public static Place of(int[] xyz, int vertex) {
    return new Place(xyz[3 * vertex], xyz[3 * vertex + 1], xyz[3 * vertex + 2]);
  }

  /** The grid point in the middle between two, or next to it. */
  public static Place between(Place p, Place q) {
    return new Place(p.x + q.x >> 1, p.y + q.y >> 1, p.z + q.z >> 1);
  }

  /** Its coordinates in words, mm. */
  public String mm() {
    return mm(x, y, z);
  }

  /** Coordinates given in grid units in words, mm. */
  public static String mm(double x, double y, double z) {
    return String.format(Locale.ROOT, "(%.3f, %.3f, %.3f) mm", x * Grid.STEP, y * Grid.STEP, z * Grid.STEP);
  }

  @Override
  public int compareTo(Place o) {
    return ORDER.compare(this, o);
  }
}
