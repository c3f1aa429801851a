package outrigger.shapes.mesh.outline;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;

/**
 * Numbers points from 0, equal ones alike, by an open-addressed table that is emptied without being swept. A slot holds a
 * point's hash beside its number, so that most others are told apart without being fetched.
 */
public final class PointNumbers {
  /** Room for points at first, at least: own choice. */
  private static final int FEW = 64;

  private ExactPoint[] points;
  /** Of each point its slot; -1 where it was appended and has none. */
  private int[] slotOf;
  /** Hash, and number and one; 0 where free. At least four for each point there is room for. */
  private long[] slots;
  private int size;

  /** No points yet, and not many to come. */
  public PointNumbers() {
    this(FEW);
  }

  /** No points yet, with room for some. */
  PointNumbers(int room) {
    int n = Math.max(FEW, room);
    points = new ExactPoint[n];
    slotOf = new int[n];
    slots = new long[4 * Integer.highestOneBit(2 * n - 1)];
  }

  /** How many points have numbers. */
  public int size() {
    return size;
  }

  /** Forgets all points. */
  public void clear() {
    for (int i = 0; i < size; i++) {
      if (slotOf[i] >= 0) {
        slots[slotOf[i]] = 0;
      }
      points[i] = null;
    }
    size = 0;
  }

  /** A point by its number. */
  public ExactPoint point(int number) {
    return points[number];
  }

  /** Number of a point; that of a new one is the size before. */
  public int number(ExactPoint p) {
    int hash = p.hashCode();
    int slot = hash & slots.length - 1;
    while (slots[slot] != 0) {
      int number = (int) slots[slot] - 1;
      if ((int) (slots[slot] >> 32) == hash && points[number].equals(p)) {
        return number;
      }
      slot = slot + 1 & slots.length - 1;
    }
    if (size == points.length) {
      grow();
      return number(p);
    }
    points[size] = p;
    slotOf[size] = slot;
    slots[slot] = (long) hash << 32 | ++size;
    return size - 1;
  }

  /** Numbers a point that is known to be new, without entering it in the table: {@link #number} will not find it. */
  public int append(ExactPoint p) {
    if (size == points.length) {
      grow();
    }
    points[size] = p;
    slotOf[size] = -1;
    return size++;
  }

  private void grow() {
    points = Arrays.copyOf(points, 2 * size);
    slotOf = Arrays.copyOf(slotOf, 2 * size);
    long[] before = slots;
    slots = new long[2 * before.length];
    for (int i = 0; i < size; i++) {
      if (slotOf[i] < 0) {
        continue;
      }
      long entry = before[slotOf[i]];
      int slot = (int) (entry >> 32) & slots.length - 1;
      while (slots[slot] != 0) {
        slot = slot + 1 & slots.length - 1;
      }
      slotOf[i] = slot;
      slots[slot] = entry;
    }
  }
}
