package outrigger.shapes.num;

import java.util.Arrays;

/** A growing list of ints. */
public final class IntList {
  private int[] items = new int[8];
  private int size;

  /** Adds an int at the end. */
  public void add(int item) {
    if (size == items.length) {
      items = Arrays.copyOf(items, 2 * size);
    }
    items[size++] = item;
  }

  /** Puts another int in the place of one. */
  public void set(int i, int item) {
    items[i] = item;
  }

  /** The int at a place, from 0 on. */
  public int get(int i) {
    return items[i];
  }

  /** How many there are. */
  public int size() {
    return size;
  }

  /** Drops all; the room stays. */
  public void clear() {
    size = 0;
  }

  /** Drops all from a place on; the room stays. */
  public void cut(int newSize) {
    size = newSize;
  }

  /** All of them, a copy. */
  public int[] toArray() {
    return Arrays.copyOf(items, size);
  }
}
