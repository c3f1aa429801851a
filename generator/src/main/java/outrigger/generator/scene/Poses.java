package outrigger.generator.scene;

import java.util.Map;
import outrigger.generator.accessory.body.Mounting;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.truck.Rails;
import outrigger.generator.truck.Seat;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;

/** From a part's build pose to its place on the truck; mm. */
public final class Poses {
  private Poses() {}

  /**
   * A body mount, its flange flat on the web, which may run at an angle.
   *
   * @param x where its magnet comes to lie
   * @param stated dimensions that the part promises
   */
  public static Placement bodyMount(Rails rails, double x, Side side, Mounting mounting, Map<String, Double> stated) {
    boolean left = side == Side.LEFT;
    boolean outboard = mounting == Mounting.OUTBOARD;
    double half = stated.get("flange-length") / 2;
    double middle = (left == outboard ? 1 : -1) * stated.getOrDefault("flange-offset", 0.0);
    // The right rail's seat is the left one's mirrored, so that x is the same on both.
    Seat seat = rails.foot(x, outboard ? stated.get("reach") : -stated.get("reach"), middle - half, middle + half);
    double top = stated.get("total-height") - stated.get("height");
    double toe = left ? seat.degrees() : -seat.degrees();
    return Placement.turn(Axis.Z, (left == outboard ? 0 : 180) + toe)
        .then(Placement.move(seat.x(), left ? seat.y() : -seat.y(), -top));
  }

  /**
   * A body pad, face down, its back at the body's floor.
   *
   * @param x of its disc
   * @param y of its disc
   * @param floor of the body over the rails' tops
   */
  public static Placement bodyPad(double x, double y, double floor) {
    return Placement.turn(Axis.X, 180).then(Placement.move(x, y, floor));
  }

  /**
   * A tray between the rails.
   *
   * @param x of its middle
   * @param drop from the rails' tops down to the underside of its floor
   */
  public static Placement trayBetween(double x, double drop) {
    return Placement.move(x, 0, -drop);
  }

  /**
   * A tray outboard of a rail, turned with it where that runs at an angle.
   *
   * @param x of the middle of its side against the rail
   * @param length of the tray
   * @param width of the tray, outside
   */
  public static Placement trayOutboard(Rails rails, double x, Side side, double length, double width, double drop) {
    Seat seat = rails.flat(x, length);
    boolean left = side == Side.LEFT;
    return Placement.move(0, left ? width / 2 : -width / 2, 0)
        .then(Placement.turn(Axis.Z, left ? seat.degrees() : -seat.degrees()))
        .then(Placement.move(seat.x(), left ? seat.y() : -seat.y(), -drop));
  }

  /**
   * A flat spacer between the chassis' end and the bumper.
   *
   * @param seat x of the chassis' end, where its lower face lies
   * @param z of its screws
   */
  public static Placement flatSpacer(double seat, double z) {
    return Placement.turn(Axis.Z, 90).then(Placement.turn(Axis.Y, 90)).then(Placement.move(seat, 0, z));
  }
}
