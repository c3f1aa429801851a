package outrigger.generator.joint;

import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * A thing that lies near a joint's screws, seen as a box; mm, in the axes of the part in its build pose.
 *
 * @param name what it is called
 * @param low corner of least x, y and z
 * @param high corner of greatest x, y and z
 */
public record Block(String name, Corner low, Corner high) {

  /** A corner, mm. */
  public record Corner(double x, double y, double z) {}

  /** A box by the middle of its underside and its sizes. */
  public static Block on(String name, Corner middle, double length, double width, double height) {
    return new Block(name, new Corner(middle.x - length / 2, middle.y - width / 2, middle.z),
        new Corner(middle.x + length / 2, middle.y + width / 2, middle.z + height));
  }

  /** The box round some points. */
  public static Block round(String name, List<Corner> points) {
    return new Block(name, corner(points, Math::min), corner(points, Math::max));
  }

  private static Corner corner(List<Corner> points, DoubleBinaryOperator choice) {
    return points.stream().reduce((a, b) -> new Corner(choice.applyAsDouble(a.x, b.x), choice.applyAsDouble(a.y, b.y),
        choice.applyAsDouble(a.z, b.z))).orElseThrow();
  }

  /** The same with more room on its four sides and above. */
  public Block larger(double mm) {
    return new Block(name, new Corner(low.x - mm, low.y - mm, low.z), new Corner(high.x + mm, high.y + mm, high.z + mm));
  }

  /**
   * How far a screw's end may go on along its way before it comes to the block, mm; infinite where it passes by.
   *
   * @param end the end's middle, the way it goes along an axis
   * @param radius of the screw
   */
  double ahead(ScrewPlace end, double radius) {
    double near = Math.max(enters(end.x(), end.dx(), low.x, high.x, radius),
        Math.max(enters(end.y(), end.dy(), low.y, high.y, radius), enters(end.z(), end.dz(), low.z, high.z, radius)));
    return near == Double.POSITIVE_INFINITY ? near : Math.max(0, near);
  }

  private static double enters(double at, double way, double low, double high, double radius) {
    if (Math.abs(way) < 0.5) {
      return at + radius > low && at - radius < high ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    double near = way > 0 ? low - at : at - high;
    double far = way > 0 ? high - at : at - low;
    return far <= 0 ? Double.POSITIVE_INFINITY : near;
  }
}
