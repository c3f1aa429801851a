package outrigger.shapes.mesh.inside;

import java.util.Arrays;

/**
 * What of a straight piece is hidden, each part strictly inside one operand, as far as doubles tell. Places on the piece are
 * told by their share of the way.
 */
public final class HiddenParts {
  private final Hiding hiding;
  /** In order along the piece, each reaching farther than the one before: operand, where it begins to hide and ends. */
  private int[] by = new int[4];
  private double[] from = new double[4];
  private double[] to = new double[4];
  private int size;

  HiddenParts(Hiding hiding) {
    this.hiding = hiding;
  }

  /** Adds a part; {@link #order} is to be called after the last. */
  void add(int operand, double begin, double end) {
    if (size == by.length) {
      by = Arrays.copyOf(by, 2 * size);
      from = Arrays.copyOf(from, 2 * size);
      to = Arrays.copyOf(to, 2 * size);
    }
    put(size++, operand, begin, end);
  }

  /** Brings parts in order and drops those that lie within others. */
  HiddenParts order() {
    for (int i = 1; i < size; i++) {
      int operand = by[i];
      double begin = from[i];
      double end = to[i];
      int j = i;
      for (; j > 0 && from[j - 1] > begin; j--) {
        put(j, by[j - 1], from[j - 1], to[j - 1]);
      }
      put(j, operand, begin, end);
    }
    int n = 0;
    for (int i = 0; i < size; i++) {
      if (n == 0 || to[i] > to[n - 1]) {
        put(n++, by[i], from[i], to[i]);
      }
    }
    size = n;
    return this;
  }

  private void put(int i, int operand, double begin, double end) {
    by[i] = operand;
    from[i] = begin;
    to[i] = end;
  }

  /** Up to where all is hidden from the start on: 0 if nothing is, 1 or more if all is. */
  public double start() {
    double reach = 0;
    for (int i = 0; i < size && from[i] <= reach; i++) {
      reach = to[i];
      hiding.noteInside(by[i]);
    }
    return reach;
  }

  /** From where on all is hidden: 1 if nothing is. */
  public double end() {
    double reach = 1;
    for (int i = size - 1; i >= 0 && to[i] >= reach; i--) {
      reach = from[i];
      hiding.noteInside(by[i]);
    }
    return reach;
  }

  /** Whether all between two places near each other is hidden. */
  public boolean holds(double least, double most) {
    for (int i = 0; i < size && from[i] <= least; i++) {
      if (most <= to[i]) {
        hiding.noteInside(by[i]);
        return true;
      }
    }
    return false;
  }
}
