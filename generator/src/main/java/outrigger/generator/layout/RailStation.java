package outrigger.generator.layout;

import java.util.OptionalDouble;
import outrigger.generator.param.BadDimension;
import outrigger.presets.LengthText;
import outrigger.presets.Shelf;

/**
 * How far apart rails stand somewhere along the truck; mm.
 *
 * @param x forward of the front axle
 * @param spacing clear width between them
 */
public record RailStation(double x, double spacing) {
  private static final double FARTHEST = 1000;
  private static final double WIDEST = 300;
  private static final String EXAMPLE = "Write x, a colon and the clear width, such as -60:36.4 or -6in:1.4in.";

  /**
   * Reads {@code X:WIDTH}.
   *
   * @throws BadDimension where the text is no such pair
   */
  public static RailStation parse(String text, Shelf shelf) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      throw new BadDimension("spacing", "which is no X:WIDTH", EXAMPLE);
    }
    return new RailStation(length(text.substring(0, colon), -FARTHEST, FARTHEST),
        length(text.substring(colon + 1), 1, WIDEST));
  }

  private static double length(String text, double least, double most) {
    OptionalDouble mm = LengthText.parse(text.strip()).value();
    if (mm.isEmpty() || !(mm.getAsDouble() >= least && mm.getAsDouble() <= most)) {
      throw new BadDimension("spacing", "in which " + text.strip() + " is no length from " + Math.round(least) + " to "
          + Math.round(most) + " mm", EXAMPLE);
    }
    return mm.getAsDouble();
  }
}
