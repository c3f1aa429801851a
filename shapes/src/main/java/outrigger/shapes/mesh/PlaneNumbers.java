package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.Plane;

/** Numbers planes from 0, equal ones alike, by an open-addressed table. */
final class PlaneNumbers {
  private final List<Plane> planes = new ArrayList<>();
  /** Number and one, 0 where free; never more than half full. */
  private int[] slots = new int[64];

  int size() {
    return planes.size();
  }

  Plane plane(int number) {
    return planes.get(number);
  }

  /** Number of a plane; that of a new one is the size before. */
  int number(Plane plane) {
    int slot = slot(plane);
    if (slots[slot] == 0) {
      planes.add(plane);
      slots[slot] = planes.size();
      if (2 * planes.size() > slots.length) {
        grow();
      }
      return planes.size() - 1;
    }
    return slots[slot] - 1;
  }

  private int slot(Plane plane) {
    int mask = slots.length - 1;
    int slot = plane.hashCode() & mask;
    while (slots[slot] != 0 && !planes.get(slots[slot] - 1).equals(plane)) {
      slot = slot + 1 & mask;
    }
    return slot;
  }

  private void grow() {
    slots = new int[2 * slots.length];
    for (int i = 0; i < planes.size(); i++) {
      slots[slot(planes.get(i))] = i + 1;
    }
  }
}
