package outrigger.generator.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.generator.truck.Point;
import outrigger.generator.truck.TruckParams;

/**
 * How a truck stands: statics of a stiff truck on level ground, front axle at x = 0, rear axle a wheelbase behind.
 *
 * @param masses what was summed
 * @param total g
 * @param centre centre of gravity, truck axes
 * @param wheelbase mm
 * @param track mm
 * @param ground z of the ground, mm
 */
public record Balance(List<Mass> masses, double total, Point centre, double wheelbase, double track, double ground) {
  public Balance {
    masses = List.copyOf(masses);
  }

  /** Sums masses, of which one at least weighs something. */
  public static Balance of(List<Mass> masses, TruckParams truck) {
    double total = masses.stream().mapToDouble(Mass::grams).sum();
    if (!(total > 0)) {
      throw new IllegalArgumentException("nothing weighs anything");
    }
    Point centre = new Point(masses.stream().mapToDouble(m -> m.grams() * m.at().x()).sum() / total,
        masses.stream().mapToDouble(m -> m.grams() * m.at().y()).sum() / total,
        masses.stream().mapToDouble(m -> m.grams() * m.at().z()).sum() / total);
    return new Balance(masses, total, centre, truck.wheelbase(), truck.track(), truck.ground());
  }

  /** Mass the rear axle carries, g; below 0 where the truck falls on its nose. */
  public double rear() {
    return total * -centre.x() / wheelbase;
  }

  /** Mass the front axle carries, g. */
  public double front() {
    return total - rear();
  }

  /** Share of the rear axle, percent. */
  public double rearPercent() {
    return 100 * rear() / total;
  }

  /** Height of the centre of gravity over the ground, mm. */
  public double height() {
    return centre.z() - ground;
  }

  /** Lean at which it tips to the side it is nearer to, degrees; 0 or less where it does on the level. */
  public double sideTip() {
    return angle(track / 2 - Math.abs(centre.y()));
  }

  /** Slope at which it tips over backward, nose up, degrees. */
  public double rearTip() {
    return angle(wheelbase + centre.x());
  }

  /** Slope at which it tips over forward, nose down, degrees. */
  public double frontTip() {
    return angle(-centre.x());
  }

  private double angle(double reach) {
    return StrictMath.toDegrees(StrictMath.atan2(reach, height()));
  }

  /** Whether it stands on its wheels on level ground. */
  public boolean stands() {
    return sideTip() > 0 && rearTip() > 0 && frontTip() > 0;
  }

  /** The working, one sentence a line. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(words("Mass %.0f g, centre of gravity at %s, %.1f mm over the ground.", total, centre.words(), height()));
    lines.add(words("Front axle %.0f g, rear axle %.0f g: %.1f and %.1f percent.", front(), rear(), 100 - rearPercent(),
        rearPercent()));
    lines.add(stands() ? words("Tips at %.1f degrees to the side, %.1f nose up, %.1f nose down; stiff springs, hard tyres.",
        sideTip(), rearTip(), frontTip())
        : "It does not stand on its wheels: the centre of gravity lies outside them.");
    return lines;
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
