package outrigger.generator.accessory.tray;

import outrigger.generator.accessory.Words;

/**
 * The rectangle of floor that items may lie on: inside the walls, clear of tabs, of the screws that stand out of them,
 * of strap slots and rounded corners; mm, in the tray's axes.
 *
 * @param x of its middle
 * @param y of its middle
 * @param height free above it
 */
record ClearFloor(double x, double y, double length, double width, double height) {
  /** Inset from a side that shares a rounded corner's loss about evenly: 1 - 1/sqrt 2. */
  private static final double SHARE = 1 - Math.sqrt(0.5);

  /** @param screws how far the screws stand inward out of the tabs, mm */
  static ClearFloor of(TrayFrame frame, double screws) {
    double corner = SHARE * frame.insideRadius();
    double slots = FloorPattern.slotsInward(frame.params());
    double left = Math.max(corner, Math.max(slots, tabs(frame, 1, screws)));
    double right = Math.max(corner, Math.max(slots, tabs(frame, -1, screws)));
    double end = beside(frame.insideRadius(), Math.min(left, right));
    return new ClearFloor(0, (right - left) / 2, Math.max(0, 2 * (frame.insideX() - end)),
        Math.max(0, 2 * frame.insideY() - left - right), frame.clearHeight());
  }

  private static double tabs(TrayFrame frame, int side, double screws) {
    return frame.params().tabs() > 0 && frame.params().place().isHeldAt(side) ? frame.tabInward() + screws : 0;
  }

  /** How far from the end wall a corner must stay that lies the given inset from the side wall. */
  private static double beside(double radius, double inset) {
    double rest = radius - inset;
    return rest <= 0 ? 0 : radius - Math.sqrt(radius * radius - rest * rest);
  }

  String words() {
    return Words.number(length) + " x " + Words.mm(width);
  }
}
