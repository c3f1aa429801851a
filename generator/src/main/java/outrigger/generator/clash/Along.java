package outrigger.generator.clash;

import outrigger.shapes.num.Placement;

/** Places what stands upright on the origin along a direction instead. */
public final class Along {
  private static final double UPRIGHT = 0.9;

  private Along() {}

  /**
   * Turns Z into a direction and the origin into a point.
   *
   * @param direction length 1
   */
  public static Placement from(Spot point, Spot direction) {
    Spot d = direction;
    Spot side = Math.abs(d.z()) > UPRIGHT ? cross(new Spot(1, 0, 0), d) : cross(new Spot(0, 0, 1), d);
    double length = Math.sqrt(side.dot(side));
    Spot u = new Spot(side.x() / length, side.y() / length, side.z() / length);
    Spot v = cross(d, u);
    return new Placement(u.x(), v.x(), d.x(), u.y(), v.y(), d.y(), u.z(), v.z(), d.z(), point.x(), point.y(), point.z());
  }

  private static Spot cross(Spot a, Spot b) {
    return new Spot(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
  }
}
