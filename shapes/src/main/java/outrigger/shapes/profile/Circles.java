package outrigger.shapes.profile;

import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

/**
 * Polygons that stand for circles: how many sides, and where their corners lie on the grid.
 *
 * <p>The side count is the least multiple of 4 that keeps the chord error, and never below {@link #LEAST_SIDES}, nor
 * below {@link #LEAST_SIDES_FROM_2MM} from 2 mm diameter up.
 */
public final class Circles {
  /** Fewest sides of any circle. */
  public static final int LEAST_SIDES = 8;
  /** Fewest sides of a circle of 2 mm diameter or more, so that it still looks and prints round. */
  public static final int LEAST_SIDES_FROM_2MM = 12;
  /** What floating-point noise may add to a whole number of grid units without moving a corner a whole step. */
  private static final double NOISE = 1e-6;

  private Circles() {}

  /**
   * Sides of a polygon with its corners on the circle whose flats stay within the chord error of it: the sagitta
   * R (1 - cos(pi/n)) is at most the error.
   *
   * @param radius mm
   * @param chordError mm, at least one grid step
   */
  public static int inscribedSides(double radius, double chordError) {
    Sizes.positive("chord error", chordError);
    return sides(radius, 1 - chordError / Sizes.positive("radius", radius));
  }

  /**
   * Sides of a polygon with its flats on the circle whose corners stay within the chord error of it: the excess
   * R / cos(pi/n) - R is at most the error.
   *
   * @param radius mm
   * @param chordError mm, at least one grid step
   */
  public static int circumscribedSides(double radius, double chordError) {
    Sizes.positive("chord error", chordError);
    return sides(radius, Sizes.positive("radius", radius) / (radius + chordError));
  }

  /** Radius in grid units of a hole: rounded outward. */
  public static int holeRadius(double diameter) {
    return (int) Math.ceil(Sizes.positive("diameter", diameter) / 2 * Grid.PER_MM - NOISE);
  }

  /** Radius in grid units of a post: rounded inward. */
  public static int postRadius(double diameter) {
    return (int) Math.floor(Sizes.positive("diameter", diameter) / 2 * Grid.PER_MM + NOISE);
  }

  /**
   * Corners of a circle about the origin: x, y of each in grid units, counter-clockwise.
   *
   * <p>Inscribed, the first corner lies on the positive x axis and every corner is rounded towards the axes, so none
   * lies outside the circle. Circumscribed, a flat crosses the positive x axis and every corner is rounded away from
   * the axes, so no flat comes inside the circle. Either way the polygon equals its image under a quarter turn and
   * under a mirror in either axis.
   *
   * @param radius grid units, at least as many as there are sides
   * @param sides a multiple of 4, at least {@link #LEAST_SIDES}
   * @throws ShapeException if the circle is too small for the grid to hold its sides
   */
  public static int[] corners(int radius, int sides, boolean circumscribed) {
    if (radius < sides) {
      throw new ShapeException("a circle of " + Sizes.number(Grid.toMm(2L * radius)) + " mm diameter is too small for "
          + sides + " sides; the least is " + Sizes.number(Grid.toMm(2L * sides)) + " mm",
          "Make it larger or give it fewer sides.");
    }
    int[] across = across(radius, sides, circumscribed);
    int quarter = sides / 4;
    int last = across.length - 1;
    int[] xy = new int[2 * sides];
    for (int i = 0; i < quarter; i++) {
      int x = across[i];
      int y = across[last - i];
      for (int q = 0; q < 4; q++) {
        int at = 2 * (q * quarter + i);
        xy[at] = x;
        xy[at + 1] = y;
        int turned = -y;
        y = x;
        x = turned;
      }
    }
    return xy;
  }

  /** x of the corners of the first quarter; read backward, y of the same corners. */
  static int[] across(int radius, int sides, boolean circumscribed) {
    int[] across = new int[circumscribed ? sides / 4 : sides / 4 + 1];
    double step = Math.PI / sides;
    double reach = circumscribed ? radius / StrictMath.cos(step) : radius;
    for (int i = 0; i < across.length; i++) {
      double x = reach * StrictMath.cos(circumscribed ? (2 * i + 1) * step : 2 * i * step);
      across[i] = (int) (circumscribed ? Math.ceil(x - NOISE) : Math.floor(x + NOISE));
    }
    return across;
  }

  private static int sides(double radius, double cosine) {
    int least = radius >= 1 ? LEAST_SIDES_FROM_2MM : LEAST_SIDES;
    if (cosine <= 0) {
      return least;
    }
    int quarters = (int) Math.ceil(Math.PI / 4 / StrictMath.acos(cosine) - NOISE);
    return Math.max(least, 4 * quarters);
  }
}
