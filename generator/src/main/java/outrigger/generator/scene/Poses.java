package outrigger.generator.scene;

import java.util.Map;
import outrigger.generator.accessory.body.Mounting;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.truck.RailForm;
import outrigger.generator.truck.Rails;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;

/** From a part's build pose to its place on the truck; mm. */
public final class Poses {
  private Poses() {}

  /**
   * A body mount, its flange flat on the web, which may run at an angle.
   *
   * @param x of its magnet
   * @param stated dimensions that the part promises
   */
  public static Placement bodyMount(Rails rails, double x, Side side, Mounting mounting, Map<String, Double> stated) {
    boolean left = side == Side.LEFT;
    boolean outboard = mounting == Mounting.OUTBOARD;
    double inner = rails.at(x).spacing() / 2;
    double face = outboard ? inner + thickness(rails) : inner;
    double top = stated.get("total-height") - stated.get("height");
    double toe = left ? rails.toe(x) : -rails.toe(x);
    return Placement.turn(Axis.Z, (left == outboard ? 0 : 180) + toe)
        .then(Placement.move(x, left ? face : -face, -top));
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
   * A tray outboard of a rail.
   *
   * @param x of its middle
   * @param width of the tray, outside
   */
  public static Placement trayOutboard(Rails rails, double x, Side side, double width, double drop) {
    double y = rails.at(x).spacing() / 2 + thickness(rails) + width / 2;
    return Placement.move(x, side == Side.LEFT ? y : -y, -drop);
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

  /** Thickness of a rail from its inner to its outer face. */
  static double thickness(Rails rails) {
    return rails.params().form() == RailForm.BOX ? rails.params().flange() : rails.params().web();
  }
}
