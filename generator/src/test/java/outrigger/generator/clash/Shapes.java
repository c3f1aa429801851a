package outrigger.generator.clash;

import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Simple solids for tests; mm. */
final class Shapes {
  private Shapes() {}

  /** An upright box between two corners. */
  static Solid box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return Prism.of(Profile.rectangle(x1 - x0, y1 - y0), z0, z1).move((x0 + x1) / 2, (y0 + y1) / 2, 0);
  }

  /** A cylinder along an axis through the origin, reaching as far either way. */
  static Solid cylinder(Axis axis, double radius, double half, double chordError) {
    Solid up = Prism.of(Profile.post(2 * radius, chordError), -half, half);
    return axis == Axis.Z ? up : up.turn(axis == Axis.X ? Axis.Y : Axis.X, 90);
  }

  static Element part(String name, Solid solid) {
    return Element.of(name, Sort.PART, solid);
  }
}
