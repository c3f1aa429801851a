package outrigger.generator.truck;

import java.util.List;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;

/** Table {@code [[keep-out]]}: room that the body takes, such as its interior tub or engine bay. */
public record KeepOut(
    @Param(max = 40, def = "keep-out", help = "What messages call it, such as interior tub.")
    String name,
    @Param(min = -1000, max = 1000, def = "0, 0, 0", help = "One corner [x, y, z]: rear, right, low.")
    List<Double> from,
    @Param(min = -1000, max = 1000, def = "1, 1, 1", help = "The corner across [x, y, z]: front, left, high.")
    List<Double> to) {

  public KeepOut {
    from = List.copyOf(from);
    to = List.copyOf(to);
    Point low = corner(from, "from");
    Point high = corner(to, "to");
    if (!(low.x() < high.x() && low.y() < high.y() && low.z() < high.z())) {
      throw new BadDimension("to", "the corner " + high.words() + " does not lie ahead, left and above of "
          + low.words(), "Give from the least and to the greatest x, y and z.");
    }
  }

  private static Point corner(List<Double> list, String key) {
    return Point.of(list, key).orElseThrow(() -> new BadDimension(key, key + " has no value",
        "Write it as [x, y, z] in mm."));
  }

  /** Rear, right, low corner. */
  public Point low() {
    return corner(from, "from");
  }

  /** Front, left, high corner. */
  public Point high() {
    return corner(to, "to");
  }
}
