package outrigger.generator.accessory.feature;

import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * What carries a post that stands out from an upright plate: solid under the whole post, its underside one slope from
 * the post's far side back towards the plate. The plate's face is y = 0, the bed z = 0; mm.
 *
 * @param reach y of the post's far side, where the slope ends
 * @param height z where it ends, the top of the gusset
 * @param degrees lean of the slope from the vertical; 0 goes straight down
 */
public record Gusset(double reach, double height, double degrees) {

  /** How far from the plate's face the slope meets the bed; 0 or less where it meets the face first. */
  public double foot() {
    return slope(0);
  }

  /** y of the slope at a height. */
  public double slope(double z) {
    return reach - (height - z) * tangent();
  }

  /** z of the slope at a distance from the plate's face, above the bed. */
  public double underside(double y) {
    return degrees == 0 ? 0 : Math.max(0, height - (reach - y) / tangent());
  }

  /**
   * The gusset of a given outline.
   *
   * @param plan outline seen from above, at y = 0 or more
   */
  public Solid solid(Profile plan) {
    Solid block = Prism.of(plan, 0, height);
    double low = -ScrewHole.OVERSHOOT;
    double high = height + ScrewHole.OVERSHOOT;
    double back = Math.min(0, slope(low)) - ScrewHole.OVERSHOOT;
    Profile side = Profile.polygon(back, low, slope(low), low, slope(high), high, back, high);
    double half = Math.max(-plan.minX(), plan.maxX()) + ScrewHole.OVERSHOOT;
    return degrees == 0 ? block : Solid.common(block, alongX(side, half));
  }

  /** A section drawn with y across and z up, from -half to half along X. */
  public static Solid alongX(Profile section, double half) {
    return Prism.of(section, -half, half).turn(Axis.X, 90).turn(Axis.Z, 90);
  }

  private double tangent() {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }
}
