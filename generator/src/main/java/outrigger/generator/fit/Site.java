package outrigger.generator.fit;

import java.util.Locale;
import outrigger.generator.accessory.body.Mounting;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Rails;
import outrigger.generator.truck.Seat;
import outrigger.generator.truck.Told;

/**
 * One mount on one rail.
 *
 * @param name of its part, such as {@code cab-front-left}
 * @param mount the station as written
 * @param x of the magnet's middle, mm forward of the front axle
 * @param y of the magnet's middle, mm left of the centre line
 * @param seat where its mount is bolted to the left rail, or mirrored to the right one
 */
public record Site(String name, Told<MountParams> mount, Side side, double x, double y, Seat seat) {

  static Site of(Told<MountParams> mount, Side side, Rails rails) {
    MountParams p = mount.record();
    double reach = p.mounting() == Mounting.INBOARD ? -p.reach() : p.reach();
    Seat seat = rails.seat(p.x(), reach);
    double y = seat.yOut(reach);
    return new Site(p.name() + "-" + side.name().toLowerCase(Locale.ROOT), mount, side, p.x(), side == Side.LEFT ? y : -y,
        seat);
  }
}
