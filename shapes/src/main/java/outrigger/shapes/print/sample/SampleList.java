package outrigger.shapes.print.sample;

import java.util.Arrays;
import java.util.function.Predicate;
import outrigger.shapes.exact.Morton;
import outrigger.shapes.print.facet.Extremes;
import outrigger.shapes.print.facet.Vec;

/** Samples of several facets, which may be ordered so that neighbours in the list lie near each other. */
public final class SampleList {
  private static final int WIDTH = 4;
  /** Steps along each axis of the box round all samples, as a power of two: places on the curve are told no finer. */
  private static final int BITS = 10;
  private static final int AXES = 3;

  private int count;
  private double[] numbers = new double[64 * WIDTH];
  private int[] slots = new int[64];

  /** Adds a sample of the facet in a slot, with the area it stands for, mm^2. */
  public void add(int slot, Vec p, double area) {
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

  /** Adds those of another list. */
  public void addAll(SampleList other) {
    int size = count + other.count;
    if (size > slots.length) {
      int room = Math.max(size, 2 * slots.length);
      numbers = Arrays.copyOf(numbers, WIDTH * room);
      slots = Arrays.copyOf(slots, room);
    }
    System.arraycopy(other.numbers, 0, numbers, WIDTH * count, WIDTH * other.count);
    System.arraycopy(other.slots, 0, slots, count, other.count);
    count = size;
  }

  /** Forgets all samples. */
  public void clear() {
    count = 0;
  }

  /** How many samples there are. */
  public int size() {
    return count;
  }

  /** The slot of a sample's facet. */
  public int slot(int i) {
    return slots[i];
  }

  /** Place of a sample, mm. */
  public double x(int i) {
    return numbers[WIDTH * i];
  }

  /** Place of a sample, mm. */
  public double y(int i) {
    return numbers[WIDTH * i + 1];
  }

  /** Place of a sample, mm. */
  public double z(int i) {
    return numbers[WIDTH * i + 2];
  }

  /** Place of a sample, mm. */
  public Vec point(int i) {
    return new Vec(x(i), y(i), z(i));
  }

  /** What the sample stands for, mm^2. */
  public double area(int i) {
    return numbers[WIDTH * i + 3];
  }

  /** Least x, y, z and greatest x, y, z. */
  private double[] box() {
    double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < AXES; k++) {
        box[k] = Extremes.less(box[k], numbers[WIDTH * i + k]);
        box[k + AXES] = Extremes.greater(box[k + AXES], numbers[WIDTH * i + k]);
      }
    }
    return box;
  }

  /** Puts all samples in order along a space-filling curve (Morton), equal places as they stood. */
  public void sort() {
    if (count < 2) {
      return;
    }
    double[] box = box();
    double scale = (1 << BITS) - 1;
    double side = Math.max(box[3] - box[0], Math.max(box[4] - box[1], box[5] - box[2]));
    long[] keys = new long[count];
    for (int i = 0; i < count; i++) {
      long[] at = new long[AXES];
      for (int k = 0; k < AXES; k++) {
        at[k] = (long) ((numbers[WIDTH * i + k] - box[k]) / side * scale);
      }
      long place = Morton.place(at[0], at[1], at[2]);
      keys[i] = place << 32 | i;
    }
    Arrays.sort(keys);
    double[] sorted = new double[WIDTH * count];
    int[] sortedSlots = new int[count];
    for (int i = 0; i < count; i++) {
      int from = (int) keys[i];
      System.arraycopy(numbers, WIDTH * from, sorted, WIDTH * i, WIDTH);
      sortedSlots[i] = slots[from];
    }
    numbers = sorted;
    slots = sortedSlots;
  }

  /** Drops those from an index on that are not wanted. */
  void retain(int from, Predicate<Vec> wanted) {
    int kept = from;
    for (int i = from; i < count; i++) {
      if (wanted.test(point(i))) {
        move(i, kept++);
      }
    }
    cut(kept);
  }

  /** Moves one to an earlier place, over what stands there. */
  void move(int from, int to) {
    System.arraycopy(numbers, WIDTH * from, numbers, WIDTH * to, WIDTH);
    slots[to] = slots[from];
  }

  /** Lets one stand for another too. */
  void merge(int from, int into) {
    numbers[WIDTH * into + 3] += numbers[WIDTH * from + 3];
  }

  /** Drops all from an index on. */
  void cut(int size) {
    count = size;
  }

  /** Multiplies the areas of some. */
  void scaleAreas(int from, double factor) {
    for (int i = from; i < count; i++) {
      numbers[WIDTH * i + 3] *= factor;
    }
  }
}
