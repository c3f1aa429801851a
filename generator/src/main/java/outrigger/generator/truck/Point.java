package outrigger.generator.truck;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outrigger.generator.param.BadDimension;

/**
 * A place on the truck, mm: X forward, Y left, Z up from the rails' top plane.
 */
public record Point(double x, double y, double z) {

  /**
   * A place written as a list, or none where the list is empty.
   *
   * @throws BadDimension naming {@code key} where it has other than three values
   */
  static Optional<Point> of(List<Double> list, String key) {
    if (list.isEmpty()) {
      return Optional.empty();
    }
    if (list.size() != 3) {
      throw new BadDimension(key, key + " has " + list.size() + (list.size() == 1 ? " value" : " values")
          + ", a place has three", "Write it as [x, y, z] in mm: forward, left, up.");
    }
    return Optional.of(new Point(list.get(0), list.get(1), list.get(2)));
  }

  /** Such as {@code x 12.0, y -4.0, z 3.5 mm}. */
  public String words() {
    return String.format(Locale.ROOT, "x %.1f, y %.1f, z %.1f mm", x + 0.0, y + 0.0, z + 0.0);
  }
}
