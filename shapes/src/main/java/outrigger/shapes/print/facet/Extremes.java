package outrigger.shapes.print.facet;

/**
 * The less and the greater of two numbers, where there is no NaN and no matter which 0 comes out. {@link Math} looks after
 * both, which in a run too short to be compiled well was four tenths of all the gauges executed.
 */
public final class Extremes {
  private Extremes() {}

  /** The less of two. */
  public static double less(double a, double b) {
    return a < b ? a : b;
  }

  /** The greater of two. */
  public static double greater(double a, double b) {
    return a > b ? a : b;
  }

  /** The less of two. */
  public static float less(float a, float b) {
    return a < b ? a : b;
  }

  /** The greater of two. */
  public static float greater(float a, float b) {
    return a > b ? a : b;
  }
}
