package outrigger.generator.fit;

import java.util.Locale;
import outrigger.generator.accessory.body.Mounting;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.RailForm;
import outrigger.generator.truck.Rails;
import outrigger.generator.truck.Told;

/**
 * One mount on one rail.
 *
 * @param name of its part, such as {@code cab-front-left}
 * @param mount the station as written
 * @param x of the magnet's middle, mm forward of the front axle
 * @param y of the magnet's middle, mm left of the centre line
 */
public record Site(String name, Told<MountParams> mount, Side side, double x, double y) {

  static Site of(Told<MountParams> mount, Side side, Rails rails) {
    MountParams p = mount.record();
    double face = rails.at(p.x()).spacing() / 2;
    double outer = rails.params().form() == RailForm.BOX ? rails.params().flange() : rails.params().web();
    double y = p.mounting() == Mounting.INBOARD ? face - p.reach() : face + outer + p.reach();
    return new Site(p.name() + "-" + side.name().toLowerCase(Locale.ROOT), mount, side, p.x(), side == Side.LEFT ? y : -y);
  }
}
