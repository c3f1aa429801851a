package outrigger.shapes.mesh;

import java.util.Comparator;
import java.util.Locale;
import outrigger.shapes.num.Grid;

/** A grid point, ordered by x, then y, then z. */
record Place(int x, int y, int z) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparingInt(Place::x).thenComparingInt(Place::y).thenComparingInt(Place::z);

  static Place of(int[] xyz, int vertex) {
    return new Place(xyz[3 * vertex], xyz[3 * vertex + 1], xyz[3 * vertex + 2]);
  }

  /** The grid point in the middle between two, or next to it. */
  static Place between(Place p, Place q) {
    return new Place(p.x + q.x >> 1, p.y + q.y >> 1, p.z + q.z >> 1);
  }

  /** Its coordinates in words, mm. */
  String mm() {
    return mm(x, y, z);
  }

  /** Coordinates given in grid units in words, mm. */
  static String mm(double x, double y, double z) {
    return String.format(Locale.ROOT, "(%.3f, %.3f, %.3f) mm", x * Grid.STEP, y * Grid.STEP, z * Grid.STEP);
  }

  @Override
  public int compareTo(Place o) {
    return ORDER.compare(this, o);
  }
}
