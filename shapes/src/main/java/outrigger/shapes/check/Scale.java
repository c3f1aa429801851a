package outrigger.shapes.check;

import outrigger.shapes.exact.Total;
import outrigger.shapes.num.Grid;

/** Weighs and measures a surface, sound or not. */
final class Scale {
  /** A normal's length, 1 to 2^52 or 0, is a whole number of 2^-52 as a double. */
  private static final int FRACTION_BITS = 52;
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private final Surface surface;
  private final int[] min = new int[3];
  private final int[] max = new int[3];

  private Scale(Surface surface) {
    this.surface = surface;
    for (int k = 0; k < 3 && surface.vertices() > 0; k++) {
      min[k] = Integer.MAX_VALUE;
      max[k] = Integer.MIN_VALUE;
      for (int i = k; i < surface.xyz().length; i += 3) {
        min[k] = Math.min(min[k], surface.xyz()[i]);
        max[k] = Math.max(max[k], surface.xyz()[i]);
      }
    }
  }

  /** Size alone: of a surface too large to be weighed. */
  static Measures sizeOnly(Surface surface) {
    Scale s = new Scale(surface);
    return s.measures(0, 0, new double[] {s.middle(0), s.middle(1), s.middle(2)}, Measures.NO_GENUS, 0, 0);
  }

  /**
   * Weighs all of it.
   *
   * @param genus handles, or {@link Measures#NO_GENUS}
   */
  static Measures weigh(Surface surface, Shells shells, int genus) {
    Scale s = new Scale(surface);
    Total sixVolume = shells.sixVolume();
    double volume = sixVolume.toDouble() / 6 * Grid.STEP * Grid.STEP * Grid.STEP;
    Total doubled = new Total();
    Total[] moments = {new Total(), new Total(), new Total()};
    surface.workers().split(surface.facets(), AT_ONCE, (from, to) -> s.add(from, to, doubled, moments));
    double area = Math.scalb(doubled.toDouble(), -FRACTION_BITS - 1) * Grid.STEP * Grid.STEP;
    return s.measures(volume, area, s.centroid(moments, sixVolume), genus, shells.count(), shells.outerCount());
  }

  /** Adds areas and moments of the facets from one up to another; sums are exact, so that their order does not matter. */
  private void add(int from, int to, Total doubled, Total[] moments) {
    Total someDoubled = new Total();
    Total[] someMoments = {new Total(), new Total(), new Total()};
    for (int f = from; f < to; f++) {
      addDoubledArea(f, someDoubled);
      addMoments(f, someMoments);
    }
    synchronized (moments) {
      doubled.add(someDoubled);
      for (int k = 0; k < 3; k++) {
        moments[k].add(someMoments[k]);
      }
    }
  }

  /** Each facet's area is rounded, but their sum is exact. */
  private void addDoubledArea(int f, Total to) {
    double x = surface.normal(f, 0);
    double y = surface.normal(f, 1);
    double z = surface.normal(f, 2);
    double length = Math.sqrt(x * x + y * y + z * z);
    if (length > 0) {
      long bits = Double.doubleToRawLongBits(length);
      long leading = 1L << FRACTION_BITS;
      to.add(bits & leading - 1 | leading, 1L << Math.getExponent(length));
    }
  }

  /** First moments of the tetrahedra from the origin to each facet, exact, over four times their volume. */
  private double[] centroid(Total[] moments, Total sixVolume) {
    if (sixVolume.signum() == 0) {
      return new double[] {middle(0), middle(1), middle(2)};
    }
    double[] c = new double[3];
    for (int k = 0; k < 3; k++) {
      c[k] = moments[k].toDouble() / (4 * sixVolume.toDouble()) * Grid.STEP;
    }
    return c;
  }

  /** Normals are below 2^52, corner times corner sum below 2^51: each product is below 2^103. */
  private void addMoments(int f, Total[] moments) {
    int[] p = surface.xyz();
    int a = 3 * surface.corner(f, 0);
    int b = 3 * surface.corner(f, 1);
    int c = 3 * surface.corner(f, 2);
    for (int axis = 0; axis < 3; axis++) {
      long sum = (long) p[a + axis] + p[b + axis] + p[c + axis];
      if (surface.isCompact()) {
        moments[axis].add(surface.sixVolume(f), sum);
      } else {
        for (int k = 0; k < 3; k++) {
          moments[axis].add(surface.normal(f, k), p[a + k] * sum);
        }
      }
    }
  }

  private double middle(int k) {
    return ((double) min[k] + max[k]) / 2 * Grid.STEP;
  }

  private Measures measures(double volume, double area, double[] c, int genus, int shells, int pieces) {
    return new Measures(surface.facets(), surface.vertices(), volume, area, c[0], c[1], c[2], Grid.toMm(min[0]),
        Grid.toMm(min[1]), Grid.toMm(min[2]), Grid.toMm(max[0]), Grid.toMm(max[1]), Grid.toMm(max[2]), genus, shells,
        pieces);
  }
}
