package outrigger.generator.accessory.tray;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.SidewaysHole;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;
import outrigger.shapes.profile.Profile;

/**
 * The dimensions of a tray that follow from its parameters; mm.
 *
 * @param hole what is cut for each screw
 * @param halfLength of the box outside
 * @param halfWidth of the box outside
 * @param reach from the middle to the faces of the tabs
 * @param holeZ height of the screws' middle above the underside of the floor
 * @param tabTop height of the tabs
 */
record TrayFrame(TrayParams params, SidewaysHole hole, double halfLength, double halfWidth, double reach, double holeZ,
    double tabTop) {
  /** Sums of decimals are off by less than this. */
  private static final double NOISE = 1e-9;

  /**
   * Works the dimensions out.
   *
   * @throws BadDimension where they cannot work together
   */
  static TrayFrame of(TrayParams p, SidewaysHole hole) {
    double reach = p.place() == TrayPlace.BETWEEN ? p.railSpacing() / 2 - p.clearance() : p.width() / 2;
    TrayRules.requireWidth(p, reach);
    double halfWidth = p.width() == 0 ? reach : p.width() / 2;
    double holeZ = p.drop() - p.screwDrop();
    double tabTop = p.tabs() == 0 ? p.wallHeight()
        : Math.max(p.wallHeight(), wholeLayers(holeZ + hole.rise() + hole.hole().wall(), p.printer()));
    TrayFrame frame = new TrayFrame(p, hole, p.length() / 2, halfWidth, reach, holeZ, tabTop);
    new TrayRules(frame).check();
    return frame;
  }

  private static double wholeLayers(double height, Printer printer) {
    return printer.firstLayer() + Math.ceil((height - printer.firstLayer()) / printer.layer() - NOISE) * printer.layer();
  }

  /** Half the length inside. */
  double insideX() {
    return halfLength - params.wall();
  }

  /** Half the width inside. */
  double insideY() {
    return halfWidth - params.wall();
  }

  double insideRadius() {
    return Math.max(0, params.cornerRadius() - params.wall());
  }

  /** x of every tab, rising. */
  List<Double> tabPlaces() {
    return spread(params.tabs(), params.tabPitch());
  }

  static List<Double> spread(int count, double pitch) {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add((i - (count - 1) / 2.0) * pitch);
    }
    return places;
  }

  /** The sides that have a rail: -1 right, 1 left. */
  List<Integer> heldSides() {
    List<Integer> sides = new ArrayList<>();
    for (int side : new int[] {-1, 1}) {
      if (params.place().isHeldAt(side)) {
        sides.add(side);
      }
    }
    return sides;
  }

  /** How far tabs stand out from the inside of the wall. */
  double tabInward() {
    return Math.max(0, params.tabThickness() - params.wall());
  }

  /** Depth of a tab along its screw, from the rail's side to the inside. */
  double tabDepth() {
    return reach - halfWidth + Math.max(params.wall(), params.tabThickness());
  }

  /** The tabs seen from above. */
  List<Profile> tabs() {
    List<Profile> tabs = new ArrayList<>();
    for (int side : heldSides()) {
      for (double x : tabPlaces()) {
        tabs.add(Profile.rectangle(params.tabWidth(), tabDepth()).move(x, side * (reach - tabDepth() / 2)));
      }
    }
    return tabs;
  }

  /** The outside of the box with its tabs, seen from above. */
  Profile outside() {
    return rounded(params.length(), 2 * halfWidth, params.cornerRadius()).join(tabs().toArray(Profile[]::new));
  }

  /** The room inside the walls, tabs left out, seen from above. */
  Profile inside() {
    return rounded(2 * insideX(), 2 * insideY(), insideRadius()).cut(tabs().toArray(Profile[]::new));
  }

  private static Profile rounded(double length, double width, double radius) {
    return radius == 0 ? Profile.rectangle(length, width) : Profile.roundedRectangle(length, width, radius);
  }

  /** Free height inside, from the floor up; 0 or less where there is none. */
  double clearHeight() {
    return params.drop() - params.floor() + params.headroom();
  }

  /** Whether {@code least} is kept, decimals' noise aside. */
  static boolean keeps(double value, double least) {
    return value >= least - NOISE;
  }

  String describe() {
    return params.place() == TrayPlace.BETWEEN
        ? "between rails " + Words.mm(params.railSpacing()) + " apart"
        : "outboard of the " + (params.place() == TrayPlace.LEFT ? "left" : "right") + " rail";
  }
}
