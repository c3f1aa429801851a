package outrigger.shapes.mesh.face;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.Plane;

/**
 * Numbers planes from 0, equal ones alike, by an open-addressed table. A slot holds a plane's hash beside its number, so
 * that most others are told apart without being fetched.
 */
final class PlaneNumbers {
  private final List<Plane> planes = new ArrayList<>();
  /** Hash, and number and one; 0 where free. Never more than half full. */
  private long[] slots = new long[64];

  int size() {
    return planes.size();
  }

  Plane plane(int number) {
    return planes.get(number);
  }

  /** Number of a plane; that of a new one is the size before. */
  int number(Plane plane) {
    int hash = plane.hashCode();
    int slot = hash & slots.length - 1;
    while (slots[slot] != 0) {
      int number = (int) slots[slot] - 1;
      if ((int) (slots[slot] >> 32) == hash && planes.get(number).equals(plane)) {
        return number;
      }
      slot = slot + 1 & slots.length - 1;
    }
    planes.add(plane);
    slots[slot] = (long) hash << 32 | planes.size();
    if (2 * planes.size() > slots.length) {
      grow();
    }
    return planes.size() - 1;
  }

  private void grow() {
    long[] before = slots;
    slots = new long[2 * before.length];
    for (long entry : before) {
      int slot = (int) (entry >> 32) & slots.length - 1;
      while (entry != 0 && slots[slot] != 0) {
        slot = slot + 1 & slots.length - 1;
      }
      slots[slot] = entry == 0 ? slots[slot] : entry;
    }
  }
}
