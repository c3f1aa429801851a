package outrigger.shapes.print;

import java.util.Arrays;

/** Samples of several facets one after the other, so ordered that neighbours in the list lie near each other. */
final class SampleList {
  private static final int WIDTH = 4;

  private int count;
  private double[] numbers = new double[64 * WIDTH];
  private int[] slots = new int[64];

  void add(int slot, Vec p, double area) {
    if (count == slots.length) {
      numbers = Arrays.copyOf(numbers, 2 * numbers.length);
      slots = Arrays.copyOf(slots, 2 * count);
    }
    slots[count] = slot;
    numbers[WIDTH * count] = p.x();
    numbers[WIDTH * count + 1] = p.y();
    numbers[WIDTH * count + 2] = p.z();
    numbers[WIDTH * count + 3] = area;
    count++;
  }

  void clear() {
    count = 0;
  }

  int size() {
    return count;
  }

  int slot(int i) {
    return slots[i];
  }

  double x(int i) {
    return numbers[WIDTH * i];
  }

  double y(int i) {
    return numbers[WIDTH * i + 1];
  }

  double z(int i) {
    return numbers[WIDTH * i + 2];
  }

  Vec point(int i) {
    return new Vec(x(i), y(i), z(i));
  }

  /** What the sample stands for, mm^2. */
  double area(int i) {
    return numbers[WIDTH * i + 3];
  }

  /** Least x, y, z and greatest x, y, z of some. */
  double[] box(int from, int to) {
    double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int i = from; i < to; i++) {
      for (int k = 0; k < 3; k++) {
        box[k] = Math.min(box[k], numbers[WIDTH * i + k]);
        box[k + 3] = Math.max(box[k + 3], numbers[WIDTH * i + k]);
      }
    }
    return box;
  }

  /** Multiplies the areas of some. */
  void scaleAreas(int from, double factor) {
    for (int i = from; i < count; i++) {
      numbers[WIDTH * i + 3] *= factor;
    }
  }
}
