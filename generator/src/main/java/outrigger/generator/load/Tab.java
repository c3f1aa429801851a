package outrigger.generator.load;

import java.util.Optional;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.accessory.tray.TrayPlace;

/**
 * One screw tab of a tray: a plate standing on the floor, held by its screw, that the tray pulls at in a jolt; mm.
 *
 * @param part name of the tray
 * @param width along the rail
 * @param thickness across the rail
 * @param floor height of its root over the bed
 * @param screw height of the screw over the bed
 * @param arm from the tab to the middle of what hangs on it, across the rail; 0 where a tab on the far side holds too
 * @param tabs that share the jolt
 */
public record Tab(String part, double width, double thickness, double floor, double screw, double arm, int tabs) {
  public Tab {
    if (!(width > 0 && thickness > 0 && screw > floor && tabs > 0)) {
      throw new IllegalArgumentException("a tab " + width + " x " + thickness + " from " + floor + " to " + screw);
    }
  }

  /** The tabs of a tray; empty where it has none, or none that stand above its floor. */
  public static Optional<Tab> of(String part, TrayParams p) {
    boolean between = p.place() == TrayPlace.BETWEEN;
    double screw = p.drop() - p.screwDrop();
    if (p.tabs() == 0 || screw <= p.floor()) {
      return Optional.empty();
    }
    return Optional.of(new Tab(part, p.tabWidth(), p.tabThickness(), p.floor(), screw, between ? 0 : p.width() / 2,
        p.tabs() * (between ? 2 : 1)));
  }

  /**
   * Its root under a jolt: to the side it bends over the height of the screw, downward over its arm, whichever is more.
   *
   * @param force on the whole tray, N, above 0
   */
  public Bent bend(double force, Strength strength) {
    double each = force / tabs;
    boolean hangs = arm > screw - floor;
    double moment = each * Math.max(arm, screw - floor);
    double stress = moment / (width * thickness * thickness / 6) + (hangs ? each / (width * thickness) : 0);
    return new Bent(part, "tab", floor, hangs ? "downward" : "to the side", each, stress, strength);
  }
}
