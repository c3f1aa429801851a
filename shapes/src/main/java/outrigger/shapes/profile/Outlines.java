package outrigger.shapes.profile;

import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

/** Corners of the plain outlines, x, y in grid units, counter-clockwise, each its own mirror image in both axes. */
final class Outlines {
  private static final double SQRT_3 = Math.sqrt(3);

  private Outlines() {}

  static int[] rectangle(double width, double depth) {
    return mirrored(new int[] {half("width", width), half("depth", depth)});
  }

  static int[] roundedRectangle(double width, double depth, double radius, double chordError) {
    fits("corner radius", radius, width, depth);
    int r = Math.min(Grid.fromMm(radius), Math.min(half("width", width), half("depth", depth)));
    int[] across = Circles.across(r, Circles.inscribedSides(radius, chordError), false);
    return mirrored(shifted(across, half("width", width) - r, half("depth", depth) - r));
  }

  static int[] chamferedRectangle(double width, double depth, double leg) {
    fits("chamfer leg", leg, width, depth);
    int x = half("width", width);
    int y = half("depth", depth);
    int c = Math.min(Grid.fromMm(leg), Math.min(x, y));
    return mirrored(new int[] {x, y - c, x - c, y});
  }

  static int[] slot(double length, double width, boolean hole, double chordError) {
    Sizes.positive("slot width", width);
    if (Sizes.positive("slot length", length) < width) {
      throw new ShapeException("slot length is " + Sizes.mm(length) + ", less than its width of " + Sizes.mm(width),
          "Give the length over all, at least the width; turn the slot if it should run the other way.");
    }
    int r = hole ? Circles.holeRadius(width) : Circles.postRadius(width);
    int reach = hole ? Circles.holeRadius(length) : Circles.postRadius(length);
    int sides = hole ? Circles.circumscribedSides(width / 2, chordError)
        : Circles.inscribedSides(width / 2, chordError);
    return mirrored(shifted(Circles.across(r, sides, hole), reach - r, 0));
  }

  /** Corners are rounded outward along x, so that no slanted flat comes inside. */
  static int[] hexagon(double acrossFlats) {
    int y = half("width across flats", acrossFlats);
    int reach = (int) Math.ceil(2 * y / SQRT_3);
    int[] right = {reach, 0, (int) Math.ceil(y / SQRT_3), y};
    return mirrored(right);
  }

  private static int half(String name, double mm) {
    return Grid.fromMm(Sizes.positive(name, mm) / 2);
  }

  private static void fits(String name, double size, double width, double depth) {
    Sizes.positive(name, size);
    double most = Math.min(Sizes.positive("width", width), Sizes.positive("depth", depth)) / 2;
    if (size > most) {
      throw new ShapeException(name + " is " + Sizes.mm(size) + ", more than half the shorter side, " + Sizes.mm(most),
          "Make the " + name + " smaller or the rectangle larger.");
    }
  }

  private static int[] shifted(int[] across, int dx, int dy) {
    int[] quarter = new int[2 * across.length];
    for (int i = 0; i < across.length; i++) {
      quarter[2 * i] = across[i] + dx;
      quarter[2 * i + 1] = across[across.length - 1 - i] + dy;
    }
    return quarter;
  }

  /** The whole outline from its corners in the first quarter; corners on an axis come twice and are tidied away. */
  private static int[] mirrored(int[] quarter) {
    int n = quarter.length / 2;
    int[] all = new int[8 * n];
    for (int i = 0; i < n; i++) {
      int x = quarter[2 * i];
      int y = quarter[2 * i + 1];
      put(all, i, x, y);
      put(all, 2 * n - 1 - i, -x, y);
      put(all, 2 * n + i, -x, -y);
      put(all, 4 * n - 1 - i, x, -y);
    }
    return all;
  }

  private static void put(int[] xy, int corner, int x, int y) {
    xy[2 * corner] = x;
    xy[2 * corner + 1] = y;
  }
}
