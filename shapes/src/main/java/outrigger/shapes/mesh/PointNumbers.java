package outrigger.shapes.mesh;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;

/** Numbers points from 0, equal ones alike, by an open-addressed table that is emptied without being swept. */
final class PointNumbers {
  private ExactPoint[] points = new ExactPoint[64];
  private int[] slotOf = new int[64];
  private int[] slots = new int[256];
  private int size;

  int size() {
    return size;
  }

  /** Forgets all points. */
  void clear() {
    for (int i = 0; i < size; i++) {
      slots[slotOf[i]] = 0;
      points[i] = null;
    }
    size = 0;
  }

  ExactPoint point(int number) {
    return points[number];
  }

  /** Number of a point; that of a new one is the size before. */
  int number(ExactPoint p) {
    int slot = p.hashCode() & slots.length - 1;
    while (slots[slot] != 0) {
      if (points[slots[slot] - 1].equals(p)) {
        return slots[slot] - 1;
      }
      slot = slot + 1 & slots.length - 1;
    }
    if (size == points.length) {
      grow();
      return number(p);
    }
    points[size] = p;
    slotOf[size] = slot;
    slots[slot] = ++size;
    return size - 1;
  }

  private void grow() {
    points = Arrays.copyOf(points, 2 * size);
    slotOf = Arrays.copyOf(slotOf, 2 * size);
    slots = new int[8 * size];
    for (int i = 0; i < size; i++) {
      int slot = points[i].hashCode() & slots.length - 1;
      while (slots[slot] != 0) {
        slot = slot + 1 & slots.length - 1;
      }
      slotOf[i] = slot;
      slots[slot] = i + 1;
    }
  }
}
