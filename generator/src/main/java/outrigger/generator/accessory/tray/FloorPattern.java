package outrigger.generator.accessory.tray;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
import outrigger.shapes.profile.Profile;

/**
 * What is cut through the floor, seen from above: strap slots, and whole hexagons wherever there is room.
 *
 * @param slots strap slots
 * @param hexagons lightening holes
 */
record FloorPattern(List<Profile> slots, List<Profile> hexagons) {
  private static final double STRAP_LENGTH_PLAY = 1;
  private static final double STRAP_THICKNESS_PLAY = 0.5;
  /** What rounding to the grid may take off a distance, generously. */
  private static final double ROUNDING = 0.001;
  /** Smaller holes cost print time and save nothing; common practice. */
  private static final double SMALLEST_HEXAGON = 2;

  FloorPattern {
    slots = List.copyOf(slots);
    hexagons = List.copyOf(hexagons);
  }

  /**
   * Lays the floor out.
   *
   * @throws BadDimension where a slot meets a wall, a tab or another slot, or ribs are too thin
   */
  static FloorPattern of(TrayFrame frame) {
    double wall = frame.params().printer().minimumWall();
    Profile free = frame.inside().offset(-(wall - ROUNDING));
    List<Profile> slots = slots(frame);
    for (Profile slot : slots) {
      requireFree(slot, free, frame.params(), wall);
    }
    requireApart(frame.params(), wall);
    return new FloorPattern(slots, hexagons(frame.params(), without(free, slots, wall)));
  }

  /** How far strap slots reach from the inside of the side walls, or 0 without straps. */
  static double slotsInward(TrayParams p) {
    return p.straps() == 0 ? 0 : p.printer().minimumWall() + p.strapThickness() + STRAP_THICKNESS_PLAY;
  }

  private static List<Profile> slots(TrayFrame frame) {
    TrayParams p = frame.params();
    double across = p.strapThickness() + STRAP_THICKNESS_PLAY;
    double y = frame.insideY() - slotsInward(p) + across / 2;
    List<Profile> slots = new ArrayList<>();
    for (double x : TrayFrame.spread(p.straps(), p.strapPitch())) {
      Profile slot = Profile.rectangle(p.strapWidth() + STRAP_LENGTH_PLAY, across);
      slots.add(slot.move(x, y));
      slots.add(slot.move(x, -y));
    }
    return slots;
  }

  private static void requireFree(Profile slot, Profile free, TrayParams p, double wall) {
    if (!slot.isWithin(free)) {
      throw new BadDimension("strap-width", "a slot " + Words.mm(p.strapWidth() + STRAP_LENGTH_PLAY) + " x "
          + Words.mm(p.strapThickness() + STRAP_THICKNESS_PLAY) + ", its middle " + Words.mm(
              Math.abs(slot.minX() + slot.maxX()) / 2) + " along from the tray's, comes nearer than "
          + Words.mm(wall) + " to a wall or a screw tab", "Lower strap-width, change strap-pitch or tab-pitch, or make "
          + "fewer straps.");
    }
  }

  private static void requireApart(TrayParams p, double wall) {
    double gap = p.strapPitch() - p.strapWidth() - STRAP_LENGTH_PLAY;
    if (p.straps() > 1 && !TrayFrame.keeps(gap, wall)) {
      throw new BadDimension("strap-pitch", "straps every " + Words.mm(p.strapPitch()) + " leave "
          + Words.mm(Math.max(0, gap)) + " between their slots, below " + Words.mm(wall), "Raise strap-pitch to "
          + Words.mm(p.strapWidth() + STRAP_LENGTH_PLAY + wall) + " or more.");
    }
  }

  private static Profile without(Profile free, List<Profile> slots, double wall) {
    return free.cut(slots.stream().map(slot -> slot.offset(wall)).toArray(Profile[]::new));
  }

  /** Columns of hexagons side by side, every other one shifted by half; only those that lie whole within the area. */
  private static List<Profile> hexagons(TrayParams p, Profile area) {
    if (p.hexagon() == 0 || area.isEmpty()) {
      return List.of();
    }
    requireHexagon(p);
    double step = p.hexagon() + p.rib();
    double column = step * StrictMath.sqrt(3) / 2;
    Profile one = Profile.hexagon(p.hexagon());
    List<Profile> found = new ArrayList<>();
    int columns = (int) Math.ceil(area.maxX() / column);
    int rows = (int) Math.ceil(area.maxY() / step) + 1;
    for (int i = -columns; i <= columns; i++) {
      for (int j = -rows; j <= rows; j++) {
        Profile hexagon = one.move(i * column, (j + (i % 2 == 0 ? 0 : 0.5)) * step);
        if (hexagon.isWithin(area)) {
          found.add(hexagon);
        }
      }
    }
    return found;
  }

  private static void requireHexagon(TrayParams p) {
    if (p.hexagon() < SMALLEST_HEXAGON) {
      throw new BadDimension("hexagon", "holes " + Words.mm(p.hexagon()) + " across flats lighten nothing; "
          + Words.mm(SMALLEST_HEXAGON) + " is the least", "Raise hexagon, or set it to 0 for a closed floor.");
    }
    if (!TrayFrame.keeps(p.rib(), p.printer().minimumWall())) {
      throw new BadDimension("rib", "ribs of " + Words.mm(p.rib()) + " fall short of the thinnest wall of printer "
          + p.printer().name() + ", " + Words.mm(p.printer().minimumWall()), "Raise rib.");
    }
  }

  /** Everything cut through the floor. */
  Profile all() {
    List<Profile> all = new ArrayList<>(slots);
    all.addAll(hexagons);
    return Profile.union(all);
  }
}
